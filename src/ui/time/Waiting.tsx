import { useState } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import { hoursOf, looksOf, openCarton } from '../../batch/edits/log-edits';
import { describeEntry, logSteps } from '../../batch/edits/log-words';
import type { Store } from '../../batch/store/store';
import { describeExpected } from '../../formula/time/expected-words';
import { daysOffered, waitingOf } from '../../formula/time/waiting';
import { describeWaiting } from '../../formula/time/waiting-words';
import { describeOrigin } from '../../formula/words/origin-words';
import { cartonWaiting } from '../../reference/carton-waiting';
import { expectedAcidity, expectedOf } from '../../reference/expected-acidity';
import { useMinutes } from '../plan/use-minutes';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
}

/** How long there is waiting for this batch: days only for a heat-treated carton opened for it, up to a stop. */
export function Waiting({ batch, store }: Props) {
  const at = useMinutes();
  const [isTold, setTold] = useState(false);
  const { log, settings } = store.document.value;
  const looks = looksOf(log.filter((entry) => entry.batch === batch.id));
  const formulation = store.formulationOf(batch);
  const waiting = waitingOf(formulation, looks, batch.opened ?? null, hoursOf(at));
  const kind = expectedOf[formulation.recipe.source];
  const expected = kind === undefined ? undefined : expectedAcidity[kind];
  const words = describeWaiting(waiting, settings.decimalComma);
  const open = (days: number | null) =>
    store.takeEdit(
      openCarton(store.document.value, batch.id, days),
      days === null ? logSteps.notOpened : logSteps.open(days),
    );
  return (
    <div class="waiting" id={waitingPlace} tabIndex={-1}>
      <h3>How long to wait</h3>
      <p role="status" class={`verdict ${waiting.verdict}`}>
        {waiting.verdict === 'throwOut' ? (
          <strong>
            <span aria-hidden="true">✕ </span>
            {words}
          </strong>
        ) : (
          words
        )}
      </p>
      <p>
        {describeExpected(formulation, waiting.elapsed, settings.decimalComma)}
        {isTold && expected !== undefined && <span class="origin"> {describeOrigin(expected.origin)}</span>}
      </p>
      {waiting.milk !== 'homemade' && (
        <label class="pick">
          <input
            type="checkbox"
            checked={waiting.allowed}
            onChange={(event) => open(event.currentTarget.checked ? cartonWaiting.usualDays.value : null)}
          />
          {formulation.choices.source.slower === undefined
            ? 'A heat-treated can or packet, poured neat and opened for this batch'
            : 'A heat-treated carton, opened for this batch'}
        </label>
      )}
      {waiting.allowed && (
        <label class="pick">
          Give up after{' '}
          <select
            aria-label="Days until it is given up"
            value={String(waiting.days)}
            onChange={(event) => open(Number(event.currentTarget.value))}
          >
            {daysOffered(waiting.days).map((days) => (
              <option key={days} value={String(days)}>
                {days === 1 ? '1 day' : `${days} days`}
              </option>
            ))}
          </select>
        </label>
      )}
      {waiting.allowed && (
        <ol class="waiting-days">
          {waiting.lines.map(({ day, looks: found }) => (
            <li key={day}>
              <b>{day > waiting.days ? `Day ${day}, after the stop` : `Day ${day}`}</b>:{' '}
              {found.length === 0
                ? 'taste it and measure the pH.'
                : found.map((look) => describeEntry({ ...look, temperature: null, note: '' }, settings)).join('; ')}
            </li>
          ))}
        </ol>
      )}
      <ul class="waiting-why">
        {waiting.cautions.map(({ id, text, origin }) => (
          <li key={id}>
            {text}
            {isTold && <span class="origin">{describeOrigin(origin)}</span>}
          </li>
        ))}
      </ul>
      <button type="button" class="quiet" aria-pressed={isTold} onClick={() => setTold(!isTold)}>
        where from
      </button>
    </div>
  );
}

/** Where on the page it is. */
export const waitingPlace = 'how-long-to-wait';
