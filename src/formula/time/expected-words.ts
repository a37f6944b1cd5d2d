import { writeMetric, writeNumber } from '../../measure/write-quantity';
import type { Formulation } from '../engine/formulate';
import { expectedAcidityOf, firstReading } from './expected-acidity';
import { turnTimeOf } from './turn-time';

/**
 * What pH to expect of this batch at the first reading, when the usual time is over, and now if it is so many hours old;
 * or that nobody knows.
 */
export function describeExpected(formulation: Formulation, elapsed: number | null, decimalComma: boolean): string {
  const { plain } = turnTimeOf(formulation);
  const said = (hours: number): string => {
    const expected = expectedAcidityOf(formulation, hours);
    if (expected === null) return '';
    const [low, high] = [expected.low, expected.high].map((end) => writeNumber(end, 1, decimalComma));
    return `${low} to ${high}`;
  };
  const hours = (value: number): string => writeMetric(value, 'time', decimalComma);
  const first = firstReading(plain);
  if (said(first) === '') return `Which pH to expect of ${formulation.choices.source.plural} is unknown here.`;
  const now = elapsed === null ? '' : ` Now, after ${hours(elapsed)}: ${said(elapsed)}.`;
  return `To expect with lively grains: pH ${said(first)} after ${hours(first)}, ${said(plain)} after ${hours(plain)}.${now} A strip or a meter wins.`;
}
