import type { HeatStep } from '../../formula/recipe/recipe';
import { describeReadProblem } from '../../measure/read-problem-words';
import { readQuantity } from '../../measure/read-quantity';
import { convertNumber } from '../../measure/units';
import { hottestHeat, longestHeat } from '../document/document-limits';

export type HeatRead = { readonly ok: true; readonly heat: HeatStep } | { readonly ok: false; readonly why: string };

interface Habits {
  readonly leads: 'metric' | 'us';
  readonly decimalComma: boolean;
}

/**
 * A heat step as typed: a temperature (a bare number is in the unit that leads) and a time (a bare number is minutes).
 * Refused where either can't be read, is not above 0, or is more than a pot of water reaches.
 */
export function readHeat(what: HeatStep['what'], temperature: string, time: string, habits: Habits): HeatRead {
  const { decimalComma } = habits;
  const bareUnit = habits.leads === 'us' ? '°F' : '°C';
  const within = { least: 0, most: hottestHeat };
  const hot = readQuantity(temperature, { kind: 'temperature', bareUnit, cups: 'us', decimalComma, within });
  if (!hot.ok) return { ok: false, why: describeReadProblem(hot.problem) };
  const long = readQuantity(time, {
    kind: 'time',
    bareUnit: 'min',
    cups: 'us',
    decimalComma,
    within: { least: 0, most: convertNumber(longestHeat, 'min', 'h') },
  });
  if (!long.ok) return { ok: false, why: describeReadProblem(long.problem) };
  const hours = long.reading.amount;
  const celsius = hot.reading.amount;
  if (celsius <= 0 || celsius > hottestHeat) {
    const fahrenheit = convertNumber(hottestHeat, '°C', '°F');
    return {
      ok: false,
      why: `Type a temperature between 0 °C and ${hottestHeat} °C (32 °F and ${fahrenheit} °F).`,
    };
  }
  if (hours <= 0 || hours > convertNumber(longestHeat, 'min', 'h'))
    return { ok: false, why: `Type a time of more than 0 minutes and at most ${longestHeat}.` };
  // To hours and back, 1000 minutes are a trace more, which could not be saved.
  const minutes = Math.min(longestHeat, convertNumber(hours, 'h', 'min'));
  return { ok: true, heat: { what, temperature: celsius, minutes } };
}
