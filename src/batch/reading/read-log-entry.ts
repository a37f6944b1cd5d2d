import { describeReadProblem } from '../../measure/read-problem-words';
import { readQuantity } from '../../measure/read-quantity';
import { convertNumber, type Kind, type UnitId } from '../../measure/units';
import type { Logged, Settings } from '../document/document';
import { isBlank } from './read-cell';

/** What the cook has put into the fields, as typed. */
export interface LogForm {
  readonly found: Logged['found'] | null;
  readonly hours: string;
  /** When it was looked at, as the field for a time gives it; empty is now. */
  readonly when: string;
  readonly temperature: string;
  readonly acidity: string;
  readonly note: string;
}

export type LogField = keyof LogForm;

/** An entry before it is said at which batch it was, and what the sheet expected. */
export type Found = Pick<Logged, 'found' | 'at' | 'hours' | 'temperature' | 'acidity' | 'note'>;

export type LogRead =
  | { readonly ok: true; readonly found: Found }
  | { readonly ok: false; readonly problems: Readonly<Partial<Record<LogField, string>>> };

type NumberRead = { readonly value: number | null; readonly problem: string | null };

const mostHours = 1000;
const coldest = 0;
const warmest = 50;
const mostAcidity = 14;

/**
 * What was found, read by how this cook measures: hours bare or as `13:30`, a temperature bare in the unit that leads.
 * `now` is the time on the wall. Refused field by field, with a sentence that says what to do.
 */
export function readLogEntry(form: LogForm, settings: Settings, now: string): LogRead {
  const hours = readHours(form.hours, settings);
  const temperature = readNumber(form.temperature, 'temperature', settings.leads === 'us' ? '°F' : '°C', settings, {
    least: coldest,
    most: warmest,
    why: 'Type a temperature between 0 °C and 50 °C (32 °F and 122 °F).',
  });
  const acidity = readNumber(form.acidity, 'acidity', 'pH', settings, {
    least: 0,
    most: mostAcidity,
    why: 'Type a pH between 0 and 14.',
  });
  const { found } = form;
  const at = form.when === '' ? now : form.when.slice(0, now.length);
  const needsHours = found !== null && found !== 'looked';
  const saysNothing = found === 'looked' && [form.acidity, form.temperature, form.note].every(isBlank);
  const problems: Partial<Record<LogField, string>> = {
    ...told('found', found === null ? 'Choose what you found.' : null),
    ...told('hours', hours.problem ?? (needsHours && hours.value === null ? missingHours : null)),
    ...told('when', whenProblem(at, now)),
    ...told('temperature', temperature.problem),
    ...told('acidity', acidity.problem),
    ...told('note', saysNothing ? 'Type a pH, a temperature or a note: there is nothing to save yet.' : null),
  };
  if (found === null || Object.keys(problems).length > 0) return { ok: false, problems };
  const values = { hours: hours.value, temperature: temperature.value, acidity: acidity.value };
  return { ok: true, found: { found, at, ...values, note: form.note.trim() } };
}

const missingHours = 'Type how many hours it had stood with its culture, such as 14 h, or choose “Just looked”.';

function told(field: LogField, problem: string | null): Partial<Record<LogField, string>> {
  return problem === null ? {} : { [field]: problem };
}

function whenProblem(at: string, now: string): string | null {
  if (!/^\d{4}-\d\d-\d\dT\d\d:\d\d$/.test(at)) return 'Choose a date and a time, or leave it empty for now.';
  return at > now ? 'That is still to come. Choose when you looked, or leave it empty for now.' : null;
}

function readHours(text: string, settings: Settings): NumberRead {
  const [, hours, minutes] = /^\s*(\d{1,3}):([0-5]\d)\s*(?:h)?\s*$/.exec(text) ?? [];
  const plain = hours === undefined || minutes === undefined ? text : `${hours} h ${minutes} min`;
  return readNumber(plain, 'time', 'h', settings, {
    least: convertNumber(1, 'min', 'h'),
    most: mostHours,
    why: 'Type a time between 1 min and 1000 h.',
  });
}

interface Bounds {
  readonly least: number;
  readonly most: number;
  readonly why: string;
}

function readNumber(text: string, kind: Kind, bareUnit: UnitId, settings: Settings, bounds: Bounds): NumberRead {
  if (isBlank(text)) return { value: null, problem: null };
  const { cups, decimalComma } = settings;
  const read = readQuantity(text, { kind, bareUnit, cups, decimalComma, within: bounds });
  if (!read.ok) return { value: null, problem: describeReadProblem(read.problem) };
  const { amount } = read.reading;
  return amount >= bounds.least && amount <= bounds.most
    ? { value: amount, problem: null }
    : { value: null, problem: bounds.why };
}
