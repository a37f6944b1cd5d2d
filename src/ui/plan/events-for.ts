import type { Batch } from '../../batch/document/document';
import { now } from '../../batch/reading/local-time';
import type { Store } from '../../batch/store/store';
import { eventsOf } from '../../formula/plan/events';
import type { BatchPlan } from '../../formula/plan/plan-batch';
import type { NumericRowId } from '../../formula/recipe/order';
import type { TimelineEvent } from '../../formula/time/event';
import { bothUnits } from '../../formula/words/both-units';
import { writeRow } from '../../formula/words/write-row';

/** The plan of a batch as events in this cook's words: the unit that leads, the other in brackets. */
export function eventsFor(
  batch: Batch,
  plan: BatchPlan,
  store: Pick<Store, 'formulationOf' | 'settings'>,
): readonly TimelineEvent[] {
  const settings = store.settings.value;
  const formulation = store.formulationOf(batch);
  const write = (id: NumericRowId): string => {
    const written = writeRow(formulation, id, settings);
    if (written === null) return '';
    return bothUnits(written, settings.leads);
  };
  return eventsOf(plan, formulation, write, settings);
}

/** Whether any of a plan is still to come: a calendar has no use for what is past. */
export function isAhead(events: readonly TimelineEvent[]): boolean {
  const present = now();
  return events.some(({ at }) => at >= present);
}
