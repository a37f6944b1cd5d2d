import { type CoefficientId, coefficients } from '../../formula/recipe/coefficients';
import { describeReadProblem } from '../../measure/read-problem-words';
import { readQuantity } from '../../measure/read-quantity';
import type { Kind, UnitId } from '../../measure/units';
import { writeTrimmed } from '../../measure/write-quantity';

export type CoefficientRead =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly why: string };

/** How a figure in each unit is read; the rest are plain numbers. */
const kinds: Readonly<Record<string, { readonly kind: Kind; readonly bareUnit: UnitId }>> = {
  cm: { kind: 'length', bareUnit: 'cm' },
  mL: { kind: 'volume', bareUnit: 'mL' },
  g: { kind: 'mass', bareUnit: 'g' },
  'g in 100 g': { kind: 'mass', bareUnit: 'g' },
  h: { kind: 'time', bareUnit: 'h' },
};

/**
 * A figure of the cook's own for a coefficient, in the coefficient's unit: a bare number is in that unit, and lengths,
 * volumes, masses, times and shares may have another of their kind. Refused, with a sentence that says what to do,
 * where it can't be read or can't be.
 */
export function readCoefficient(id: CoefficientId, text: string, unit: string, decimalComma: boolean): CoefficientRead {
  const how = kinds[unit] ?? { kind: 'count', bareUnit: '' };
  const percent = unit === 'share' && text.includes('%');
  const wanted = percent ? ({ kind: 'share', bareUnit: '%' } as const) : how;
  const { least, most } = coefficients[id];
  const within = percent ? { least: 100 * least, most: 100 * most } : { least, most };
  const read = readQuantity(text, { ...wanted, cups: 'us', decimalComma, within });
  if (!read.ok) return { ok: false, why: describeReadProblem(read.problem) };
  const amount = percent ? read.reading.amount / 100 : read.reading.amount;
  if (amount >= least && amount <= most) return { ok: true, value: amount };
  const bounds = `${writeTrimmed(least, 2, decimalComma)} and ${writeTrimmed(most, 2, decimalComma)}`;
  return { ok: false, why: `Type a number between ${bounds}.` };
}
