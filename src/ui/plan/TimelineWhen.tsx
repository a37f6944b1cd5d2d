import { useState } from 'preact/hooks';
import type { Batch, SheetDocument } from '../../batch/document/document';
import { isPlannable, now, wallOf } from '../../batch/reading/local-time';
import { writeDayAndTime } from '../../batch/reading/write-time';
import { soonestGlass } from '../../batch/store/plan-batches';
import { clearWhen, drinkAt, setWhen, startAt } from '../../batch/store/plan-edits';
import type { Store } from '../../batch/store/store';
import type { BatchPlan } from '../../formula/plan/plan-batch';
import { Refusal } from '../page/Typed';

interface Props {
  readonly batch: Batch;
  readonly plan: BatchPlan | null;
  readonly store: Store;
}

/** What is asked of one batch: to be started at a time, or to be ready to drink at one. */
export function TimelineWhen({ batch, plan, store }: Props) {
  const { when } = batch;
  const [draft, setDraft] = useState<string | null>(null);
  const take = (planned: SheetDocument, label = `Plan ${batch.name}`) => {
    setDraft(null);
    store.takeEdit(planned, label);
  };
  const start = (at: number) => take(startAt(store.document.peek(), batch.id, at));
  /** Going from one to the other keeps the plan as it is. */
  const choose = (by: string) => {
    if (by === 'start') start(plan?.schedule.start ?? now());
    else if (by === 'drink') drink();
    else take(clearWhen(store.document.peek(), batch.id), `Take ${batch.name} out of the plan`);
  };
  const drink = () => {
    const present = now();
    const planned = plan?.schedule.drink == null ? null : { start: plan.schedule.start, at: plan.schedule.drink };
    const glass = planned ?? soonestGlass(batch, store.formulationOf(batch), store.settings.peek());
    take(drinkAt(store.document.peek(), batch.id, glass?.at ?? present, glass?.start ?? present));
  };
  const type = (at: string) => {
    // A year half typed is a year long past; until it is whole, it stays in the field alone.
    if (when === undefined || !isPlannable(at)) return setDraft(at);
    const { by } = when;
    take(setWhen(store.document.peek(), batch.id, by === 'start' ? { by, at } : { by, at, from: wallOf(now()) }));
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
      <button type="button" class="button" aria-label={`Start now: ${batch.name}`} onClick={() => start(now())}>
        Start now
      </button>
      <Refusal
        why={
          draft === null || when === undefined
            ? null
            : `Type a whole date and time, or pick one. The plan is still for ${writeDayAndTime(plan?.wanted.at ?? now())}.`
        }
      />
    </fieldset>
  );
}
