import type { Instant } from '../../formula/time/event';

const inMinute = 60_000;

const day = { weekday: 'short', day: 'numeric', month: 'short' } as const;
const time = { hour: '2-digit', minute: '2-digit' } as const;
const hour = { hour: 'numeric' } as const;
const weekday = { weekday: 'short' } as const;
const year = { year: 'numeric' } as const;

/**
 * Weekday, date and time: Sat, 28 Nov, 08:00; with the year where it is not this one. Words are in English, as the
 * page around them; whether the clock goes to 12 or to 24 is as this cook is used to.
 */
export function writeDayAndTime(at: Instant): string {
  return write(at, { ...day, ...yearOf(at), ...time });
}

/** Weekday and date: Sat, 28 Nov; with the year where it is not this one. */
export function writeDay(at: Instant): string {
  return write(at, { ...day, ...yearOf(at) });
}

/** Weekday and time, where the date is near another that is told: Sat 18:00, or Sat 06:00 pm. */
export function writeWeekdayAndTime(at: Instant): string {
  return write(at, { ...weekday, ...time });
}

/** The hour that has begun, and the half of the day where the clock goes to 12: 08, or 8 and am. */
export function writeHour(at: Instant): { readonly hour: string; readonly half: string } {
  const [written = '', half = ''] = write(at, hour).split(/\s/);
  return { hour: written, half };
}

/** The time of day: 08:00, or 08:00 am. */
export function writeTimeOfDay(at: Instant): string {
  return write(at, time);
}

function write(at: Instant, form: Intl.DateTimeFormatOptions): string {
  const { hour12 } = new Intl.DateTimeFormat(undefined, time).resolvedOptions();
  const cycle = hour12 === true ? ({ hourCycle: 'h12' } as const) : ({ hourCycle: 'h23' } as const);
  return new Intl.DateTimeFormat('en-GB', { ...form, ...('hour' in form ? cycle : {}) }).format(at * inMinute);
}

function yearOf(at: Instant): { readonly year?: 'numeric' } {
  return new Date(at * inMinute).getFullYear() === new Date().getFullYear() ? {} : year;
}
