import type { Instant } from '../time/event';
import type { Span, WallClock } from '../time/span';
import { meetingOf, meets, type PlacedPlan, place } from './placed';
import type { BatchPlan } from './plan-batch';
import { findRemedy, type Remedy } from './remedy';
import type { PlannedStep } from './schedule';
import { type Hold, holds, sharedThings } from './shared-things';

interface Meeting extends Span {
  /** Names of the batches that meet, in the order of the sheet. */
  readonly names: readonly string[];
  readonly remedy: Remedy | null;
}

/** Where two batches want the same hands, once or several times, or several the same grains or jars at one time. */
export type Clash =
  /** `steps` and the stretch of time are those of the first of the `times`. */
  | (Meeting & { readonly kind: 'hands'; readonly times: number; readonly steps: readonly [PlannedStep, PlannedStep] })
  | (Meeting & {
      readonly kind: Hold;
      readonly thing: string;
      readonly need: number;
      readonly have: number | null;
    });

export interface Clashes {
  /** The first of them: grains, then jars, then hands. */
  readonly told: readonly Clash[];
  /** How many more there are. */
  readonly more: number;
}

/**
 * The clashes of batches that are planned, so many of them, each with another start that mends it where one is found
 * within some days. Those of hands are one for each two batches.
 * What was in the way before `present` is over, and a batch that is begun by then is not moved any more.
 * Tasting and daily checks clash with nothing. Grains or jars of which enough is known to be there are no clash.
 * A thousand batches at one time clash in half a million pairs of which few are read: the rest is only counted, and
 * another start is only looked for when it is asked for.
 */
export function findClashes(
  plans: readonly BatchPlan[],
  clock: WallClock,
  present: Instant = 0,
  most = Number.POSITIVE_INFINITY,
): Clashes {
  const all = plans.map((plan): PlacedPlan => ({ plan, ...place(plan.making, plan.schedule) }));
  const remedies = new Map<PlacedPlan, Remedy | null>();
  const remedyOf = (one: PlacedPlan): Remedy | null => {
    const known = remedies.get(one);
    if (known !== undefined) return known;
    const found = one.plan.schedule.start < present ? null : findRemedy(one, all, clock, present);
    remedies.set(one, found);
    return found;
  };
  const shared = holds.flatMap((kind) => sharedThings(all, kind)).filter(({ to }) => to > present);
  const told = shared.slice(0, most).map(({ group, ...things }): Clash => {
    return {
      ...things,
      names: group.map(({ making }) => making.name),
      get remedy() {
        return remedyOf(latestOf(group));
      },
    };
  });
  const { length } = shared;
  let more = length - told.length;
  all.forEach((one, at) => {
    for (let place = at + 1; place < all.length; place += 1) {
      const other = all[place];
      if (other === undefined) continue;
      if (told.length >= most) {
        if (meets(one, other, present)) more += 1;
        continue;
      }
      const met = meetingOf(one, other, present);
      if (met === null) continue;
      told.push({
        kind: 'hands',
        names: [one.making.name, other.making.name],
        ...met,
        get remedy() {
          return remedyOf(latestOf([one, other]));
        },
      });
    }
  });
  return { told, more };
}

/** The batch that is begun last, and of several the last of the sheet: it is the one to be moved. */
function latestOf(group: readonly PlacedPlan[]): PlacedPlan {
  return group.reduce((last, one) => (one.plan.schedule.start >= last.plan.schedule.start ? one : last));
}
