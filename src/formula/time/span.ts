import { convertNumber } from '../../measure/units';
import type { Instant } from './event';

/** A stretch of elapsed time, its end not in it. */
export interface Span {
  readonly from: Instant;
  readonly to: Instant;
}

/** What the kitchen's own clock knows; it is worked out where a time zone can be seen. */
export interface WallClock {
  /** The quiet hours that touch a stretch of time, in order, apart from each other. */
  readonly nights: (from: Instant, to: Instant) => readonly Span[];
  /** When each day begins in a stretch of time, in order. */
  readonly midnights: (from: Instant, to: Instant) => readonly Instant[];
  /** The same time on the wall so many whole days later, or the next that the clock shows on that day. */
  readonly later: (at: Instant, days: number) => Instant;
}

/** Elapsed minutes of a day of 24 hours. */
export const dayMinutes = convertNumber(1, 'day', 'min');

/** The midnight that ends the day an instant is on. */
export function endOfDay(at: Instant, clock: WallClock): Instant {
  return clock.midnights(at + 1, at + 2 * dayMinutes)[0] ?? at;
}

/** Whether two stretches have time in common; one without length counts where it lies inside the other. */
export function overlaps(one: Span, other: Span): boolean {
  return one.from < other.to && one.to > other.from;
}

/**
 * Whether so many minutes from an instant on touch a night. A mark at the very edge of a night does not. Nights are in
 * order and apart from each other.
 */
export function isInNight(at: Instant, minutes: number, nights: readonly Span[]): boolean {
  const night = nights[firstEndingAfter(at, nights)];
  return night !== undefined && overlaps({ from: at, to: at + minutes }, night);
}

/** The nights that touch a stretch of time, of nights in order. */
export function nightsWithin({ from, to }: Span, nights: readonly Span[]): readonly Span[] {
  const found: Span[] = [];
  for (let place = firstEndingAfter(from, nights); place < nights.length; place += 1) {
    const night = nights[place];
    if (night === undefined || night.from >= to) break;
    found.push(night);
  }
  return found;
}

/** The place of the first night that ends after an instant, by halving; the number of nights where none does. */
function firstEndingAfter(at: Instant, nights: readonly Span[]): number {
  let [low, high] = [0, nights.length];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if ((nights[middle]?.to ?? at) > at) high = middle;
    else low = middle + 1;
  }
  return low;
}
