import { type Exact, exactly } from './exact';
import { matchAt } from './read-number';

export interface NumberWord {
  readonly value: Exact;
  readonly end: number;
  /** Whether it is just "a" or "an", which says one only before what is counted. */
  readonly isArticle: boolean;
}

/** What is said before a number that is not meant to the gram. */
export const hedgeWords = 'about|around|roughly|approximately|approx|circa|ca';

/** The words of whole numbers, from one on. */
export const wholeWords = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');

const partsOf: Readonly<Record<string, number>> = { half: 2, halve: 2, third: 3, quarter: 4, fourth: 4, eighth: 8 };
const whole = `(an?|${wholeWords.join('|')})`;
const fraction = '(half|halve|third|quarter|fourth|eighth)s?';
// A hyphen makes another word of it: "one-pot".
const ends = String.raw`(?![\p{L}\p{M}'’-])`;
// "Half a", "half of an": the article belongs to the number and not to what is measured.
const ofOne = '(?: of)?(?: an?| one)?';
const wholeAndFraction = new RegExp(
  `${whole}[ -](?:and|&)[ -](?:an?[ -]|one )?(?:(two|three)[ -])?${fraction}${ends}`,
  'iuy',
);
const dozen = new RegExp(`(half )?an? dozen${ends}`, 'iuy');
// "Two-thirds of a cup", "a quarter cup"; a "third" alone is the third of something, unless a cup follows.
const fractionAlone = new RegExp(
  `(?:(third|quarter)(?= (?:of an? )?(?:cup|tea|pound|lit|pint))|(?:${whole}[ -])?${fraction})${ofOne}(?![\\p{L}\\p{M}'’])`,
  'iuy',
);
const coupleOf = /a couple of(?!\p{L})/iuy;
const wholeAlone = new RegExp(`${whole}${ends}`, 'iuy');

/**
 * Reads a number in words that stands at this place of a normalised text, such as "two", "two and a half", "two thirds of
 * a" and "a"; else null.
 */
export function readNumberWord(text: string, at: number): NumberWord | null {
  const say = (value: Exact, length: number, isArticle = false): NumberWord => ({ value, end: at + length, isArticle });
  const both = matchAt(wholeAndFraction, text, at);
  if (both !== null) return say(wholeOf(both[1]).plus(wholeOf(both[2]).times(partOf(both[3]))), both[0].length);
  const twelve = matchAt(dozen, text, at);
  if (twelve !== null) return say(exactly(twelve[1] === undefined ? 12 : 6), twelve[0].length);
  const part = matchAt(fractionAlone, text, at);
  // Without a number before it, only a half is a half: "quarter the lemons" and "third, blend" are none.
  if (part !== null && (part[1] !== undefined || part[2] !== undefined || /^hal/i.test(part[3] ?? '')))
    return say(wholeOf(part[2]).times(partOf(part[1] ?? part[3])), part[0].length);
  const couple = matchAt(coupleOf, text, at);
  if (couple !== null) return say(exactly(2), couple[0].length);
  const alone = matchAt(wholeAlone, text, at);
  return alone === null ? null : say(wholeOf(alone[1]), alone[0].length, /^an?$/i.test(alone[0]));
}

/** An article counts one. */
function wholeOf(word = 'one'): Exact {
  return exactly(Math.max(wholeWords.indexOf(word.toLowerCase()), 0) + 1);
}

function partOf(word = 'half'): Exact {
  return exactly(1).div(partsOf[word.toLowerCase()] ?? 1);
}
