import { type Big, decimal } from '../../measure/decimal';
import { type Fraction, isNumberAt, matchAt, readNumber } from '../../measure/read-number';
import type { Fault } from '../../measure/read-problem';

export interface Count {
  readonly low: Big;
  readonly high: Big;
  readonly end: number;
  /** Written as a word, such as "a" or "two", which only counts before a unit or a food that is known. */
  readonly inWords: boolean;
}

export type CountRead = { readonly ok: true; readonly count: Count } | { readonly ok: false; readonly fault: Fault };

const words: readonly (readonly [word: string, value: string])[] = [
  ['one and a half', '1.5'],
  ['three quarters of an?', '0.75'],
  ['three quarters', '0.75'],
  ['(?:a |one )?half(?: of)? an?', '0.5'],
  ['(?:a |one )?half', '0.5'],
  ['(?:a |one )?quarter of an?', '0.25'],
  ['(?:a |one )quarter', '0.25'],
  ['an? dozen', '12'],
  ['a couple of', '2'],
  ['an?', '1'],
  ...['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'].map(
    (word, at) => [word, String(at + 1)] as const,
  ),
];
const wordPatterns = words.map(
  ([word, value]) => ({ pattern: new RegExp(`(?:${word})(?![\\p{L}\\p{M}'’-])`, 'iuy'), value }) as const,
);

// "1 400 ml tin" is one tin of 400 mL and not fourteen hundred millilitres.
const countBeforeSize =
  /(\d{1,2}) (?=\d{3} ?-? ?(?:ml|g|oz)(?!\p{L}).? ?(?:can|tin|carton|bottle|jar|pack|box|bag))/iuy;
const joinsFraction = / (?:and|&) (?=\d+ ?\/ ?\d|[½⅓⅔¼¾⅕-⅞])/iuy;
const andHalf = / and a half(?!\p{L})/iuy;
const rangeSign = / ?(?:-|to(?!\p{L})|or(?!\p{L})|up to(?!\p{L})) ?/iuy;

function inDecimals({ numerator, denominator }: Fraction): Big {
  return decimal(numerator.div(denominator));
}

function readOne(text: string, at: number, decimalComma: boolean): CountRead | null {
  const beforeSize = matchAt(countBeforeSize, text, at);
  if (beforeSize !== null) return whole(beforeSize[1] ?? '', at + (beforeSize[1] ?? '').length);
  if (!isNumberAt(text, at)) {
    for (const { pattern, value } of wordPatterns) {
      const found = matchAt(pattern, text, at);
      if (found === null) continue;
      return { ok: true, count: { ...same(decimal(value)), end: at + found[0].length, inWords: true } };
    }
    return null;
  }
  const read = readNumber(text, at, decimalComma);
  if (!read.ok) return read;
  const half = matchAt(andHalf, text, read.end);
  if (half !== null) return number(inDecimals(read.value).plus('0.5'), read.end + half[0].length);
  const joined = matchAt(joinsFraction, text, read.end);
  if (joined !== null) {
    const fraction = readNumber(text, read.end + joined[0].length, decimalComma);
    if (fraction.ok && inDecimals(fraction.value).lt(1))
      return number(inDecimals(read.value).plus(inDecimals(fraction.value)), fraction.end);
  }
  return number(inDecimals(read.value), read.end);
}

function whole(digits: string, end: number): CountRead {
  return number(decimal(digits), end);
}

function number(value: Big, end: number): CountRead {
  return { ok: true, count: { ...same(decimal(value)), end, inWords: false } };
}

function same(value: Big) {
  return { low: value, high: value };
}

/**
 * Reads how many: any number that `readNumber` reads, "1 and 1/2", a number word, or a range of two. Null where none
 * starts here; a number that can’t be read gives its fault.
 */
export function readCount(text: string, at: number, decimalComma: boolean): CountRead | null {
  const first = readOne(text, at, decimalComma);
  if (first === null || !first.ok) return first;
  const to = matchAt(rangeSign, text, first.count.end);
  if (to === null) return first;
  const second = readOne(text, first.count.end + to[0].length, decimalComma);
  // "1 to taste", "2 or so": no second number, so no range.
  if (second === null || !second.ok || second.count.low.lt(first.count.high)) return first;
  if (second.count.inWords && !first.count.inWords) return first;
  const { high, end } = second.count;
  return { ok: true, count: { low: first.count.low, high, end, inWords: first.count.inWords } };
}
