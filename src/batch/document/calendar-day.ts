/** A day of the calendar by its date, such as 2026-11-25: of no hour and of no zone. */
export type Day = string;

/** The day it is here, by the clock of this machine. */
export function dayHere(moment: Date): Day {
  const [year, month, day] = [moment.getFullYear(), moment.getMonth() + 1, moment.getDate()];
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}

/** The day that comes so many days later, whatever the clocks do; null where either is no day of the years 1 to 9999. */
export function dayAfter(day: Day, days: number): Day | null {
  const moment = readDay(day);
  if (moment === null || !Number.isInteger(days)) return null;
  moment.setUTCDate(moment.getUTCDate() + days);
  const later = Number.isNaN(moment.getTime()) ? '' : moment.toISOString().slice(0, 10);
  return readDay(later) === null ? null : later;
}

/** A day as it is read everywhere, its month in letters: 5 Oct 2026. Null where there is no such day. */
export function writeCalendarDay(day: Day): string | null {
  const moment = readDay(day);
  return moment === null ? null : writer.format(moment);
}

// Pages are in English, so a month in another language would stand out; in letters no one takes it for a day.
const writer = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' });

function readDay(day: Day): Date | null {
  if (!/^\d{4}-\d\d-\d\d$/.test(day) || day.startsWith('0000')) return null;
  const moment = new Date(`${day}T00:00:00Z`);
  return !Number.isNaN(moment.getTime()) && moment.toISOString().startsWith(day) ? moment : null;
}
