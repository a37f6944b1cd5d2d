import { type Exact, exactly } from '../../measure/exact';
import { type Fraction, isNumberAt, matchAt, readNumber } from '../../measure/read-number';
import type { Fault } from '../../measure/read-problem';

export interface Count {
  readonly low: Exact;
  readonly high: Exact;
  readonly end: number;
  /** Written as a word, such as "a" or "two", which only counts before a unit or a food that is known. */
  readonly inWords: boolean;
}

export type CountRead = { readonly ok: true; readonly count: Count } | { readonly ok: false; readonly fault: Fault };

const wholeWords = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');
const namedFractions: Readonly<Record<string, readonly [over: number, under: number]>> = {
  half: [1, 2],
  halves: [1, 2],
  third: [1, 3],
  quarter: [1, 4],
  fourth: [1, 4],
  eighth: [1, 8],
};
const ends = String.raw`(?![\p{L}\p{M}'’-])`;
const whole = `(an?|${wholeWords.join('|')})`;
const fraction = '(half|halves|third|quarter|fourth|eighth)s?';
const ofOne = '(?: of)?(?: an?| one)?';
// "Half a cup", "two-thirds of a cup", "a quarter cup"; a "third" alone is the third of something, unless a cup follows.
const fractionWords = new RegExp(
  `(?:(third|quarter)(?= (?:of an? )?(?:cup|tea|pound|lit|pint))|(?:${whole}[ -])?${fraction})${ofOne}(?![\\p{L}\\p{M}'’])`,
  'iuy',
);
const dozenWords = new RegExp(`(half )?an? dozen${ends}`, 'iuy');
const wholeAndFraction = new RegExp(`${whole} (?:and|&) (?:an? |one )?(?:(two|three)[ -])?${fraction}${ends}`, 'iuy');
const coupleOf = /a couple of(?!\p{L})/iuy;
const wholeAlone = new RegExp(`${whole}${ends}`, 'iuy');

// "1 400 ml tin" is one tin of 400 mL and not fourteen hundred millilitres.
const countBeforeSize =
  /(\d{1,2}) (?=\d{3} ?-? ?(?:ml|g|oz)(?!\p{L}).? ?(?:can|tin|carton|bottle|jar|pack|box|bag))/iuy;
const joinsFraction = / (?:and|&) (?=\d+ ?\/ ?\d|[½⅓⅔¼¾⅕-⅞])/iuy;
const andHalf = / and a half(?!\p{L})/iuy;
const rangeSign = / ?(?:-|to(?!\p{L})|or(?!\p{L})|up to(?!\p{L})) ?(?:about )?/iuy;

const between = /between /iy;
const betweenAnd = / (?:and|&) /iy;

function inDecimals({ numerator, denominator }: Fraction): Exact {
  return exactly(numerator.div(denominator));
}

function readOne(text: string, at: number, decimalComma: boolean): CountRead | null {
  const beforeSize = matchAt(countBeforeSize, text, at);
  if (beforeSize !== null) return number(exactly(beforeSize[1] ?? ''), at + (beforeSize[1] ?? '').length);
  if (!isNumberAt(text, at)) return readWords(text, at);
  const read = readNumber(text, at, decimalComma);
  if (!read.ok) return read;
  const half = matchAt(andHalf, text, read.end);
  if (half !== null) return number(inDecimals(read.value).plus('0.5'), read.end + half[0].length);
  const joined = matchAt(joinsFraction, text, read.end);
  if (joined !== null) {
    const fraction = readNumber(text, read.end + joined[0].length, decimalComma);
    if (fraction.ok && inDecimals(fraction.value).compare(1) < 0)
      return number(inDecimals(read.value).plus(inDecimals(fraction.value)), fraction.end);
  }
  return number(inDecimals(read.value), read.end);
}

/** "Two", "two and a half", "half a", "two thirds of a": the number that words say. */
function readWords(text: string, at: number): CountRead | null {
  const say = (value: Exact, length: number): CountRead => ({
    ok: true,
    count: { ...same(exactly(value)), end: at + length, inWords: true },
  });
  const both = matchAt(wholeAndFraction, text, at);
  if (both !== null) return say(wholeOf(both[1]).plus(fractionOf(both[2], both[3])), both[0].length);
  const dozen = matchAt(dozenWords, text, at);
  if (dozen !== null) return say(exactly(dozen[1] === undefined ? 12 : 6), dozen[0].length);
  const part = matchAt(fractionWords, text, at);
  const named = part?.[3]?.toLowerCase() ?? '';
  // Without a number before it, only a half is a half: "quarter the lemons" and "third, blend" are none.
  if (part !== null && (part[1] !== undefined || part[2] !== undefined || named.startsWith('hal')))
    return say(fractionOf(part[2], part[1] ?? named), part[0].length);
  const couple = matchAt(coupleOf, text, at);
  if (couple !== null) return say(exactly(2), couple[0].length);
  const alone = matchAt(wholeAlone, text, at);
  return alone === null ? null : say(wholeOf(alone[1]), alone[0].length);
}

function wholeOf(word = 'one'): Exact {
  const place = wholeWords.indexOf(word.toLowerCase());
  return exactly(place < 0 ? 1 : place + 1);
}

function fractionOf(times: string | undefined, word = 'half'): Exact {
  const [over, under] = namedFractions[word.toLowerCase()] ?? [1, 2];
  return exactly(wholeOf(times).times(over).div(under));
}

function number(value: Exact, end: number): CountRead {
  return { ok: true, count: { ...same(exactly(value)), end, inWords: false } };
}

function same(value: Exact) {
  return { low: value, high: value };
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
