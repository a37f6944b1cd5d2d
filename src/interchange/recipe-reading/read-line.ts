import { matchAt } from '../../measure/read-number';
import { normaliseTyped } from '../../measure/typed-text';
import { type AmountRead, mayStartAmount, readAmount, skip } from './amount';
import { matchFood, wordsOf } from './food-words';
import { guessFood } from './guess-food';
import { inBaseUnits } from './in-base-units';
import { makeIngredient } from './ingredient';
import { findJarHint, jarOfSize } from './jar-hint';
import { isHeading, isMethod } from './line-kind';
import type { LineProblem } from './problem';
import type { Habits, JarHint, ReadIngredient, RecipeLine } from './shape';

/** The longest line that is read; longer ones are prose, and reading them would take its time. */
export const longestLine = 1000;

const bullet = /(?:[-*•·◦▪●○☐□✓–—] ?|\[ ?\] ?|\d{1,2}[.)] (?=\S)|#+ )+/uy;
const separator = /(?: ?[,;] ?(?:and |plus )?| and | plus | with | \+ | & |\. )/giu;
// "Covered with 3 cups water" tells what is done, not what else goes in.
const treated = /(?:ed|cover|soak|fill)$/i;

type Kept = Pick<RecipeLine, 'kind'> & Partial<RecipeLine>;

function line(text: string, kept: Kept): RecipeLine {
  return { text, ingredients: [], jar: null, why: null, ...kept };
}

/** Reads one line of a recipe. `first` is the first that is not blank, which may be its name. Never throws. */
export function readLine(text: string, first: boolean, habits: Habits): RecipeLine {
  if (text.length > longestLine) return unread(text, { code: 'lineTooLong', limit: longestLine }, null);
  const typed = normaliseTyped(text);
  if (typed.text === '') return line(text, { kind: 'blank' });
  const start = skip(bullet, typed.text, 0);
  const rest = typed.text.slice(start);
  const slice = (from: number, to: number): string =>
    text.slice(typed.origin[start + from] ?? text.length, typed.origin[start + to] ?? text.length).trim();
  const jar = findJarHint(rest, habits.decimalComma, habits.cups);
  if (rest === '') return line(text, { kind: 'blank' });
  const amount = readAmount(rest, 0, habits.decimalComma);
  if (amount !== null && !amount.ok) {
    if (amount.fault === null) return line(text, { kind: 'method', jar });
    const { code, from, to } = amount.fault;
    return unread(text, { code: 'badNumber', fault: code, text: rest.slice(from, to).trim() }, jar);
  }
  if (amount?.ok && startsFood(amount.amount, rest, habits)) {
    const read = splitIngredients(rest, amount.amount, habits, slice);
    const named = jar ?? read.jar;
    return line(text, {
      kind: read.ingredients.length > 0 ? 'ingredient' : 'heading',
      ingredients: read.ingredients,
      jar: named,
    });
  }
  if (isHeading(typed.text)) return line(text, { kind: 'heading', jar });
  if (isMethod(rest)) return line(text, { kind: 'method', jar });
  const turned = readTurned(rest, slice, habits) ?? readNamed(rest, slice, habits);
  if (turned !== null) return line(text, { kind: 'ingredient', ingredients: [turned], jar });
  if (first || jar !== null) return line(text, { kind: 'heading', jar });
  return unread(text, { code: 'nothingRead' }, jar);
}

function unread(text: string, why: LineProblem, jar: JarHint | null): RecipeLine {
  return line(text, { kind: 'unread', why, jar });
}

/** "A blender" and "one more thing" start with a number word but hold no amount of food. */
function startsFood(amount: AmountRead, text: string, habits: Habits): boolean {
  if (!amount.inWords || amount.vague !== null) return true;
  if (amount.parts.some(({ unit }) => unit !== null)) return true;
  return guessFood(text.slice(amount.end), [], habits.ownFoods)?.sure === true;
}

function splitIngredients(
  text: string,
  first: AmountRead,
  habits: Habits,
  slice: (from: number, to: number) => string,
): { readonly ingredients: readonly ReadIngredient[]; readonly jar: JarHint | null } {
  const ingredients: ReadIngredient[] = [];
  let jar: JarHint | null = null;
  let from = 0;
  let amount: AmountRead | null = first;
  while (amount !== null) {
    const next = findNext(text, amount.end, habits);
    const to = next?.before ?? text.length;
    const words = text.slice(amount.end, to);
    const held = /^jars?$/i.test(amount.container ?? '') && wordsOf(words).length === 0 ? sizeOf(amount, habits) : null;
    if (held === null) ingredients.push(makeIngredient(slice(from, to), amount, words, habits));
    else jar = held;
    from = next?.at ?? text.length;
    amount = next?.amount ?? null;
  }
  return { ingredients, jar };
}

function sizeOf(amount: AmountRead, habits: Habits): JarHint | null {
  const [part] = amount.parts;
  const size = part === undefined ? null : inBaseUnits(part, true, habits.cups);
  return size?.kind === 'volume' ? jarOfSize(size.low) : null;
}

/** The next amount that starts another ingredient on the same line. */
function findNext(text: string, start: number, habits: Habits) {
  separator.lastIndex = start;
  for (let found = separator.exec(text); found !== null; found = separator.exec(text)) {
    const at = found.index + found[0].length;
    // A separator may begin where another one ends.
    separator.lastIndex = Math.max(found.index + 1, at - 1);
    if (!mayStartAmount(text, at) || isInBracket(text, start, at)) continue;
    if (/with/i.test(found[0]) && treated.test(text.slice(0, found.index))) continue;
    if (wordsOf(text.slice(start, found.index)).length === 0) continue;
    const read = readAmount(text, at, habits.decimalComma);
    if (!read?.ok) continue;
    const { amount } = read;
    const measured =
      amount.vague !== null || amount.container !== null || amount.parts.some(({ unit }) => unit !== null);
    const known = guessFood(text.slice(amount.end), [], habits.ownFoods);
    if (measured ? wordsOf(text.slice(amount.end)).length > 0 : known?.sure === true && !amount.inWords)
      return { before: found.index, at, amount };
  }
  return null;
}

function isInBracket(text: string, from: number, to: number): boolean {
  const before = text.slice(from, to);
  return before.lastIndexOf('(') > before.lastIndexOf(')') || before.lastIndexOf('[') > before.lastIndexOf(']');
}

/** The food first, then its amount: "Almonds: 1 cup", "Honey – 2 tbsp". */
function readTurned(text: string, slice: (from: number, to: number) => string, habits: Habits): ReadIngredient | null {
  const digit = /[ :,-](?=[\d½⅓⅔¼¾⅕-⅞~])/gu;
  for (let place = digit.exec(text); place !== null; place = digit.exec(text)) {
    const name = text.slice(0, place.index);
    const guess = guessFood(name, [], habits.ownFoods);
    if (guess?.key == null) continue;
    const read = readAmount(text, place.index + 1, habits.decimalComma);
    if (!read?.ok || read.amount.parts.every(({ unit }) => unit === null)) continue;
    return makeIngredient(slice(0, text.length), read.amount, `${name}${text.slice(read.amount.end)}`, habits);
  }
  return null;
}

/** A food alone, without an amount: "Kefir grains", "Salt, to taste". */
function readNamed(text: string, slice: (from: number, to: number) => string, habits: Habits): ReadIngredient | null {
  const toTaste = matchAt(/[\p{L} ]{1,60}?,? ?(?:to taste|as needed)/iuy, text, 0) !== null;
  const guess = guessFood(text, [], habits.ownFoods);
  const alone =
    guess?.sure === true ||
    (guess?.key != null && matchFood(wordsOf(text), habits.ownFoods)?.from === 0 && wordsOf(text).length < 4);
  return toTaste || alone ? makeIngredient(slice(0, text.length), null, text, habits) : null;
}
