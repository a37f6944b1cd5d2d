import { useMemo, useState } from 'preact/hooks';
import { cartonFinder, forgetPace, takeLearnedPace, type teachersByEntry } from '../../batch/edits/log-edits';
import { logSteps } from '../../batch/edits/log-words';
import type { Store } from '../../batch/store/store';
import type { LearnedPaces } from '../../formula/time/learn-pace';
import { paceKey } from '../../formula/time/pace-keys';
import { describeOwnPace, describeSources, describeTaught } from '../../formula/time/pace-words';
import { describeOrigin } from '../../formula/words/origin-words';
import { FoundPicture } from './FoundPicture';

interface Props {
  readonly store: Store;
  readonly paces: LearnedPaces | null;
  readonly teachers: ReturnType<typeof teachersByEntry>;
}

/** What the whole log has taught, in hours, drawn, and the way back. */
export function Learned({ store, paces, teachers }: Props) {
  const { batches, log, yours, settings } = store.document.value;
  const [isDrawn, setDrawn] = useState(false);
  const hasCarton = useMemo(() => log.some(cartonFinder({ batches })), [batches, log]);
  const own = yours[paceKey];
  const isLearned = own?.how === 'learned';
  const forget = () => store.takeEdit(forgetPace(store.document.value), logSteps.forget);
  const take = () => store.takeEdit(takeLearnedPace(store.document.value), logSteps.take);
  const sources = paces === null ? null : describeSources(paces, settings);
  return (
    <div class="learned">
      <h3>What the log has taught</h3>
      {hasCarton && <p>Only homemade milk teaches how fast this kitchen is. A carton does not: some never turn.</p>}
      {paces === null ? (
        <p>Nothing yet. Say after how many hours a batch was not sour yet, ready or too sour, and the times follow.</p>
      ) : (
        <>
          {!isLearned && (
            <p>
              {own === undefined
                ? 'The usual pace is used. The log says:'
                : `You set the pace yourself, and it stays: ${describeOwnPace(own.value, settings)}. The log says:`}
            </p>
          )}
          <ul class="taught">
            {describeTaught(paces, settings).map(({ what, words }) => (
              <li key={what}>
                <b>{what}.</b> {words}
              </li>
            ))}
          </ul>
          {sources !== null && <p>{sources}</p>}
          {isLearned && <span class="origin">{describeOrigin({ kind: 'yours', how: 'learned' })}</span>}
        </>
      )}
      {isLearned && (
        <p>
          <button type="button" class="button" onClick={forget}>
            Forget
          </button>{' '}
          <span class="hint">The entries stay, and the next one teaches again.</span>
        </p>
      )}
      {!isLearned && paces !== null && (
        <p>
          <button type="button" class="button" onClick={take}>
            Use what the log says
          </button>
        </p>
      )}
      {paces !== null && (
        <details class="fold-panel" onToggle={(event) => setDrawn(event.currentTarget.open)}>
          <summary>Found against expected</summary>
          {isDrawn && <FoundPicture teachers={teachers} kitchen={settings} />}
        </details>
      )}
    </div>
  );
}
