import type { Instant } from './event';
import type { Keeps } from './making';
import { type PlannedStep, type Schedule, strainedAt } from './schedule';
import type { WallClock } from './span';

/**
 * A plan with the days by which to taste and to use up, at the hour of straining on the wall, so that they are the days
 * a label names, whatever clocks do in between. Neither comes before the first glass. Without a first glass, or where
 * nobody knows how long it keeps, the plan stays as it is.
 */
export function withKeeping(schedule: Schedule, keep: Keeps | null, clock: WallClock): Schedule {
  const strained = strainedAt(schedule);
  const { drink } = schedule;
  if (keep === null || strained === null || drink === null) return schedule;
  const mark = (kind: 'best' | 'last'): PlannedStep => {
    const at: Instant = Math.max(clock.later(strained, keep[kind]), drink);
    return { id: kind, kind, at, minutes: 0, hands: false, inNight: false };
  };
  const marks = keep.best === keep.last ? [mark('last')] : [mark('best'), mark('last')];
  return { ...schedule, steps: [...schedule.steps, ...marks].sort((one, other) => one.at - other.at) };
}
