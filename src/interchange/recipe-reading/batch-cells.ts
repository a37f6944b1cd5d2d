import type { NumericRowId } from '../../formula/recipe/order';
import { roundAndTrim, roundNumber } from '../../measure/rounding';

/** A cell of the new batch, with the text that would be typed into it and what that reads as. */
export interface PlannedCell {
  readonly row: NumericRowId;
  readonly text: string;
  readonly amount: number;
  readonly kind: 'mass' | 'volume';
}

/** A cell written as a cook would type it, to the gram or millilitre, small amounts finer; null for no amount at all. */
export function planCell(
  row: NumericRowId,
  amount: number,
  unit: 'g' | 'mL',
  decimalComma: boolean,
): PlannedCell | null {
  const places = amount < 1 ? 2 : amount < 100 ? 1 : 0;
  const rounded = roundNumber(amount, places);
  if (!Number.isFinite(rounded) || rounded <= 0) return null;
  const digits = roundAndTrim(rounded, places);
  const text = `${decimalComma ? digits.replace('.', ',') : digits} ${unit}`;
  return { row, text, amount: rounded, kind: unit === 'g' ? 'mass' : 'volume' };
}
