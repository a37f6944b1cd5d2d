import { teaches } from '../../formula/time/learn-pace';
import { bothUnits } from '../../formula/words/both-units';
import { type Kitchen, writeValue } from '../../formula/words/write-row';
import { convertNumber } from '../../measure/units';
import { writeTrimmed } from '../../measure/write-quantity';
import { fermenting } from '../../reference/fermenting';
import { grains } from '../../reference/grains';
import { kitchen as defaults } from '../../reference/kitchen';
import { sources } from '../../reference/sources';
import { writeCalendarDay } from '../document/calendar-day';
import type { Logged } from '../document/document';
import { looksOf } from './log-edits';

/** What can be found at a jar, as the cook chooses it. */
export const foundWords: Readonly<Record<Logged['found'], string>> = {
  flat: 'Not sour yet',
  ready: 'Ready',
  sour: 'Too sour',
  looked: 'Just looked',
};

/** When it was looked at, such as `24 Nov 2026, 08:00`. */
export function writeWhen({ at }: Pick<Logged, 'at'>): string {
  const [day = '', time = ''] = at.split('T');
  return `${writeCalendarDay(day) ?? day}, ${time}`;
}

/** Since when it was ready, as the cook chooses it. */
export const holdsWords: Readonly<Record<NonNullable<Logged['holds']>, string>> = {
  just: 'just now',
  while: 'for a while',
};

/**
 * What was found, such as `Ready after 9 h · just now · room 21 °C (70 °F) · pH 4.40`; the note apart, which is the
 * cook’s.
 */
export function describeEntry(entry: Omit<Logged, 'batch' | 'name' | 'at' | 'expected'>, kitchen: Kitchen): string {
  const { found, hours, temperature, acidity, holds, gaveUp } = entry;
  const time = hours === null ? '' : ` after ${writeValue(hours, 'time', null, kitchen).metric}`;
  return [
    `${foundWords[found]}${time}`,
    ...(holds === undefined ? [] : [holdsWords[holds]]),
    ...(gaveUp === true ? ['given up'] : []),
    ...(temperature === null ? [] : [`room ${writeRoom(temperature, kitchen)}`]),
    ...(acidity === null ? [] : [writeValue(acidity, 'acidity', null, kitchen).metric]),
  ].join(' · ');
}

/** Of what it was then, such as `almonds · water kefir grains, 54 g/L · 30 g/L sugar at the start`; null where nobody wrote it down. */
export function describeRecipeThen({ was }: Pick<Logged, 'was'>, kitchen: Kitchen): string | null {
  if (was === undefined) return null;
  const rate = (value: number | null): string | null =>
    value === null ? null : `${writeTrimmed(value, 1, kitchen.decimalComma)}\u00A0g/L`;
  const [dose, start] = [rate(was.grainRate), rate(was.startingSugar)];
  const kind = grains[was.grains].name.toLowerCase();
  return [
    (was.carton ?? '').trim() === '' ? sources[was.source].plural : `“${was.carton}”`,
    dose === null ? kind : `${kind}, ${dose}`,
    ...(start === null ? [] : [`${start} sugar at the start`]),
  ].join(' · ');
}

function writeRoom(celsius: number, kitchen: Kitchen): string {
  return bothUnits(writeValue(celsius, 'temperature', null, kitchen), kitchen.leads);
}

/** The temperatures in which a time can be told. */
function writeModelled(): string {
  const ends = [fermenting.ripeningCoolest.value, fermenting.ripeningWarmest.value];
  const fahrenheit = ends.map((celsius) => writeTrimmed(convertNumber(celsius, '°C', '°F'), 0, false));
  return `${ends.join('–')} °C (${fahrenheit.join('–')} °F)`;
}

/** Why an entry that says how far the jar was teaches nothing; null where it does, or was only a look. */
export function whyUnlearned(entry: Logged): string | null {
  const [look] = looksOf([entry]);
  if (entry.found === 'looked' || (look !== undefined && teaches(look))) return null;
  return entry.expected === null
    ? `Teaches nothing: the sheet had no time to compare it with, as outside ${writeModelled()}.`
    : 'Teaches nothing: its hours are not those of a ferment.';
}

/** That an entry tastes done and its pH is above the usual line; null where it does not say both. */
export function whyNotAcid({ found, acidity }: Logged, { decimalComma }: Kitchen): string | null {
  const line = defaults.acidityLine.value;
  if (acidity === null || acidity <= line || found === 'flat' || found === 'looked') return null;
  return `Taste is no test: this pH is above ${writeTrimmed(line, 1, decimalComma)}, so it is not acid enough yet.`;
}

/** Whether its pH is at the usual line or below, and so may stand as the acidity that was reached. */
export function isAcidEnough({ acidity }: Pick<Logged, 'acidity'>): boolean {
  return acidity !== null && acidity <= defaults.acidityLine.value;
}

/** The names of the steps for undo and redo. */
export const logSteps = {
  add: (entry: Logged, kitchen: Kitchen) => `Log “${describeEntry(entry, kitchen)}”`,
  change: 'Change an entry of the log',
  remove: 'Remove an entry of the log',
  leaveOut: 'Leave an entry out of what the log teaches',
  countAgain: 'Count an entry of the log again',
  next: (name: string, what: string) => `Make the next “${name}”: ${what}`,
  forget: 'Forget the learned pace',
  take: 'Use the pace the log teaches',
  open: (days: number) => `Open a carton for ${days === 1 ? '1 day' : `${days} days`}`,
  notOpened: 'Take back the opened carton',
} as const;
