import { writeTrimmed } from '../../measure/write-quantity';
import { kitchenLines } from '../../reference/kitchen-lines';

/**
 * A number to so many significant digits (four unless told otherwise), for following an arithmetic by eye; never in
 * exponent form, and a dash where there is none.
 */
export function writeSignificant(
  value: number,
  decimalComma: boolean,
  digits = kitchenLines.workingDigits.value,
): string {
  if (!Number.isFinite(value)) return '–';
  const magnitude = value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)));
  return writeTrimmed(value, Math.max(0, digits - 1 - magnitude), decimalComma);
}
