import type { Instant } from '../time/event';
import { dayMinutes, isInNight, nightsWithin, type Span } from '../time/span';
import type { Wait } from './making';

/** What follows a wait: work at fixed times after its end, then perhaps another wait, counted from there, with its own. */
export interface Following {
  readonly work: readonly Span[];
  readonly next?: { readonly from: Instant; readonly wait: Wait; readonly following: Following };
}

/**
 * How long a wait from an instant on is best, in minutes: the length nearest to the likely one, within the range, at
 * which none of the work that follows falls in a night, or has to. Of two lengths equally near the longer; the likely
 * one where none is free.
 */
export function findWait(from: Instant, wait: Wait, following: Following, nights: readonly Span[]): number {
  return findFree(from, wait, following, nights) ?? wait.likely;
}

function findFree(from: Instant, wait: Wait, following: Following, nights: readonly Span[]): number | null {
  const { low, likely, high } = wait;
  const isFree = (length: number): boolean => canFollow(from + length, following, nights);
  if (isFree(likely)) return likely;
  // Free stretches begin where a night ends and end where one begins, so the nearest lies at such an edge.
  // Quiet hours come back every day: where two days to either side have no free time, none has.
  let best: number | null = null;
  for (const span of allWork(following)) {
    const due = from + likely + span.from;
    for (const night of nightsWithin({ from: due - 2 * dayMinutes, to: due + 2 * dayMinutes }, nights)) {
      for (const length of [night.to - span.from - from, night.from - span.to - from]) {
        const isBetter = best === null || isNearer(length, best, likely);
        if (length >= low && length <= high && isBetter && isFree(length)) best = length;
      }
    }
  }
  return best;
}

function canFollow(at: Instant, { work, next }: Following, nights: readonly Span[]): boolean {
  if (work.some((span) => isInNight(at + span.from, span.to - span.from, nights))) return false;
  return next === undefined || findFree(at + next.from, next.wait, next.following, nights) !== null;
}

/** All work that follows, that after another wait as early and as late as it can be: there lie the edges. */
function allWork({ work, next }: Following): readonly Span[] {
  if (next === undefined) return work;
  const { low, high } = next.wait;
  const later = allWork(next.following).flatMap((span) =>
    [low, high].map((wait) => ({ from: next.from + wait + span.from, to: next.from + wait + span.to })),
  );
  return [...work, ...later];
}

function isNearer(one: number, other: number, to: number): boolean {
  const [near, far] = [Math.abs(one - to), Math.abs(other - to)];
  return near < far || (near === far && one > other);
}
