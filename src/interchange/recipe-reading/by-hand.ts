import { type FoodKey, isFoodKey, type OwnFood } from '../../formula/foods/food-keys';
import { normaliseTyped } from '../../measure/typed-text';
import { waterRecord } from '../../reference/other-aliases';
import { type AmountRead, readAmount } from './amount';
import { foodOf } from './guess-food';
import { inBaseUnits } from './in-base-units';
import { makeIngredient } from './ingredient';
import { jarOfSize } from './jar-hint';
import type { FoodGuess, Habits, JarHint, ReadIngredient, RecipeLine, RecipeText } from './shape';

/** What the cook says that a line is, beside the foods. */
export const meanings = ['none', 'extra', 'soaking', 'jar'] as const;
export type Meaning = (typeof meanings)[number] | FoodKey;

/** What the cook says of one ingredient of a line, or of a line without any; `at` is its place in the line, from 0. */
export interface ByHand {
  readonly line: number;
  readonly at: number;
  /** Null to leave it as it was read. */
  readonly meaning: Meaning | null;
  /** As typed; blank to leave the amount as it was read. */
  readonly amount: string;
}

/** Whether a text names a meaning or a food that there is. */
export function isMeaning(text: string, own: readonly OwnFood[] = []): text is Meaning {
  return meanings.some((each) => each === text) || isFoodKey(text, own);
}

/** The recipe with what the cook says of its lines in place of what was read of them; the text stays. */
export function takeByHand(read: RecipeText, said: readonly ByHand[], habits: Habits): RecipeText {
  if (said.length === 0) return read;
  return {
    lines: read.lines.map((line, place) =>
      said.filter((one) => one.line === place).reduce((changed, one) => changeLine(changed, one, habits), line),
    ),
  };
}

/** What was told, with one thing more told of a line; told that all is as it was read, it is told nothing. */
export function tell(
  told: readonly ByHand[],
  line: number,
  at: number,
  said: { readonly meaning: Meaning | null } | { readonly amount: string },
): readonly ByHand[] {
  const isThis = (one: ByHand): boolean => one.line === line && one.at === at;
  const next: ByHand = { ...(told.find(isThis) ?? { line, at, meaning: null, amount: '' }), ...said };
  const rest = told.filter((one) => !isThis(one));
  return next.meaning === null && next.amount === '' ? rest : [...rest, next];
}

/** What was told of lines that stand in the text still, once it has been edited and read again. */
export function keepByHand(told: readonly ByHand[], before: RecipeText, now: RecipeText): readonly ByHand[] {
  const places = new Map<string, number[]>();
  for (const [place, { text }] of now.lines.entries()) places.set(text, [...(places.get(text) ?? []), place]);
  return told.flatMap((one) => {
    const text = before.lines[one.line]?.text ?? '';
    // Of lines that are alike, the second stays the second.
    const nth = before.lines.slice(0, one.line).filter((line) => line.text === text).length;
    const line = places.get(text)?.[nth];
    return line === undefined ? [] : [{ ...one, line }];
  });
}

function changeLine(line: RecipeLine, said: ByHand, habits: Habits): RecipeLine {
  const old = line.ingredients[said.at];
  // A line without ingredients becomes one only where the cook says of what.
  if (old === undefined && (said.at > 0 || said.meaning === null || said.meaning === 'none')) return line;
  const changed = changeIngredient(old ?? makeIngredient(line.text.trim(), null, '', habits), said, habits);
  const ingredients =
    old === undefined ? [changed] : line.ingredients.map((each, at) => (at === said.at ? changed : each));
  const jar = said.meaning === 'jar' ? jarFrom(changed, habits) : line.jar;
  return { ...line, kind: 'ingredient', why: null, ingredients, jar };
}

function changeIngredient(old: ReadIngredient, { meaning, amount }: ByHand, habits: Habits): ReadIngredient {
  const typed = amount.trim() === '' ? null : readTyped(amount, habits);
  const { asRead, text } = old;
  const told = meaning === null ? (old.food ?? undefined) : foodMeant(meaning, old, habits);
  const made = makeIngredient(text, typed ?? asRead.amount, asRead.words, habits, told);
  const said = { ...made, aside: meaning === null && old.aside, dismissed: meaning === 'none' || meaning === 'jar' };
  if (amount.trim() !== '' && typed === null)
    return { ...said, amount: null, problem: { code: 'amountUnread', text: amount.trim() } };
  return meaning === 'extra' ? { ...said, problem: null } : said;
}

function foodMeant(meaning: Meaning, old: ReadIngredient, { ownFoods }: Habits): FoodGuess | undefined {
  if (meaning === 'extra') return { role: 'other', key: null, name: old.text, form: null, sure: true, soaking: false };
  const key = meaning === 'soaking' ? waterRecord : meaning;
  const food = isFoodKey(key, ownFoods) ? foodOf(key, old.food?.form ?? null, ownFoods) : null;
  return food === null ? undefined : { ...food, soaking: meaning === 'soaking' };
}

function readTyped(text: string, { decimalComma }: Habits): AmountRead | null {
  const { text: typed } = normaliseTyped(text);
  const read = readAmount(typed, 0, decimalComma);
  return read?.ok && read.amount.end === typed.length && read.amount.vague === null ? read.amount : null;
}

function jarFrom({ asRead, amount, kind, text }: ReadIngredient, { cups }: Habits): JarHint | null {
  if (amount !== null && kind === 'volume') return jarOfSize(amount.low, text);
  const [part] = asRead.amount?.parts ?? [];
  const size = part === undefined ? null : inBaseUnits(part, true, cups);
  return size?.kind === 'volume' ? jarOfSize(size.low, text) : null;
}
