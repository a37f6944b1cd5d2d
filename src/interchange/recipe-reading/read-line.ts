import { matchAt, skip } from '../../measure/read-number';
import { normaliseTyped } from '../../measure/typed-text';
import { readAmount } from './amount';
import { askNumber } from './either-number';
import { matchFood, wordsOf } from './food-words';
import { guessFood } from './guess-food';
import { makeIngredient } from './ingredient';
import { findJarHint, readJarLine } from './jar-hint';
import { isHeading, isMethod } from './line-kind';
import { type Slice, splitIngredients, startsFood } from './list-line';
import type { LineProblem } from './problem';
import { readSentence } from './sentence';
import type { Habits, JarHint, ReadIngredient, RecipeLine } from './shape';
import { isNutrition, readTurned } from './turned-line';

/** The longest line that is read; longer ones would take its time. */
export const longestLine = 1000;

const bullet =
  /(?:[-*•·–—»>+|✓✗] ?|(?![½⅓⅔¼¾⅕-⅞°])\p{So} ?|[‣⁃▪▫◦●○■□►▶➤➔→☐☑☒✔✘] ?|\[[ xX]?\] ?|(?:step ?)?\d{1,2}[.):] (?=\S)|#+ )+/iuy;
const optional = /\(?optional\)?:? /iuy;
// "Juice of 1 lemon": something of a thing, which no table weighs, and yet is to be remembered.
const partOfOne =
  / ?(?:(?:the|an?|some|a few) )?(?:juice|zest|peel|rind|slices?|pieces?|sprigs?|strips?)(?: of| from)(?!\p{L})/iuy;
// Marks that lay text out, in tables and in bold: they part words, and hold no meaning of their own.
const layout = /[|*_]/g;
const amountInBrackets = /^\(([\d½⅓⅔¼¾⅕-⅞~][^()]*)\)/u;

type Kept = Pick<RecipeLine, 'kind'> & Partial<RecipeLine>;

function line(text: string, kept: Kept): RecipeLine {
  return { text, ingredients: [], jar: null, why: null, prose: false, again: [], ...kept };
}

/** Reads one line of a recipe. `first` is the first that is not blank, which may be its name. Never throws. */
export function readLine(text: string, first: boolean, habits: Habits): RecipeLine {
  if (text.length > longestLine) return unread(text, { code: 'lineTooLong', limit: longestLine }, null);
  const typed = normaliseTyped(text);
  const start = skip(bullet, typed.text, 0);
  const begin = skip(optional, typed.text, start);
  const rest = typed.text.slice(begin).replace(layout, ' ').replace(amountInBrackets, ' $1 ').replace(/ +$/, '');
  if (rest.trim() === '') return line(text, { kind: 'blank' });
  const slice: Slice = (from, to) =>
    text
      .slice(typed.origin[(from === 0 ? start : begin) + from] ?? text.length, typed.origin[begin + to] ?? text.length)
      .trim();
  const asks = askNumber(typed.text, begin, habits.decimalComma);
  if (asks !== null) return unread(text, asks, null);
  const jar = readJarLine(rest, habits.decimalComma, habits.cups);
  if (jar !== null) return line(text, { kind: 'heading', jar });
  const hint = findJarHint(rest, habits.decimalComma, habits.cups);
  const leading = rest.length - rest.trimStart().length;
  const amount = readAmount(rest, leading, habits.decimalComma);
  if (amount !== null && !amount.ok && amount.fault !== null) {
    const { code, from, to } = amount.fault;
    return unread(text, { code: 'badNumber', fault: code, text: rest.slice(from, to).trim() }, hint);
  }
  if (amount?.ok && startsFood(amount.amount, rest, habits)) {
    const read = splitIngredients(rest, amount.amount, habits, slice);
    const kind = read.ingredients.length > 0 ? 'ingredient' : 'heading';
    return line(text, { kind, ingredients: read.ingredients, jar: hint ?? read.jar });
  }
  if (isHeading(typed.text)) return line(text, { kind: 'heading', jar: hint });
  const turned = readTurned(rest, slice, habits);
  if (turned !== null) return line(text, { kind: 'ingredient', ingredients: turned, jar: hint });
  const said = isNutrition(rest) ? [] : readSentence(rest, slice, habits);
  if (said.length > 0) return line(text, { kind: 'ingredient', ingredients: said, jar: hint, prose: true });
  if (matchAt(partOfOne, rest, 0) !== null)
    return line(text, {
      kind: 'ingredient',
      ingredients: [makeIngredient(slice(0, rest.length), null, rest, habits)],
      jar: hint,
    });
  if (isMethod(rest) || amount?.ok === false) return line(text, { kind: 'method', jar: hint });
  const named = readNamed(rest, slice, habits);
  if (named !== null) return line(text, { kind: 'ingredient', ingredients: [named], jar: hint });
  if (first || hint !== null) return line(text, { kind: 'heading', jar: hint });
  return unread(text, { code: 'nothingRead' }, hint);
}

function unread(text: string, why: LineProblem, jar: JarHint | null): RecipeLine {
  return line(text, { kind: 'unread', why, jar });
}

/** A food alone, without an amount: "Kefir grains", "Salt, to taste". */
function readNamed(text: string, slice: Slice, habits: Habits): ReadIngredient | null {
  const toTaste = matchAt(/ ?[\p{L} ]{1,60}?,? ?(?:to taste|as needed)/iuy, text, 0) !== null;
  const guess = guessFood(text, [], habits.ownFoods);
  const alone =
    guess?.sure === true ||
    (guess?.key != null && matchFood(wordsOf(text), habits.ownFoods)?.from === 0 && wordsOf(text).length < 4);
  return toTaste || alone ? makeIngredient(slice(0, text.length), null, text, habits) : null;
}
