import type { Instant } from '../../formula/time/event';
import type { Span, WallClock } from '../../formula/time/span';
import type { Settings } from '../document/document';

const inMinute = 60_000;
const years = { first: '1970', last: '9998' };
const minutesOfDay = 24 * 60;
/** A whole day has been skipped by a clock before, when a country crossed the date line. */
const longestSkip = 2 * minutesOfDay;
/** No plan is as long as twenty years, and days are gone through one by one. */
const longestStretch = 20 * 366 * minutesOfDay;

/**
 * The instant at which a clock on the wall, in the machine’s own time zone, shows a time such as 2026-11-28T08:00. A
 * time that no clock shows, because clocks were put forward over it, is the next that one does; a time that clocks
 * show twice is the first of the two. Null for a text that is no such time, also where the calendar or the clock has
 * none such: a 13th month, a 30 February, 25 o’clock.
 */
export function instantOf(wall: string): Instant | null {
  const match = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d)$/.exec(wall);
  if (match === null) return null;
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0] = match.slice(1).map(Number);
  const plain = new Date(plainMinutes(year, month, day, hour, minute) * inMinute);
  if (!plain.toISOString().startsWith(wall)) return null;
  for (let skipped = 0; skipped <= longestSkip; skipped += 1) {
    const found = dateAt(year, month, day, hour, minute + skipped);
    const shown = plainMinutes(year, month, day, hour, minute + skipped);
    if (shown === shownBy(found)) return Math.floor(found.getTime() / inMinute);
  }
  return null;
}

/** Whether a text is a date and time that can be planned: 2026-11-28T08:00, from the year 1970 on. */
export function isPlannable(at: string): boolean {
  const year = at.slice(0, 4);
  return instantOf(at) !== null && year >= years.first && year <= years.last;
}

/** What the clock on the wall shows at an instant: 2026-11-28T08:00. */
export function wallOf(at: Instant): string {
  const date = new Date(at * inMinute);
  const two = (part: number): string => String(part).padStart(2, '0');
  const day = `${String(date.getFullYear()).padStart(4, '0')}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
  return `${day}T${two(date.getHours())}:${two(date.getMinutes())}`;
}

/** The minute that has begun. */
export function now(): Instant {
  return Math.floor(Date.now() / inMinute);
}

/** The machine’s own clock with these quiet hours. From a time to the same time there are none. */
export function wallClock({ from: dusk, to: dawn }: Settings['quiet']): WallClock {
  const overMidnight = dawn < dusk ? 1 : 0;
  return {
    nights: (from, to) => {
      if (dusk === dawn) return [];
      return daysOf(from - minutesOfDay, to).flatMap((day): Span[] => {
        const [begins, ends] = [onDay(day, 0, dusk), onDay(day, overMidnight, dawn)];
        if (begins === null || ends === null) return [];
        return begins < ends && begins < to && ends > from ? [{ from: begins, to: ends }] : [];
      });
    },
    midnights: (from, to) =>
      daysOf(from, to)
        .map((day) => onDay(day, 0, '00:00'))
        .filter((at) => at !== null)
        .filter((at) => at >= from && at < to),
    later: (at, days) => onDay(new Date(at * inMinute), days, wallOf(at).slice(11)) ?? at + days * minutesOfDay,
  };
}

/**
 * Midday of each day that a stretch of time touches: a time that every clock shows. None of a stretch that is longer
 * than any plan, or of times that no calendar reaches.
 */
function daysOf(from: Instant, to: Instant): readonly Date[] {
  const first = new Date(from * inMinute);
  const last = new Date(to * inMinute);
  if (!(isDated(first) && isDated(last) && to - from <= longestStretch)) return [];
  const days: Date[] = [];
  for (let number = 0; ; number += 1) {
    const day = dateAt(first.getFullYear(), first.getMonth() + 1, first.getDate() + number, 12, 0);
    days.push(day);
    if (plainMinutes(...partsOf(day)) >= plainMinutes(...partsOf(last))) return days;
  }
}

function isDated(date: Date): boolean {
  return !Number.isNaN(date.getTime());
}

function partsOf(date: Date): [number, number, number, number, number] {
  return [date.getFullYear(), date.getMonth() + 1, date.getDate(), 12, 0];
}

/** A time of a day so many days later; null after the year 9999, where a time can't be written any more. */
function onDay(day: Date, later: number, time: string): Instant | null {
  const date = dateAt(day.getFullYear(), day.getMonth() + 1, day.getDate() + later, 12, 0);
  return instantOf(`${wallOf(Math.floor(date.getTime() / inMinute)).slice(0, 10)}T${time}`);
}

function dateAt(year: number, month: number, day: number, hour: number, minute: number): Date {
  const date = new Date(year, month - 1, day, hour, minute);
  // Years below 100 would be taken for those of the last century.
  if (year < 100) date.setFullYear(year, month - 1, day);
  return date;
}

/** Parts of a wall time as one number, with days that no month has counted into the next. */
function plainMinutes(year: number, month: number, day: number, hour: number, minute: number): number {
  const date = new Date(0);
  date.setUTCFullYear(year, month - 1, day);
  date.setUTCHours(hour, minute, 0, 0);
  return date.getTime() / inMinute;
}

function shownBy(date: Date): number {
  return plainMinutes(date.getFullYear(), date.getMonth() + 1, date.getDate(), date.getHours(), date.getMinutes());
}
