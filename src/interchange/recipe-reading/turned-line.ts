import { matchAt } from '../../measure/read-number';
import { type AmountRead, readAmount, readBracket } from './amount';
import { wordsOf } from './food-words';
import { guessFood } from './guess-food';
import { makeIngredient } from './ingredient';
import { startsWithVerb } from './line-kind';
import { type Slice, splitIngredients } from './list-line';
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
const notes = /^ ?(?:$|[,;.()*[\]-]|packed|sifted|level|each|plus|and|\+|&|or|for|to|about)/i;
const listed = / ?(?:[,;+&]|and |plus )+ ?/iy;
const longestName = 7;
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
export function readTurned(text: string, slice: Slice, habits: Habits, start = 0): readonly ReadIngredient[] | null {
  const from = text.slice(start);
  if (startsWithVerb(from)) return null;
  place.lastIndex = start;
  for (let found = place.exec(text); found !== null; found = place.exec(text)) {
    const before = text.slice(start, found.index + 1);
    const name = before.replace(leaders, '').replace(/ x$/i, '').trim();
    if (wordsOf(name).length > longestName) return null;
    if (!isName(name)) continue;
    const read = amountAt(text, found.index + 1, habits.decimalComma);
    if (read === null || !measures(read.amount, name, before, habits)) continue;
    const rest = text.slice(read.end);
    if (!notes.test(rest)) continue;
    const more = readMore(text, read.end, slice, habits);
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
  if (amount.vague !== null || amount.parts.some(({ unit }) => unit !== null)) return true;
  if (amount.inWords) return false;
  if (guessFood(name, [], habits.ownFoods)?.key == null) return false;
  return amount.container !== null || (counts.test(before) && amount.parts.every(({ high }) => high.lte(mostPieces)));
}

/** What else the line lists after a comma or "and", written either way round. */
function readMore(text: string, end: number, slice: Slice, habits: Habits) {
  const comma = matchAt(listed, text, end);
  if (comma === null) return null;
  const at = end + comma[0].length;
  const amount = readAmount(text, at, habits.decimalComma);
  if (
    amount?.ok &&
    amount.amount.parts.some(({ unit }) => unit !== null) &&
    wordsOf(text.slice(amount.amount.end)).length > 0
  )
    return { from: end, ingredients: splitIngredients(text, amount.amount, habits, slice, at).ingredients };
  const turned = readTurned(text, slice, habits, at);
  return turned === null ? null : { from: end, ingredients: turned };
}
