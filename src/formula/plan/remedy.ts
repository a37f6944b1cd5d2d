import { handwork } from '../../reference/handwork';
import type { Instant } from '../time/event';
import type { WallClock } from '../time/span';
import { withKeeping } from './keep-marks';
import { meets, type Placed, type PlacedPlan, place } from './placed';
import { reach, replanner } from './plan-batch';
import { nightWork, type Schedule } from './schedule';
import { hasEnough, holds } from './shared-things';

/** The batch to move, and a start near at which it is in nobody's way. */
export interface Remedy {
  readonly batch: string;
  readonly name: string;
  readonly start: Instant;
  /** Its first glass from then on; null where it would come too late to be drunk. */
  readonly glass: Instant | null;
  /** Where it was to be ready to drink at a time, that time, and whether it still is. */
  readonly wish: { readonly at: Instant; readonly isKept: boolean } | null;
}

/**
 * The nearest start of a batch that meets no other's work, grains or jars, and leaves the night alone. One that was to
 * be ready at a time is begun earlier, from `present` on, so that it is there by then and still keeps; only where there
 * is no such start does it get a later one, as any other batch.
 */
export function findRemedy(
  one: PlacedPlan,
  all: readonly PlacedPlan[],
  clock: WallClock,
  present: Instant,
): Remedy | null {
  const { plan, making } = one;
  const { start } = plan.schedule;
  const others = all.filter((other) => other !== one);
  const free = Math.max(0, ...others.map(({ busy }) => (busy?.to ?? start) - start));
  const within = Math.min(free, reach) + reach;
  const planFrom = replanner(plan, within, clock);
  const wish = plan.wanted.by === 'drink' ? plan.wanted.at : null;
  const { step, most } = { step: handwork.search.value, most: making.chill.high + reach };
  const isKept = ({ cold, drink }: Schedule): boolean =>
    wish !== null && cold !== null && drink !== null && drink <= wish && cold + making.chill.high >= wish;
  const tryAt = (at: Instant): Schedule | null => {
    const moved = planFrom(at);
    return isFree(place(making, moved), moved, others) ? moved : null;
  };
  const remedyFrom = (moved: Schedule): Remedy => {
    const { drink: glass } = withKeeping(moved, making.keep, clock);
    const { batch, name } = making;
    return { batch, name, start: moved.start, glass, wish: wish === null ? null : { at: wish, isKept: isKept(moved) } };
  };
  for (let away = step; wish !== null && away <= most && start - away >= present; away += step) {
    const moved = tryAt(start - away);
    if (moved !== null && isKept(moved)) return remedyFrom(moved);
  }
  for (let away = step; away <= within; away += step) {
    const moved = tryAt(start + away);
    if (moved !== null) return remedyFrom(moved);
  }
  return null;
}

function isFree(placed: Placed, moved: Schedule, others: readonly Placed[]): boolean {
  return (
    nightWork(moved).length === 0 &&
    others.every((other) => !meets(placed, other)) &&
    holds.every((kind) => hasEnough(placed, others, kind))
  );
}
