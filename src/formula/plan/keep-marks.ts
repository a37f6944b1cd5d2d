import type { Instant } from '../time/event';
import { endOfDay, type WallClock } from '../time/span';
import type { Keeps } from './making';
import { type PlannedStep, type Schedule, strainedAt } from './schedule';

/**
 * A plan with the days by which to taste and to use up, at the hour of straining on the wall, so that they are the days
 * a label names, whatever clocks do in between. They never move: where the first glass would come after the last day,
 * the plan stops at the end of that day and says why. Where nobody knows how long it keeps, or when it is strained, the
 * plan stays as it is.
 */
export function withKeeping(schedule: Schedule, keep: Keeps | null, clock: WallClock): Schedule {
  const strained = strainedAt(schedule);
  if (keep === null || strained === null) return schedule;
  const mark = (kind: 'best' | 'last'): PlannedStep => {
    const at: Instant = clock.later(strained, keep[kind]);
    return { id: kind, kind, at, minutes: 0, hands: false, inNight: false };
  };
  const last = mark('last');
  const marks = keep.best === keep.last ? [last] : [mark('best'), last];
  const plan = stopAt(endOfDay(last.at, clock), schedule, keep);
  return { ...plan, steps: [...plan.steps, ...marks].sort((one, other) => one.at - other.at) };
}

/** The plan without what would come too late to be drunk; the same plan where its first glass is there in time. */
function stopAt(end: Instant, schedule: Schedule, keep: Keeps): Schedule {
  const { steps, waits, cold, drink } = schedule;
  if (drink === null || drink < end) return schedule;
  return {
    ...schedule,
    steps: steps.filter(({ kind, at }) => kind !== 'drink' && at < end),
    waits: waits.filter(({ kind, from }) => kind !== 'fridge' && from < end),
    cold: cold !== null && cold < end ? cold : null,
    drink: null,
    stopped: `The first glass would come after the last day to drink it: it keeps ${writeKeeping(keep)}. ${wayOut(schedule)}`,
  };
}

function writeKeeping({ last }: Keeps): string {
  if (last === 0) return 'no longer than the day it is strained';
  return last === 1 ? 'no longer than 1 day from straining' : `no longer than ${last} days from straining`;
}

function wayOut({ waits }: Schedule): string {
  return waits.some(({ kind }) => kind === 'second')
    ? 'Shorten the second ferment.'
    : 'Plan it so that it is strained earlier in the day.';
}
