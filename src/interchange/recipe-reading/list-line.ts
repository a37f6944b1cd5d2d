import { type AmountRead, mayStartAmount, readAmount } from './amount';
import { wordsOf } from './food-words';
import { guessFood } from './guess-food';
import { inBaseUnits } from './in-base-units';
import { makeIngredient } from './ingredient';
import { jarOfSize } from './jar-hint';
import type { Habits, JarHint, ReadIngredient } from './shape';

const separator = /(?: ?[,;] ?(?:and |plus )?| and | plus | with | in | to | \+ | & |\. )/giu;
// "Covered with 3 cups water" tells what is done, not what else goes in; "blended with" does.
const pouredAway = /(?:cover|soak|steep|fill|rins|top)(?:ed|e|ing)?$/i;
const wentIn = /(?:dissolv|mix|stir|blend|whisk|melt)(?:ed|ing)?$/i;
// "Plus 2 cups for soaking": more of what was named before.
const ofTheSame = /^,? ?(?:$|(?:more|extra|additional|for|to)(?!\p{L}))/iu;

// "2 tbsp each honey and maple syrup": the amount is of both.
const ofEach = /^( ?each(?: of)? [^,;]+?)( and | & )(.+)$/i;

/** Gives the pasted text between two places of the text being read. */
export type Slice = (from: number, to: number) => string;

export interface Split {
  readonly ingredients: readonly ReadIngredient[];
  readonly jar: JarHint | null;
}

/** "A blender" and "one more thing" start with a number word but hold no amount of food; nor do "4 servings". */
export function startsFood(amount: AmountRead, text: string, habits: Habits): boolean {
  const hasUnit = amount.parts.some(({ unit }) => unit !== null);
  if (amount.vague !== null || hasUnit) return true;
  const [next = ''] = wordsOf(text.slice(amount.end));
  if (amount.container === null && noFood.has(next)) return false;
  return !amount.inWords || guessFood(text.slice(amount.end), [], habits.ownFoods)?.sure === true;
}

const noFood = new Set(
  'serving servings portion portions people person glass glasses jar jars bottle bottles batch batches time times step steps star stars review reviews rating ratings comment comments'.split(
    ' ',
  ),
);

/** The ingredients of a line that starts with the amount `first`. */
export function splitIngredients(text: string, first: AmountRead, habits: Habits, slice: Slice, start = 0): Split {
  const ingredients: ReadIngredient[] = [];
  let jar: JarHint | null = null;
  let from = start;
  let amount: AmountRead | null = first;
  let before = '';
  while (amount !== null) {
    const next = findNext(text, amount, habits);
    const to = next?.before ?? text.length;
    const said = text.slice(amount.end, to);
    const words: string = before !== '' && ofTheSame.test(said) ? `${before} ${said}` : said;
    const vessel = amount.container !== null && isVessel(amount.container) && wordsOf(said).length === 0;
    const both = ofEach.exec(said);
    if (vessel) jar = sizeOf(amount, habits) ?? jar;
    else if (both === null) ingredients.push(makeIngredient(slice(from, to), amount, words, habits));
    else {
      const [, first = '', joint = '', second = ''] = both;
      const middle = amount.end + first.length;
      ingredients.push(makeIngredient(slice(from, middle), amount, first.replace(/^ ?each/i, ''), habits));
      ingredients.push(makeIngredient(slice(middle + joint.length, to), amount, second, habits));
    }
    before = wordsBefore(words);
    from = next?.at ?? text.length;
    amount = next?.amount ?? null;
  }
  return { ingredients, jar };
}

/** Whether what holds an amount is a thing to ferment in, unless a food is named as its content. */
export function isVessel(container: string): boolean {
  return /^(?:jar|bottle)s?$/i.test(container);
}

/** The name of a food without what is said of it. */
function wordsBefore(words: string): string {
  return words
    .replace(/[,;:([].*$/, '')
    .replace(/ (?:for|to|in) .*$/i, '')
    .trim();
}

function sizeOf(amount: AmountRead, habits: Habits): JarHint | null {
  const [part] = amount.parts;
  const size = part === undefined ? null : inBaseUnits(part, true, habits.cups);
  return size?.kind === 'volume' ? jarOfSize(size.low) : null;
}

/** The next amount that starts another ingredient on the same line. */
function findNext(text: string, { end: start, parts: earlier }: AmountRead, habits: Habits) {
  separator.lastIndex = start;
  for (let found = separator.exec(text); found !== null; found = separator.exec(text)) {
    const at = found.index + found[0].length;
    // A separator may begin where another one ends.
    separator.lastIndex = Math.max(found.index + 1, at - 1);
    if (!mayStartAmount(text, at) || isInBracket(text, start, at)) continue;
    const before = text.slice(start, found.index);
    if (/with/i.test(found[0]) && pouredAway.test(before)) continue;
    if (/ in /i.test(found[0]) && !wentIn.test(before)) continue;
    if (wordsOf(before).length === 0) continue;
    const read = readAmount(text, at, habits.decimalComma);
    if (!read?.ok) continue;
    const { amount } = read;
    const hasUnit = amount.parts.some(({ unit }) => unit !== null);
    const measured = amount.vague !== null || amount.container !== null || hasUnit;
    const words = text.slice(amount.end);
    // "1 cup water plus 2 tbsp" goes on with the same food; "1 cup almonds, 143 g" says the same amount twice.
    const goesOn = wordsOf(words).length > 0 || (/plus|\+|and|&/i.test(found[0]) && hasUnit && earlier.length > 0);
    const known = guessFood(words, [], habits.ownFoods);
    if (measured ? goesOn : known?.sure === true && !amount.inWords) return { before: found.index, at, amount };
  }
  return null;
}

/** Whether a bracket opens after `from` and is still open at `to`. */
export function isInBracket(text: string, from: number, to: number): boolean {
  const before = text.slice(from, to);
  return before.lastIndexOf('(') > before.lastIndexOf(')') || before.lastIndexOf('[') > before.lastIndexOf(']');
}
