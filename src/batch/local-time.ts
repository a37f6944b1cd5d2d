import type { Instant } from '../formula/timeline/event';
import type { Span, WallClock } from '../formula/timeline/span';
import type { Settings } from './document';

const inMinute = 60_000;
const minutesOfDay = 24 * 60;
/** A whole day has been skipped by a clock before, when a country crossed the date line. */
const longestSkip = 2 * minutesOfDay;

/**
 * The instant at which a clock on the wall, in the machine’s own time zone, shows a time such as 2026-11-28T08:00. A
 * time that no clock shows, because clocks were put forward over it, is the next that one does; a time that clocks
 * show twice is the first of the two. Null for a text that is no such time.
 */
export function instantOf(wall: string): Instant | null {
  const match = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d)$/.exec(wall);
  if (match === null) return null;
  const [year = 0, month = 0, day = 0, hour = 0, minute = 0] = match.slice(1).map(Number);
  for (let skipped = 0; skipped <= longestSkip; skipped += 1) {
    const found = dateAt(year, month, day, hour, minute + skipped);
    const shown = plainMinutes(year, month, day, hour, minute + skipped);
    if (shown === shownBy(found)) return Math.floor(found.getTime() / inMinute);
  }
  return null;
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
        const night = { from: onDay(day, 0, dusk), to: onDay(day, overMidnight, dawn) };
        return night.from < night.to && night.from < to && night.to > from ? [night] : [];
      });
    },
    midnights: (from, to) =>
      daysOf(from, to)
        .map((day) => onDay(day, 0, '00:00'))
        .filter((at) => at >= from && at < to),
    later: (at, days) => onDay(new Date(at * inMinute), days, wallOf(at).slice(11)),
  };
}

/** Midday of each day that a stretch of time touches: a time that every clock shows. */
function daysOf(from: Instant, to: Instant): readonly Date[] {
  const first = new Date(from * inMinute);
  const last = new Date(to * inMinute);
  const days: Date[] = [];
  for (let number = 0; ; number += 1) {
    const day = dateAt(first.getFullYear(), first.getMonth() + 1, first.getDate() + number, 12, 0);
    days.push(day);
    if (plainMinutes(...partsOf(day)) >= plainMinutes(...partsOf(last))) return days;
  }
}

function partsOf(date: Date): [number, number, number, number, number] {
  return [date.getFullYear(), date.getMonth() + 1, date.getDate(), 12, 0];
}

function onDay(day: Date, later: number, time: string): Instant {
  const date = dateAt(day.getFullYear(), day.getMonth() + 1, day.getDate() + later, 12, 0);
  return instantOf(`${wallOf(Math.floor(date.getTime() / inMinute)).slice(0, 10)}T${time}`) ?? 0;
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
