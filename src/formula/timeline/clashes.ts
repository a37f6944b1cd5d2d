import { handwork } from '../../reference/handwork';
import type { Instant } from './event';
import type { Held, Making } from './making';
import { type BatchPlan, reach, replanner } from './plan-batch';
import { nightWork, type PlannedStep, type Schedule, type StepKind } from './schedule';
import { overlaps, type Span, type WallClock } from './span';

/** The batch to move, and the nearest later start at which it is in nobody's way. */
export interface Remedy {
  readonly batch: string;
  readonly name: string;
  readonly start: Instant;
}

interface Meeting extends Span {
  /** Names of the batches that meet, in the order of the sheet. */
  readonly names: readonly string[];
  readonly remedy: Remedy | null;
}

/** Where two batches want the same hands, or several the same grains or jars, at the same time. */
export type Clash =
  | (Meeting & { readonly kind: 'hands'; readonly steps: readonly [PlannedStep, PlannedStep] })
  | (Meeting & {
      readonly kind: 'grains' | 'jars';
      readonly thing: string;
      readonly need: number;
      readonly have: number | null;
    });

/** A batch as it is looked at for clashes. */
interface Placed {
  readonly making: Making;
  readonly schedule: Schedule;
}

/**
 * All clashes of batches that are planned, each with a later start that mends it, where one is found within two days.
 * What was in the way before `present` is over, and a batch that is begun by then is not moved any more.
 * Tasting and daily checks clash with nothing. Grains or jars of which enough is known to be there are no clash.
 */
export function findClashes(plans: readonly BatchPlan[], clock: WallClock, present: Instant = 0): readonly Clash[] {
  const remedies = new Map<BatchPlan, Remedy | null>();
  const remedyFor = (plan: BatchPlan): Remedy | null => {
    const known = remedies.get(plan);
    if (known !== undefined) return known;
    const found = plan.schedule.start < present ? null : findRemedy(plan, plans, clock);
    remedies.set(plan, found);
    return found;
  };
  const isToCome = ({ to }: Span): boolean => to > present;
  const hands = pairs(plans).flatMap(([one, other]) =>
    sharedWork(one.schedule, other.schedule)
      .filter(isToCome)
      .map(({ steps, from, to }): Clash => {
        const later = one.schedule.start > other.schedule.start ? one : other;
        return {
          kind: 'hands',
          names: [one.making.name, other.making.name],
          steps,
          from,
          to,
          remedy: remedyFor(later),
        };
      }),
  );
  const held = holds.flatMap((kind) =>
    sharedThings(plans, kind)
      .filter(isToCome)
      .map(({ group, from, to, need, have, thing }): Clash => {
        const later = group.reduce((last, plan) => (plan.schedule.start > last.schedule.start ? plan : last));
        const names = group.map(({ making }) => making.name);
        return { kind, names, thing, need, have, from, to, remedy: remedyFor(later) };
      }),
  );
  return [...hands, ...held];
}

const holds = ['grains', 'jars'] as const;

interface Shared<P extends Placed> extends Span {
  readonly group: readonly P[];
  readonly thing: string;
  readonly need: number;
  readonly have: number | null;
}

function pairs<P>(all: readonly P[]): readonly (readonly [P, P])[] {
  return all.flatMap((one, at) => all.slice(at + 1).map((other) => [one, other] as const));
}

/** A spoonful is tasted when there is a moment for it, and a daily check need not happen. */
const canWait: readonly StepKind[] = ['taste', 'check'];

function sharedWork(one: Schedule, other: Schedule) {
  const work = ({ steps }: Schedule) => steps.filter(({ hands, kind }) => hands && !canWait.includes(kind)).map(spanOf);
  return work(one).flatMap((mine) =>
    work(other)
      .filter((yours) => overlaps(mine, yours))
      .map((yours) => ({
        steps: [mine.step, yours.step] as const,
        from: Math.max(mine.from, yours.from),
        to: Math.min(mine.to, yours.to),
      })),
  );
}

function spanOf(step: PlannedStep) {
  return { step, from: step.at, to: step.at + step.minutes };
}

/** From filling the jar to straining it: so long are grains and jars busy. Null where the plan stops before. */
function busy({ steps }: Schedule): Span | null {
  const [from, to] = [steps.find(({ kind }) => kind === 'make'), steps.find(({ kind }) => kind === 'strain')];
  return from === undefined || to === undefined ? null : { from: from.at, to: to.at + to.minutes };
}

/** Batches that hold the same kind of thing at once where it is not known to be enough; the largest groups only. */
function sharedThings<P extends Placed>(plans: readonly P[], kind: 'grains' | 'jars'): readonly Shared<P>[] {
  const found = plans.flatMap((plan): Shared<P>[] => {
    const own = busy(plan.schedule);
    if (own === null) return [];
    const group = plans.filter((other) => {
      const span = busy(other.schedule);
      return span !== null && span.from <= own.from && own.from < span.to && isSame(plan.making, other.making, kind);
    });
    const to = Math.min(...group.map(({ schedule }) => busy(schedule)?.to ?? own.to));
    const things = group.map(({ making }): Held<string> => making[kind]);
    const need = things.reduce((sum, thing) => sum + thing.need, 0);
    const known = things.map(({ have }) => have).filter((have) => have !== null);
    const have = known.length === 0 ? null : Math.max(...known);
    if (group.length < 2 || (have !== null && have >= need)) return [];
    return [{ group, thing: plan.making[kind].name, need, have, from: own.from, to }];
  });
  return found.filter(
    ({ group }, at) => !found.some((other, place) => place !== at && isWithin(group, other.group, place < at)),
  );
}

function isSame(one: Making, other: Making, kind: 'grains' | 'jars'): boolean {
  return one[kind].kind === other[kind].kind;
}

/** Whether all of a group is in another that is larger, or as large and counts first. */
function isWithin<P>(group: readonly P[], other: readonly P[], first: boolean): boolean {
  return group.every((one) => other.includes(one)) && (other.length > group.length || first);
}

/** The nearest later start of a batch that meets no other's work, grains or jars, and leaves the night alone. */
function findRemedy(plan: BatchPlan, plans: readonly BatchPlan[], clock: WallClock): Remedy | null {
  const others = plans.filter((other) => other !== plan);
  const { making, schedule } = plan;
  const free = Math.max(0, ...others.map((other) => (busy(other.schedule)?.to ?? schedule.start) - schedule.start));
  const within = Math.min(free, reach) + reach;
  const planFrom = replanner(plan, within, clock);
  for (let later = handwork.search.value; later <= within; later += handwork.search.value) {
    const start = schedule.start + later;
    const moved: Placed = { making, schedule: planFrom(start) };
    const isFree =
      nightWork(moved.schedule).length === 0 &&
      others.every((other) => sharedWork(moved.schedule, other.schedule).length === 0) &&
      holds.every((kind) => hasEnough(moved, others, kind));
    if (isFree) return { batch: making.batch, name: making.name, start };
  }
  return null;
}

/** Whether all that want the same kind of thing while a batch does have enough of it, even all at once. */
function hasEnough(moved: Placed, others: readonly Placed[], kind: 'grains' | 'jars'): boolean {
  const own = busy(moved.schedule);
  if (own === null) return true;
  const meeting = others.filter(({ making, schedule }) => {
    const span = busy(schedule);
    return span !== null && isSame(making, moved.making, kind) && overlaps(span, own);
  });
  const things = [moved, ...meeting].map(({ making }): Held<string> => making[kind]);
  const known = Math.max(...things.map(({ have }) => have ?? 0));
  return meeting.length === 0 || known >= things.reduce((sum, { need }) => sum + need, 0);
}
