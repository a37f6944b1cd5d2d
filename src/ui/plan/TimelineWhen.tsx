import { useState } from 'preact/hooks';
import type { Batch } from '../../batch/document';
import { now } from '../../batch/local-time';
import { firstGlassFrom } from '../../batch/plan-batches';
import { clearWhen, isPlannable, setWhen, setWhenAt, type When } from '../../batch/plan-edits';
import type { Store } from '../../batch/store';
import { writeDayAndTime } from '../../batch/write-time';
import type { Instant } from '../../formula/timeline/event';
import type { BatchPlan } from '../../formula/timeline/plan-batch';

interface Props {
  readonly batch: Batch;
  readonly plan: BatchPlan | null;
  readonly store: Store;
}

/** What is asked of one batch: to be started at a time, or to be ready to drink at one. */
export function TimelineWhen({ batch, plan, store }: Props) {
  const { when } = batch;
  const [draft, setDraft] = useState<string | null>(null);
  const planFor = (by: When['by'], at: Instant) => {
    setDraft(null);
    const label = `Plan ${batch.name}`;
    store.takeEdit(setWhenAt(store.document.peek(), batch.id, by, at), label);
  };
  /** Going from one to the other keeps the plan as it is. */
  const choose = (by: string) => {
    if (by === 'start') planFor('start', plan?.schedule.start ?? now());
    else if (by === 'drink') planFor('drink', plan?.schedule.drink ?? firstGlass(now()));
    else {
      setDraft(null);
      store.takeEdit(clearWhen(store.document.peek(), batch.id), `Take ${batch.name} out of the plan`);
    }
  };
  const firstGlass = (start: Instant): Instant =>
    firstGlassFrom(batch, start, store.formulationOf(batch), store.settings.peek()) ?? start;
  const type = (at: string) => {
    // A year half typed is a year long past; until it is whole, it stays in the field alone.
    if (when === undefined || !isPlannable(at)) return setDraft(at);
    setDraft(null);
    store.takeEdit(setWhen(store.document.peek(), batch.id, { by: when.by, at }), `Plan ${batch.name}`);
  };
  return (
    <fieldset class="timeline-when">
      <legend>{batch.name}</legend>
      <label>
        <span class="unseen">What to plan</span>
        <select
          aria-label={`Plan for ${batch.name}`}
          value={when?.by ?? ''}
          onChange={(event) => choose(event.currentTarget.value)}
        >
          <option value="">Not planned</option>
          <option value="start">Start at</option>
          <option value="drink">To drink at</option>
        </select>
      </label>
      {when !== undefined && (
        <input
          type="datetime-local"
          aria-label={`${when.by === 'start' ? 'Start' : 'Drink'} ${batch.name} at`}
          value={draft ?? when.at}
          min="1970-01-01T00:00"
          max="9998-12-31T23:59"
          onChange={(event) => type(event.currentTarget.value)}
        />
      )}
      <button
        type="button"
        class="button"
        aria-label={`Start now: ${batch.name}`}
        onClick={() => planFor('start', now())}
      >
        Start now
      </button>
      {draft !== null && when !== undefined && (
        <p class="problem refusal" role="alert">
          <span>
            Type a whole date and time, or pick one. The plan is still for {writeDayAndTime(plan?.wanted.at ?? now())}.
          </span>
        </p>
      )}
    </fieldset>
  );
}
