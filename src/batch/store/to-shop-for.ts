import type { Formulation } from '../../formula/engine/formulate';
import { writeCalendarDay } from '../document/calendar-day';
import type { Batch, SheetDocument } from '../document/document';
import { wallOf } from '../reading/local-time';
import { planBatches } from './plan-batches';

/** A batch that may be shopped for. */
export interface Shoppable {
  readonly batch: Batch;
  /** The day it is begun by the plan, as it is read; null where it is not planned. */
  readonly day: string | null;
}

/** The batches of a sheet to shop for: those that are planned and still to be made in the order of their start, then the others. */
export function shoppable(document: SheetDocument, formulationOf: (batch: Batch) => Formulation): readonly Shoppable[] {
  const { plans, present } = planBatches(document, formulationOf);
  const ahead = plans
    .filter(({ plan }) => plan.schedule.start >= present)
    .toSorted((a, b) => a.plan.schedule.start - b.plan.schedule.start);
  const planned = new Set(ahead.map(({ batch }) => batch));
  return [
    ...ahead.map(({ batch, plan }) => ({ batch, day: writeCalendarDay(wallOf(plan.schedule.start).slice(0, 10)) })),
    ...document.batches.filter((batch) => !planned.has(batch)).map((batch) => ({ batch, day: null })),
  ];
}
