import { type Exact, powerOfTen } from '../../measure/exact';
import { describeReadProblem } from '../../measure/read-problem-words';
import { type ReadOptions, readQuantity } from '../../measure/read-quantity';
import { longestCurrency, longestPrice } from '../document/document-limits';

/** A price as it is kept, and how money was written with it; null where no currency was typed. */
export type PriceRead =
  | { readonly ok: true; readonly price: string; readonly currency: string | null }
  | { readonly ok: false; readonly why: string };

const options: Omit<ReadOptions, 'decimalComma'> = { kind: 'count', bareUnit: '', cups: 'us' };
const hint = 'Type a price as a number, such as 4.35, with a currency or without.';

/**
 * A price such as "4.35", "4,35 €" or "$4.35", read to its last decimal. A currency is what stands before or after the
 * number; it comes back as it would be written with a 1.
 */
export function readPrice(text: string, decimalComma: boolean): PriceRead {
  const plain = text.trim().replaceAll(/\s+/g, ' ');
  const [, before = '', number = '', after = ''] = /^([^\d.,]*)([\d.,' ’½¼¾]*[\d½¼¾])(.*)$/u.exec(plain) ?? [];
  if (number === '') return { ok: false, why: hint };
  if (/^[-−–]/.test(plain)) return { ok: false, why: 'A price can’t be less than 0. Leave out the minus sign.' };
  const read = readQuantity(number.replaceAll(/['’ ]/g, ''), { ...options, decimalComma });
  if (!read.ok) return { ok: false, why: describeReadProblem(read.problem) };
  if (before !== '' && after.trim() !== '') return { ok: false, why: hint };
  if (isMeasure(after)) return { ok: false, why: 'Type what the package costs here. What it holds stands beside it.' };
  const currency = `${before}1${after}`;
  if (currency.length > longestCurrency || /\d/.test(before + after) || /[×*/+]/.test(after))
    return { ok: false, why: hint };
  const price = inDigits(read.reading.exact);
  if (price === null) return { ok: false, why: 'Type the price in decimals, such as 4.35.' };
  return { ok: true, price, currency: currency === '1' ? null : currency };
}

/** Whether what stands behind a number is a unit of weight or volume. */
function isMeasure(after: string): boolean {
  const read = readQuantity(`1${after}`, {
    ...options,
    kind: 'mass',
    bareUnit: 'g',
    also: ['volume'],
    decimalComma: false,
  });
  return after.trim() !== '' && read.ok;
}

/** A number of 0 or more in plain digits, where its decimals end and it is no longer than a price can be. */
function inDigits({ numerator, denominator }: Exact): string | null {
  for (let places = 0; places < longestPrice; places += 1) {
    const scaled = numerator * powerOfTen(places);
    if (scaled % denominator !== 0n) continue;
    const digits = String(scaled / denominator).padStart(places + 1, '0');
    const whole = digits.length - places;
    const text = places === 0 ? digits : `${digits.slice(0, whole)}.${digits.slice(whole)}`;
    return text.length <= longestPrice ? text : null;
  }
  return null;
}
