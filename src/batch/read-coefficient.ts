import { type CoefficientId, coefficients } from '../formula/coefficients';
import { describeReadProblem } from '../measure/read-problem-words';
import { readQuantity } from '../measure/read-quantity';
import { writeTrimmed } from '../measure/write-quantity';

export type CoefficientRead =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly why: string };

/**
 * A figure of the cook's own for a coefficient, in the coefficient's unit, which the page shows beside the field: so a
 * plain number is asked for. Refused, with a sentence that says what to do, where it can't be read or can't be.
 */
export function readCoefficient(id: CoefficientId, text: string, decimalComma: boolean): CoefficientRead {
  const read = readQuantity(text, { kind: 'count', bareUnit: '', cups: 'us', decimalComma });
  if (!read.ok) return { ok: false, why: describeReadProblem(read.problem) };
  const { least, most } = coefficients[id];
  const { amount } = read.reading;
  if (amount >= least && amount <= most) return { ok: true, value: amount };
  const bounds = `${writeTrimmed(least, 2, decimalComma)} and ${writeTrimmed(most, 2, decimalComma)}`;
  return { ok: false, why: `Type a number between ${bounds}.` };
}
