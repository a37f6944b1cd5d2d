import type { Instant } from '../formula/timeline/event';

const inMinute = 60_000;

function write(at: Instant, form: Intl.DateTimeFormatOptions): string {
  return new Intl.DateTimeFormat(undefined, form).format(at * inMinute);
}

/** Weekday, date and time as this cook’s own language writes them: Sat 28 Nov, 08:00. */
export function writeDayAndTime(at: Instant): string {
  return write(at, { weekday: 'short', day: 'numeric', month: 'short', hour: '2-digit', minute: '2-digit' });
}

/** Weekday and date: Sat 28 Nov. */
export function writeDay(at: Instant): string {
  return write(at, { weekday: 'short', day: 'numeric', month: 'short' });
}

/** The time of day: 08:00, or 08:00 am. */
export function writeTimeOfDay(at: Instant): string {
  return write(at, { hour: '2-digit', minute: '2-digit' });
}
