import { matchAt } from '../../measure/read-number';
import { type AmountRead, readAmount, readBracket } from './amount';
import { wordsOf } from './food-words';
import { guessFood } from './guess-food';
import { makeIngredient } from './ingredient';
import { startsWithVerb } from './line-kind';
import { isVessel, type Slice, splitIngredients } from './list-line';
import type { Habits, ReadIngredient } from './shape';

// An amount may start after a space, a mark, or the dots that lead to it.
const place =
  /(?:[\s:;,=_…·.([-])(?=[\d½⅓⅔¼¾⅕-⅞~≈]|(?:an?|one|two|three|four|half|pinch|dash|handful|about|some)\b)/giu;
const leaders = /[\s.…·_:;=,([-]+$/u;
const counts = /[:x×=-] ?$/iu;
const inProse =
  /^(?:for|to|of|the|an?|use)\b|\b(?:in|with|into|is|are|was|were|then|until|from|makes|yields?|serves|gives|takes|per|at|if|when)\b/i;
// "2% milk" is a name; a figure in any other has an amount before the one that is looked at.
const figures = /[½⅓⅔¼¾⅕-⅞]|\d(?![\d.]*%)/u;
const nutrition =
  /\b(?:calories|kcal|energy|protein|carb\w*|saturated|fat|sodium|cholesterol|fib(?:er|re)|vitamin|potassium|sugars)\b/i;
const notes = /^ ?(?:$|[,;.()/*[\]-]|packed|sifted|level|each|plus|and|\+|&|or|for|to|about)/i;
const listed = / ?(?:[,;+&/]|and |plus )* ?/iy;
const longestName = 7;
// An amount that starts farther on has no name before it.
const longestStart = 120;
// More of them than this are no pieces to count but grams whose unit was left out.
const mostPieces = 24;

/** Whether a line is of a table of nutrients, whose figures are of no ingredient. */
export function isNutrition(text: string): boolean {
  return nutrition.test(text);
}

/**
 * Reads a line that has the food first and its amount after it: "Almonds: 1 cup", "SUGAR (BROWN) 1/4 C. PACKED",
 * "Water ..... 3 cups", and several of them with commas between. Null where the line is not written so.
 */
export function readTurned(text: string, slice: Slice, habits: Habits): readonly ReadIngredient[] | null {
  return readFrom(0, { text, slice, habits, known: new Map() });
}

interface Reading {
  readonly text: string;
  readonly slice: Slice;
  readonly habits: Habits;
  /** What was found from each place on, so that no place is tried twice and a long line comes to an end. */
  readonly known: Map<number, readonly ReadIngredient[] | null>;
}

function readFrom(start: number, reading: Reading): readonly ReadIngredient[] | null {
  const before = reading.known.get(start);
  if (before !== undefined) return before;
  const read = tryFrom(start, reading);
  reading.known.set(start, read);
  return read;
}

function tryFrom(start: number, reading: Reading): readonly ReadIngredient[] | null {
  const { text, slice, habits } = reading;
  if (startsWithVerb(text.slice(start))) return null;
  for (const found of text.slice(start, start + longestStart).matchAll(place)) {
    const mark = start + found.index + 1;
    const before = text.slice(start, mark);
    const name = before.replace(leaders, '').replace(/ x$/i, '').trim();
    if (wordsOf(name).length > longestName) return null;
    if (!isName(name)) continue;
    const read = amountAt(text, mark, habits.decimalComma);
    if (read === null || !measures(read.amount, name, before, habits)) continue;
    const more = readMore(read.end, reading);
    if (more === null && !notes.test(text.slice(read.end))) continue;
    const to = more?.from ?? text.length;
    const words = `${name} ${text.slice(read.end, to)}`;
    return [makeIngredient(slice(start, to), read.amount, words, habits), ...(more?.ingredients ?? [])];
  }
  return null;
}

function isName(name: string): boolean {
  const bare = name.replace(/\(.*?(?:\)|$)/g, '').replace(/\b(?:for|to) soak\w*/i, '');
  return (
    wordsOf(bare).length > 0 && !figures.test(bare) && !inProse.test(bare) && !/[.!?] /.test(bare) && !isNutrition(bare)
  );
}

/** An amount that may stand in brackets, with the end of them. */
function amountAt(text: string, at: number, decimalComma: boolean): { amount: AmountRead; end: number } | null {
  const read = readAmount(text, at, decimalComma);
  if (!read?.ok) return null;
  const { amount } = read;
  const open = text.charAt(at - 1);
  if (open !== '(' && open !== '[') return { amount, end: amount.end };
  const inside = readBracket(text, at - 1, decimalComma);
  const close = matchAt(/[^)\]]*[)\]]/y, text, amount.end);
  return close === null ? null : { amount, end: inside?.end ?? amount.end + close[0].length };
}

/** A unit makes it an amount; a bare number counts pieces of a food that is known, where a mark says so. */
function measures(amount: AmountRead, name: string, before: string, habits: Habits): boolean {
  if (amount.container !== null && isVessel(amount.container)) return guessFood(name, [], habits.ownFoods)?.key != null;
  if (amount.vague !== null || amount.parts.some(({ unit }) => unit !== null)) return true;
  if (amount.inWords) return false;
  if (guessFood(name, [], habits.ownFoods)?.key == null) return false;
  return (
    amount.container !== null ||
    (counts.test(before) && amount.parts.every(({ high }) => high.compare(mostPieces) <= 0))
  );
}

/** What else the line lists after a comma or "and", written either way round. */
function readMore(end: number, reading: Reading) {
  const { text, slice, habits } = reading;
  const comma = matchAt(listed, text, end);
  if (comma === null) return null;
  const at = end + comma[0].length;
  const amount = readAmount(text, at, habits.decimalComma);
  if (
    amount?.ok &&
    comma[0].trim() !== '' &&
    amount.amount.parts.some(({ unit }) => unit !== null) &&
    wordsOf(text.slice(amount.amount.end)).length > 0
  )
    return { from: end, ingredients: splitIngredients(text, amount.amount, habits, slice, at).ingredients };
  const turned = readFrom(at, reading);
  return turned === null ? null : { from: end, ingredients: turned };
}
