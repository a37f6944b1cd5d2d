import type { Formulation } from '../../formula/engine/formulate';
import { type Clashes, findClashes } from '../../formula/plan/clashes';
import {
  type BatchPlan,
  type FirstGlass,
  firstGlassFrom,
  overAt,
  planBatch,
  soonestStart,
} from '../../formula/plan/plan-batch';
import { strainedAt } from '../../formula/plan/schedule';
import { makingOf } from '../../formula/plan/work-out-making';
import type { Instant } from '../../formula/time/event';
import type { WallClock } from '../../formula/time/span';
import { type Day, dayAfter } from '../document/calendar-day';
import type { Batch, SheetDocument } from '../document/document';
import { instantOf, now, wallClock, wallOf } from '../reading/local-time';

export interface Planned {
  readonly batch: Batch;
  readonly plan: BatchPlan;
}

export interface PlannedBatches {
  /** Those still to be made or drunk. */
  readonly plans: readonly Planned[];
  /** Those whose last day is past: they are in nobody's way and not drawn. */
  readonly over: readonly Planned[];
  readonly clashes: Clashes;
  /** What they were looked at by. */
  readonly clock: WallClock;
  readonly present: Instant;
}

interface Remembered {
  readonly when: Batch['when'];
  readonly name: string;
  readonly opened: Batch['opened'];
  readonly settings: SheetDocument['settings'];
  readonly plan: BatchPlan;
}

// Looking for a start goes through thousands of them, and an edit of one batch leaves the plans of the others.
const remembered = new WeakMap<Formulation, Remembered>();

/** All batches of a sheet that are planned, in its order, with where they clash. */
export function planBatches(
  { batches, settings }: SheetDocument,
  formulationOf: (batch: Batch) => Formulation,
): PlannedBatches {
  const clock = wallClock(settings.quiet);
  const present = now();
  const all = batches.flatMap((batch): Planned[] => {
    const plan = batch.when === undefined ? null : planOf(batch, formulationOf(batch), settings, clock);
    return plan === null ? [] : [{ batch, plan }];
  });
  const isOver = ({ plan }: Planned): boolean => overAt(plan, clock) <= present;
  const plans = all.filter((one) => !isOver(one));
  const placed = plans.map(({ plan }) => plan);
  return {
    plans,
    over: all.filter(isOver),
    clashes: clashesOf(placed, clock, present),
    clock,
    present,
  };
}

interface Found {
  readonly plans: readonly BatchPlan[];
  readonly present: Instant;
  readonly clashes: Clashes;
}

let latest: Found = { plans: [], present: 0, clashes: { told: [], more: 0 } };

/** More clashes than these nobody reads; the first that are mended take others with them. */
const mostTold = 8;

/** The clashes of the latest plans again, where none has changed in the same minute: an edit elsewhere moves nothing. */
function clashesOf(plans: readonly BatchPlan[], clock: WallClock, present: Instant): Clashes {
  const isSame =
    present === latest.present &&
    plans.length === latest.plans.length &&
    plans.every((plan, place) => plan === latest.plans[place]);
  if (!isSame) latest = { plans, present, clashes: findClashes(plans, clock, present, mostTold) };
  return latest.clashes;
}

/** The plan of one batch; null where it is not planned. */
export function planFor(batch: Batch, formulation: Formulation, settings: SheetDocument['settings']): BatchPlan | null {
  return planOf(batch, formulation, settings, wallClock(settings.quiet));
}

/** On which day the grains come out by the plan of a batch, the day its label is dated; null where none says so. */
export function plannedDay(plan: BatchPlan | null): Day | null {
  const at = plan === null ? null : strainedAt(plan.schedule);
  const day = at === null ? null : wallOf(at).slice(0, 10);
  return day === null ? null : dayAfter(day, 0);
}

/** When the first glass of a batch would be there if it were begun at a time; null where no one can tell. */
export function glassOf(
  batch: Batch,
  start: Instant,
  formulation: Formulation,
  settings: SheetDocument['settings'],
): Instant | null {
  const making = makingOf(formulation, batch, settings);
  return planBatch(making, { by: 'start', at: start }, wallClock(settings.quiet)).schedule.drink;
}

/** The first glass that can still be had of a batch, with the start it asks for; null where there is none near. */
export function soonestGlass(
  batch: Batch,
  formulation: Formulation,
  settings: SheetDocument['settings'],
): FirstGlass | null {
  return firstGlassFrom(makingOf(formulation, batch, settings), soonestStart(now()), wallClock(settings.quiet));
}

/** The latest start from which a plan to drink at a time can still be kept; null where there is none any more. */
export function stillInTime({ making, wanted }: BatchPlan, settings: SheetDocument['settings']): Instant | null {
  const from = soonestStart(now());
  const { schedule } = planBatch(making, { ...wanted, from }, wallClock(settings.quiet));
  return wanted.by === 'drink' && schedule.start >= from && schedule.drink === wanted.at ? schedule.start : null;
}

function planOf(
  batch: Batch,
  formulation: Formulation,
  settings: SheetDocument['settings'],
  clock: WallClock,
): BatchPlan | null {
  const { when, name, opened } = batch;
  const at = when === undefined ? null : instantOf(when.at);
  const from = when?.from === undefined ? null : instantOf(when.from);
  if (when === undefined || at === null) return null;
  const old = remembered.get(formulation);
  const isSame = old?.when === when && old.name === name && old.opened === opened && old.settings === settings;
  if (old !== undefined && isSame && old.plan.making.batch === batch.id) return old.plan;
  const plan = planBatch(
    makingOf(formulation, batch, settings),
    { by: when.by, at, ...(from === null ? {} : { from }) },
    clock,
  );
  remembered.set(formulation, { when, name, opened, settings, plan });
  return plan;
}
