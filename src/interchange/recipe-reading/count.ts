import { type Exact, exactly } from '../../measure/exact';
import { readNumberWord } from '../../measure/number-words';
import { isNumberAt, matchAt, readNumber } from '../../measure/read-number';
import type { Fault } from '../../measure/read-problem';

export interface Count {
  readonly low: Exact;
  readonly high: Exact;
  readonly end: number;
  /** Written as a word, such as "a" or "two", which only counts before a unit or a food that is known. */
  readonly inWords: boolean;
}

export type CountRead = { readonly ok: true; readonly count: Count } | { readonly ok: false; readonly fault: Fault };

// "1 400 ml tin" is one tin of 400 mL and not fourteen hundred millilitres.
const countBeforeSize =
  /(\d{1,2}) (?=\d{3} ?-? ?(?:ml|g|oz)(?!\p{L}).? ?(?:can|tin|carton|bottle|jar|pack|box|bag))/iuy;
const joinsFraction = / (?:and|&) (?=\d+ ?\/ ?\d|[½⅓⅔¼¾⅕-⅞])/iuy;
const andHalf = / and a half(?!\p{L})/iuy;
const rangeSign = / ?(?:-|to(?!\p{L})|or(?!\p{L})|up to(?!\p{L})) ?(?:about )?/iuy;

const between = /between /iy;
const betweenAnd = / (?:and|&) /iy;

function readOne(text: string, at: number, decimalComma: boolean): CountRead | null {
  const beforeSize = matchAt(countBeforeSize, text, at);
  if (beforeSize !== null) return number(exactly(beforeSize[1] ?? ''), at + (beforeSize[1] ?? '').length);
  if (!isNumberAt(text, at)) {
    const word = readNumberWord(text, at);
    return word === null ? null : number(word.value, word.end, true);
  }
  const read = readNumber(text, at, decimalComma);
  if (!read.ok) return read;
  const half = matchAt(andHalf, text, read.end);
  if (half !== null) return number(read.value.plus('0.5'), read.end + half[0].length);
  const joined = matchAt(joinsFraction, text, read.end);
  const part = joined === null ? null : readNumber(text, read.end + joined[0].length, decimalComma);
  if (part?.ok && part.value.compare(1) < 0) return number(read.value.plus(part.value), part.end);
  return number(read.value, read.end);
}

function number(value: Exact, end: number, inWords = false): CountRead {
  return { ok: true, count: { low: value, high: value, end, inWords } };
}

/**
 * Reads how many: any number that `readNumber` reads, "1 and 1/2", a number word, or a range of two. Null where none
 * starts here; a number that can’t be read gives its fault.
 */
export function readCount(text: string, at: number, decimalComma: boolean): CountRead | null {
  const opens = matchAt(between, text, at);
  const first = readOne(text, at + (opens?.[0].length ?? 0), decimalComma);
  if (first === null || !first.ok) return first;
  const to = matchAt(opens === null ? rangeSign : betweenAnd, text, first.count.end);
  if (to === null) return first;
  const second = readOne(text, first.count.end + to[0].length, decimalComma);
  // "1 to taste", "2 or so": no second number, so no range.
  if (second === null || !second.ok || second.count.low.compare(first.count.high) < 0) return first;
  if (second.count.inWords && !first.count.inWords) return first;
  const { high, end } = second.count;
  return { ok: true, count: { low: first.count.low, high, end, inWords: first.count.inWords } };
}
