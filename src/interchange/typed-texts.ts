import { readQuantity } from '../measure/read-quantity';
import { writeTrimmed } from '../measure/write-quantity';

const places = 2;

/** A mass as a cook would type it into a cell. */
export function writeGrams(grams: number, decimalComma: boolean): string {
  return `${writeTrimmed(grams, places, decimalComma).replaceAll(/[\u00A0\u202F\u2009]/g, '')} g`;
}

/** A share typed in per cent, from 0 to 100, as a part of 1 with what is left; null for any other text. */
export function readShare(text: string, decimalComma: boolean): { readonly of: number; readonly rest: number } | null {
  const plain = text.trim().replace(/ ?%$/, '');
  const read = readQuantity(plain, { kind: 'count', bareUnit: '', cups: 'us', decimalComma });
  if (!read.ok) return null;
  const { amount } = read.reading;
  return amount >= 0 && amount <= 100 ? { of: amount / 100, rest: 1 - amount / 100 } : null;
}
