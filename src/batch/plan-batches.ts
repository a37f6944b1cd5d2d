import type { Formulation } from '../formula/formulate';
import { type Clash, findClashes } from '../formula/timeline/clashes';
import type { Instant } from '../formula/timeline/event';
import { makingOf } from '../formula/timeline/making-of';
import { drawTimeline, type Picture } from '../formula/timeline/picture';
import { type BatchPlan, planBatch } from '../formula/timeline/plan-batch';
import type { WallClock } from '../formula/timeline/span';
import type { Batch, SheetDocument } from './document';
import { instantOf, wallClock } from './local-time';

export interface PlannedBatches {
  readonly plans: readonly { readonly batch: Batch; readonly plan: BatchPlan }[];
  readonly clashes: readonly Clash[];
  /** Null where no batch is planned. */
  readonly picture: Picture | null;
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

/** All batches of a sheet that are planned, in its order, with where they clash and the drawing of them. */
export function planBatches(
  { batches, settings }: SheetDocument,
  formulationOf: (batch: Batch) => Formulation,
): PlannedBatches {
  const clock = wallClock(settings.quiet);
  const plans = batches.flatMap((batch) => {
    const plan = planOf(batch, formulationOf(batch), settings, clock);
    return plan === null ? [] : [{ batch, plan }];
  });
  const placed = plans.map(({ plan }) => plan);
  const drawn = placed.map(({ schedule }) => schedule).filter(({ steps }) => steps.length > 0);
  return { plans, clashes: clashesOf(placed, clock), picture: drawTimeline(drawn, clock) };
}

let latest: { readonly plans: readonly BatchPlan[]; readonly clashes: readonly Clash[] } = { plans: [], clashes: [] };

/** The clashes of the latest plans again, where none of the plans has changed: an edit elsewhere moves nothing. */
function clashesOf(plans: readonly BatchPlan[], clock: WallClock): readonly Clash[] {
  const isSame = plans.length === latest.plans.length && plans.every((plan, place) => plan === latest.plans[place]);
  if (!isSame) latest = { plans, clashes: findClashes(plans, clock) };
  return latest.clashes;
}

/** When the first glass of a batch would be there if it were begun at a time; null where no one can tell. */
export function firstGlassFrom(
  batch: Batch,
  start: Instant,
  formulation: Formulation,
  settings: SheetDocument['settings'],
): Instant | null {
  const making = makingOf(formulation, batch, settings);
  return planBatch(making, { by: 'start', at: start }, wallClock(settings.quiet)).schedule.drink;
}

function planOf(
  batch: Batch,
  formulation: Formulation,
  settings: SheetDocument['settings'],
  clock: WallClock,
): BatchPlan | null {
  const { when, name, opened } = batch;
  const at = when === undefined ? null : instantOf(when.at);
  if (when === undefined || at === null) return null;
  const old = remembered.get(formulation);
  const isSame = old?.when === when && old.name === name && old.opened === opened && old.settings === settings;
  if (old !== undefined && isSame && old.plan.making.batch === batch.id) return old.plan;
  const plan = planBatch(makingOf(formulation, batch, settings), { by: when.by, at }, clock);
  remembered.set(formulation, { when, name, opened, settings, plan });
  return plan;
}
