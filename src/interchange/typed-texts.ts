import { readQuantity } from '../measure/read-quantity';
import { writeTrimmed } from '../measure/write-quantity';

const places = 2;

/** A mass as a cook would type it into a cell. */
export function writeGrams(grams: number, decimalComma: boolean): string {
  return `${writeTrimmed(grams, places, decimalComma).replaceAll(/[\u00A0\u202F\u2009]/g, '')} g`;
}

/** A price as typed, a plain number in the cook's own currency; null where it is blank, negative or no number. */
export function readPrice(text: string, decimalComma: boolean): number | null {
  const read = readQuantity(text, { kind: 'count', bareUnit: '', cups: 'us', decimalComma });
  return read.ok && read.reading.amount >= 0 ? read.reading.amount : null;
}
