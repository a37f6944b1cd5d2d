import { exactly } from './exact';
import { type Fraction, matchAt } from './read-number';

export interface NumberWord {
  readonly value: Fraction;
  readonly end: number;
  /** Whether it is just "a" or "an", which says one only before what is counted. */
  readonly isArticle: boolean;
}

type Row = readonly [words: string, numerator: number, denominator: number];

/** "half a", "half of a" and "half an", whose article belongs to the number and not to what is measured. */
const ofOne = '(?: of)? an?';
const wholes = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** The longest of those that begin alike comes first. */
const rows: readonly Row[] = [
  ['one and a half', 3, 2],
  [`three quarters(?:${ofOne})?`, 3, 4],
  [`two thirds(?:${ofOne})?`, 2, 3],
  [`(?:an? |one )?half(?:${ofOne})?`, 1, 2],
  [`(?:an? |one )third(?:${ofOne})?`, 1, 3],
  [`(?:an? |one )quarter(?:${ofOne})?`, 1, 4],
  [`(?:an? |one )eighth(?:${ofOne})?`, 1, 8],
  ['an? dozen', 12, 1],
  ['a couple of', 2, 1],
  ...wholes.map((word, at): Row => [word, at + 1, 1]),
  ['an?', 1, 1],
];

const table = rows.map(([words, numerator, denominator]) => ({
  // A hyphen makes another word of it: "one-pot".
  pattern: new RegExp(`${words.replaceAll(' ', '[ -]')}(?![\\p{L}\\p{M}'’-])`, 'iuy'),
  value: { numerator: exactly(numerator), denominator: exactly(denominator) },
}));

/** Reads a number in words that stands at this place of a normalised text, such as "two", "half a" and "a"; else null. */
export function readNumberWord(text: string, at: number): NumberWord | null {
  for (const { pattern, value } of table) {
    const found = matchAt(pattern, text, at);
    if (found !== null) return { value, end: at + found[0].length, isArticle: /^an?$/i.test(found[0]) };
  }
  return null;
}
