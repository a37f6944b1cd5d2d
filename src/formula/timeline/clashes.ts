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

/** A step that needs hands, as a stretch of time. */
interface Work extends Span {
  readonly step: PlannedStep;
}

/** A batch as it is looked at for clashes. */
interface Placed {
  readonly making: Making;
  readonly work: readonly Work[];
  /** From its first work to the end of its last. */
  readonly frame: Span;
  /** From filling the jar to straining it: so long are grains and jars busy. Null where the plan stops before. */
  readonly busy: Span | null;
}

interface PlacedPlan extends Placed {
  readonly plan: BatchPlan;
}

/**
 * All clashes of batches that are planned, each with a later start that mends it, where one is found within two days.
 * What was in the way before `present` is over, and a batch that is begun by then is not moved any more.
 * Tasting and daily checks clash with nothing. Grains or jars of which enough is known to be there are no clash.
 * Many batches at one time clash in thousands of pairs of which few are read, so a later start is only looked for when
 * it is asked for.
 */
export function findClashes(plans: readonly BatchPlan[], clock: WallClock, present: Instant = 0): readonly Clash[] {
  const all = plans.map((plan): PlacedPlan => ({ plan, ...place(plan.making, plan.schedule) }));
  const menders = new Map<PlacedPlan, Mender>();
  const menderOf = (one: PlacedPlan): Mender => {
    const known = menders.get(one);
    if (known !== undefined) return known;
    const mender = once(() => (one.plan.schedule.start < present ? null : findRemedy(one, all, clock)));
    menders.set(one, mender);
    return mender;
  };
  return [...handsClashes(all, present, menderOf), ...heldClashes(all, present, menderOf)];
}

type Mender = () => Remedy | null;

function once(find: Mender): Mender {
  let found: Remedy | null | undefined;
  return () => {
    if (found === undefined) found = find();
    return found;
  };
}

/** A clash that looks for its remedy when it is asked for. There can be very many, so it is as small as can be. */
class HandsClash {
  readonly kind = 'hands';
  readonly #mend: Mender;

  constructor(
    readonly names: readonly string[],
    readonly steps: readonly [PlannedStep, PlannedStep],
    readonly from: Instant,
    readonly to: Instant,
    mend: Mender,
  ) {
    this.#mend = mend;
  }

  get remedy(): Remedy | null {
    return this.#mend();
  }
}

function handsClashes(all: readonly PlacedPlan[], present: Instant, menderOf: (one: PlacedPlan) => Mender): Clash[] {
  const found: Clash[] = [];
  all.forEach((one, at) => {
    // Plain loops: of thousands of batches every pair is looked at, and nearly none meets.
    for (let place = at + 1; place < all.length; place += 1) {
      const other = all[place];
      if (other === undefined || !overlaps(one.frame, other.frame)) continue;
      const names = [one.making.name, other.making.name];
      const later = one.plan.schedule.start > other.plan.schedule.start ? one : other;
      for (const mine of one.work) {
        for (const yours of other.work) {
          const [from, to] = [Math.max(mine.from, yours.from), Math.min(mine.to, yours.to)];
          if (!overlaps(mine, yours) || to <= present) continue;
          found.push(new HandsClash(names, [mine.step, yours.step], from, to, menderOf(later)));
        }
      }
    }
  });
  return found;
}

function heldClashes(all: readonly PlacedPlan[], present: Instant, menderOf: (one: PlacedPlan) => Mender): Clash[] {
  return holds.flatMap((kind) =>
    sharedThings(all, kind)
      .filter(({ to }) => to > present)
      .map(({ group, from, to, need, have, thing }): Clash => {
        const later = group.reduce((last, one) => (one.plan.schedule.start > last.plan.schedule.start ? one : last));
        const names = group.map(({ making }) => making.name);
        const mend = menderOf(later);
        return {
          ...{ kind, names, thing, need, have, from, to },
          get remedy() {
            return mend();
          },
        };
      }),
  );
}

const holds = ['grains', 'jars'] as const;

interface Shared<P extends Placed> extends Span {
  readonly group: readonly P[];
  readonly thing: string;
  readonly need: number;
  readonly have: number | null;
}

/** A spoonful is tasted when there is a moment for it, and a daily check need not happen. */
const canWait: readonly StepKind[] = ['taste', 'check'];

function place(making: Making, { steps }: Schedule): Placed {
  const work = steps
    .filter(({ hands, kind }) => hands && !canWait.includes(kind))
    .map((step) => ({ step, from: step.at, to: step.at + step.minutes }));
  const [from, to] = [steps.find(({ kind }) => kind === 'make'), steps.find(({ kind }) => kind === 'strain')];
  const busy = from === undefined || to === undefined ? null : { from: from.at, to: to.at + to.minutes };
  // Without work it is no stretch of time, and meets nothing.
  const frame = { from: Math.min(...work.map((one) => one.from)), to: Math.max(...work.map((one) => one.to)) };
  return { making, work, frame, busy };
}

function meets(one: Placed, other: Placed): boolean {
  return overlaps(one.frame, other.frame) && one.work.some((mine) => other.work.some((its) => overlaps(mine, its)));
}

/** Batches that hold the same kind of thing at once where it is not known to be enough; the largest groups only. */
function sharedThings<P extends Placed>(all: readonly P[], kind: 'grains' | 'jars'): readonly Shared<P>[] {
  // Those filled at the same time are one group: it is looked at for the first of them.
  const seen = new Set<string>();
  const found = all.flatMap((one): Shared<P>[] => {
    const own = one.busy;
    if (own === null) return [];
    const moment = `${one.making[kind].kind} ${own.from}`;
    if (seen.has(moment)) return [];
    seen.add(moment);
    const group = all.filter(({ busy, making }) => {
      return busy !== null && busy.from <= own.from && own.from < busy.to && isSame(one.making, making, kind);
    });
    const to = Math.min(...group.map(({ busy }) => busy?.to ?? own.to));
    const things = group.map(({ making }): Held<string> => making[kind]);
    const need = things.reduce((sum, thing) => sum + thing.need, 0);
    const known = things.map(({ have }) => have).filter((have) => have !== null);
    const have = known.length === 0 ? null : Math.max(...known);
    if (group.length < 2 || (have !== null && have >= need)) return [];
    return [{ group, thing: one.making[kind].name, need, have, from: own.from, to }];
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
  if (other.length < group.length || (other.length === group.length && !first)) return false;
  return group.every((one) => other.includes(one));
}

/** The nearest later start of a batch that meets no other's work, grains or jars, and leaves the night alone. */
function findRemedy(one: PlacedPlan, all: readonly PlacedPlan[], clock: WallClock): Remedy | null {
  const others = all.filter((other) => other !== one);
  const { plan, making } = one;
  const { schedule } = plan;
  const free = Math.max(0, ...others.map(({ busy }) => (busy?.to ?? schedule.start) - schedule.start));
  const within = Math.min(free, reach) + reach;
  const planFrom = replanner(plan, within, clock);
  for (let later = handwork.search.value; later <= within; later += handwork.search.value) {
    const start = schedule.start + later;
    const moved = planFrom(start);
    const placed = place(making, moved);
    const isFree =
      nightWork(moved).length === 0 &&
      others.every((other) => !meets(placed, other)) &&
      holds.every((kind) => hasEnough(placed, others, kind));
    if (isFree) return { batch: making.batch, name: making.name, start };
  }
  return null;
}

/** Whether all that want the same kind of thing while a batch does have enough of it, even all at once. */
function hasEnough(moved: Placed, others: readonly Placed[], kind: 'grains' | 'jars'): boolean {
  const own = moved.busy;
  if (own === null) return true;
  const meeting = others.filter(({ making, busy }) => {
    return busy !== null && isSame(making, moved.making, kind) && overlaps(busy, own);
  });
  const things = [moved, ...meeting].map(({ making }): Held<string> => making[kind]);
  const known = Math.max(...things.map(({ have }) => have ?? 0));
  return meeting.length === 0 || known >= things.reduce((sum, { need }) => sum + need, 0);
}
