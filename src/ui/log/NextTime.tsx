import { useMemo } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import { describeEntry, logSteps } from '../../batch/edits/log-words';
import { addNext, adviceFor, type WhatIsTaught } from '../../batch/edits/next-batch';
import type { Store } from '../../batch/store/store';
import type { NextBatch } from '../../formula/time/next-batch';
import { describeNext, describeNextTime } from '../../formula/time/next-batch-words';
import type { PageState } from '../page/page-state';
import type { SheetState } from '../sheet/sheet-state';
import { askedTrouble } from '../trouble/asked-trouble';

interface Props extends WhatIsTaught {
  readonly batch: Batch;
  readonly store: Store;
  readonly state: SheetState;
  readonly page: PageState;
}

/** What to do next time, after the last result of this batch: one change, and a press that makes that batch. */
export function NextTime({ batch, store, state, page, paces, teachers }: Props) {
  const { value: document } = store.document;
  const { settings } = document;
  const { log, yours } = document;
  const advice = useMemo(
    () => adviceFor(document, batch, { paces, teachers }),
    [log, yours, settings, batch, paces, teachers],
  );
  const [first, ...others] = advice?.next ?? [];
  if (advice === null || first === undefined) return null;
  const { result, was } = advice;
  const make = (next: NextBatch) => {
    const old = new Set(document.batches.map(({ id }) => id));
    const what = describeNext(next, settings);
    store.takeEdit(addNext(document, batch.id, next), logSteps.next(batch.name, what));
    const added = store.document.peek().batches.find(({ id }) => !old.has(id));
    if (added === undefined) {
      state.notice.value = 'The sheet is full: remove a batch first.';
      return;
    }
    page.shown.value = 'batch';
    state.landOn(added.id, `${added.name}: ${what}`);
  };
  const trouble = result.found === 'sour' ? 'tooSour' : result.found === 'flat' ? 'sweetAndFlat' : null;
  return (
    <div class="next-time">
      <h3>Next time</h3>
      <p class="hint">After “{describeEntry({ ...result, temperature: null, acidity: null }, settings)}”</p>
      <p role="status">
        <b>{describeNext(first, settings)}</b> {describeNextTime(first.after, was, settings)}
      </p>
      <p class="log-acts">
        <button type="button" class="button next" onClick={() => make(first)}>
          Make the next batch
        </button>
        {trouble !== null && (
          <button
            type="button"
            class="follow"
            onClick={() => {
              askedTrouble.value = trouble;
              page.goTo('trouble');
            }}
          >
            What to do with this one
          </button>
        )}
      </p>
      {others.length > 0 && (
        <details class="fold-panel">
          <summary>Or change something else</summary>
          <ul class="next-others">
            {others.map((next) => {
              const words = describeNext(next, settings);
              return (
                <li key={words}>
                  {words} {describeNextTime(next.after, was, settings)}
                  <button type="button" class="button" aria-label={`Make it: ${words}`} onClick={() => make(next)}>
                    Make it
                  </button>
                </li>
              );
            })}
          </ul>
        </details>
      )}
    </div>
  );
}
