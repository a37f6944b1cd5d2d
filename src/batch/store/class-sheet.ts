import { type Formulation, formulate } from '../../formula/engine/formulate';
import type { LeftBehind } from '../../formula/lesson/lesson';
import { type BatchPlan, firstGlassFrom, soonestStart } from '../../formula/plan/plan-batch';
import { nightWork } from '../../formula/plan/schedule';
import { makingOf } from '../../formula/plan/work-out-making';
import type { Instant } from '../../formula/time/event';
import {
  type Batch,
  type KeptClass,
  type Kitchen,
  recipeOf,
  type Settings,
  type SheetDocument,
} from '../document/document';
import { kitchenBatch, type Taught, taughtBy } from '../edits/class-batches';
import { now, wallClock } from '../reading/local-time';
import { planFor } from './plan-batches';

/** A kitchen of a class with the recipe worked out in it. */
export interface WorkedKitchen {
  readonly kitchen: Kitchen;
  readonly batch: Batch;
  readonly formulation: Formulation;
  readonly left: readonly LeftBehind[];
}

export interface WorkedClass {
  readonly taught: Taught;
  readonly kitchens: readonly WorkedKitchen[];
}

interface Remembered {
  readonly taught: Taught;
  readonly when: KeptClass['when'];
  readonly settings: Settings;
  readonly worked: WorkedKitchen;
}

// A change to one kitchen leaves the others as they are, with their plans and their packed links.
const lessons = new WeakMap<Batch, { readonly yours: SheetDocument['yours']; readonly taught: Taught | null }>();
const rememberedKitchens = new WeakMap<Kitchen, Remembered>();

/** A class worked out in each of its kitchens; null where its recipe is gone or can’t be worked out. */
export function workOutClass(document: SheetDocument, kept: KeptClass): WorkedClass | null {
  const taught = teach(document, kept);
  if (taught === null) return null;
  return { taught, kitchens: kept.kitchens.map((kitchen) => workOut(document, taught, kitchen, kept.when)) };
}

function teach(document: SheetDocument, kept: KeptClass): Taught | null {
  const batch = document.batches.find(({ id }) => id === kept.of);
  if (batch === undefined) return null;
  const known = lessons.get(batch);
  if (known?.yours === document.yours) return known.taught;
  const taught = taughtBy(document, kept);
  lessons.set(batch, { yours: document.yours, taught });
  return taught;
}

function workOut(document: SheetDocument, taught: Taught, kitchen: Kitchen, when: KeptClass['when']): WorkedKitchen {
  const { settings } = document;
  const known = rememberedKitchens.get(kitchen);
  if (known?.taught === taught && known.when === when && known.settings === settings) return known.worked;
  const { batch, left } = kitchenBatch(document, taught, kitchen, when);
  const worked = { kitchen, batch, left, formulation: formulate(recipeOf(document, batch)) };
  rememberedKitchens.set(kitchen, { taught, when, settings, worked });
  return worked;
}

/** Kitchens that do everything at the same times. */
export interface PlannedTogether {
  readonly names: readonly string[];
  readonly plan: BatchPlan;
  /** From the covered jar to the taste; null where there is no time for it. */
  readonly ready: {
    readonly from: Instant;
    readonly soonest: Instant;
    readonly likely: Instant;
    readonly latest: Instant;
  } | null;
  readonly isPast: boolean;
  /** Whether some of the work falls into the quiet hours, with no way around them. */
  readonly isInNight: boolean;
}

/** Who starts when: kitchens of one time together, the first to start first, then the first to be ready. */
export function planClassroom({ kitchens }: WorkedClass, settings: Settings): readonly PlannedTogether[] {
  const present = now();
  const groups = new Map<string, { names: string[]; plan: BatchPlan; ready: PlannedTogether['ready'] }>();
  for (const { kitchen, batch, formulation } of kitchens) {
    const plan = planFor(batch, formulation, settings);
    if (plan === null) continue;
    const ready = readyBy(plan);
    const times = [
      plan.schedule.start,
      plan.schedule.drink,
      plan.schedule.stopped,
      ready?.likely,
      ready?.soonest,
      ready?.latest,
    ];
    const key = times.join(' ');
    const group = groups.get(key) ?? { names: [], plan, ready };
    group.names.push(kitchen.name);
    groups.set(key, group);
  }
  return [...groups.values()]
    .map((group) => ({
      ...group,
      isPast: group.plan.schedule.start < present,
      isInNight: nightWork(group.plan.schedule).length > 0,
    }))
    .sort((one, other) => orderOf(one, other));
}

function orderOf(one: Pick<PlannedTogether, 'plan' | 'ready'>, other: Pick<PlannedTogether, 'plan' | 'ready'>): number {
  const starts = one.plan.schedule.start - other.plan.schedule.start;
  return starts === 0 ? (one.ready?.likely ?? 0) - (other.ready?.likely ?? 0) : starts;
}

/** When the jar is likely ready by a plan, and from when until when it may be. */
function readyBy({ schedule }: BatchPlan): PlannedTogether['ready'] {
  const wait = schedule.waits.find(({ kind }) => kind === 'ferment');
  if (wait === undefined) return null;
  const { from, range } = wait;
  return { from, soonest: from + range.low, likely: from + range.likely, latest: from + range.high };
}

/**
 * A time at which all of a class can drink for the first time, begun when the cook is awake, and the start that could
 * still be made then.
 */
export function soonestTogether(
  { kitchens }: WorkedClass,
  settings: Settings,
): { readonly start: Instant; readonly at: Instant } {
  const clock = wallClock(settings.quiet);
  const soonest = soonestStart(now());
  const night = clock.nights(soonest, soonest + 1).find(({ from, to }) => from <= soonest && soonest < to);
  const start = night?.to ?? soonest;
  const glasses = kitchens.map(
    ({ batch, formulation }) => firstGlassFrom(makingOf(formulation, batch, settings), start, clock)?.at ?? start,
  );
  return { start, at: Math.max(...glasses, start) };
}
