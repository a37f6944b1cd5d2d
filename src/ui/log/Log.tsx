import { useMemo, useRef, useState } from 'preact/hooks';
import type { Batch, Logged } from '../../batch/document/document';
import {
  cartonFinder,
  forgetPace,
  paceKey,
  removeEntry,
  takeLearnedPace,
  teachersOf,
} from '../../batch/edits/log-edits';
import { logSteps } from '../../batch/edits/log-words';
import type { Store } from '../../batch/store/store';
import { learnPace } from '../../formula/time/learn-pace';
import { describePace } from '../../formula/time/pace-words';
import { describeOrigin } from '../../formula/words/origin-words';
import { writeTrimmed } from '../../measure/write-quantity';
import { Whose } from '../page/Whose';
import { Waiting } from '../time/Waiting';
import { LogEntries } from './LogEntries';
import { LogForm } from './LogForm';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
}

/** What was found at the jars of this batch, what all of it teaches, and how long there is still waiting. */
export function Log({ batch, store }: Props) {
  const { log } = store.document.value;
  const [changing, setChanging] = useState<Logged | null>(null);
  const [said, setSaid] = useState('');
  const status = useRef<HTMLParagraphElement>(null);
  const changed = changing !== null && log.includes(changing) ? changing : null;
  const tell = (words: string) => {
    // The button that was pressed goes away with the form or the entry, so focus is led to what is said of it.
    if (changed !== null || document.activeElement?.closest('.log-entries') !== null) status.current?.focus();
    setChanging(null);
    setSaid(words);
  };
  const remove = (entry: Logged) => {
    store.takeEdit(removeEntry(store.document.value, log.indexOf(entry)), logSteps.remove);
    tell('Removed. Undo brings it back.');
  };
  return (
    <section class="log" aria-label={`Log of ${batch.name}`}>
      <h2>
        Log
        <Whose />
      </h2>
      <LogForm
        key={`${batch.id} ${changed === null ? 'new' : log.indexOf(changed)}`}
        batch={batch}
        store={store}
        changed={changed}
        onSaved={tell}
        onRefused={() => setSaid('')}
        onLeave={() => setChanging(null)}
      />
      <p ref={status} class="said" role="status" tabIndex={-1}>
        {said}
      </p>
      <Waiting batch={batch} store={store} />
      <LogEntries batch={batch} store={store} onChange={setChanging} onRemove={remove} />
      <Learned store={store} />
    </section>
  );
}

/** What the whole log has taught, and the way back. */
function Learned({ store }: Pick<Props, 'store'>) {
  const { batches, log, yours, settings } = store.document.value;
  const learned = useMemo(() => learnPace(teachersOf({ batches, log })), [batches, log]);
  const hasCarton = useMemo(() => log.some(cartonFinder({ batches })), [batches, log]);
  const own = yours[paceKey];
  const taught =
    learned === null ? null : describePace(learned, own?.how === 'learned' ? own.value : null, settings.decimalComma);
  const forget = () => store.takeEdit(forgetPace(store.document.value), logSteps.forget);
  const take = () => store.takeEdit(takeLearnedPace(store.document.value), logSteps.take);
  return (
    <div class="learned">
      <h3>What the log has taught</h3>
      {hasCarton && <p>Only homemade milk teaches how fast this kitchen is. A carton does not: some never turn.</p>}
      {own?.how === 'learned' ? (
        <>
          <p>
            {taught ??
              `This kitchen ripens ${writeTrimmed(own.value, 2, settings.decimalComma)} times as fast as the usual.`}
            <span class="origin">{describeOrigin({ kind: 'yours', how: 'learned' })}</span>
          </p>
          <button type="button" class="button" onClick={forget}>
            Forget
          </button>{' '}
          <span class="hint">The entries stay, and the next one teaches again.</span>
        </>
      ) : taught === null ? (
        <p>Nothing yet. Say after how many hours a batch was not sour yet, ready or too sour, and the times follow.</p>
      ) : (
        <>
          <p>
            {own === undefined
              ? 'The usual pace is used.'
              : `You set the pace to ${writeTrimmed(own.value, 2, settings.decimalComma)} yourself, and it stays.`}{' '}
            The log says: {taught}
          </p>
          <button type="button" class="button" onClick={take}>
            Use what the log says
          </button>
        </>
      )}
    </div>
  );
}
