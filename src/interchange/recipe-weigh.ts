import { measureMass, pieceWeight, type Spread, weighVolume } from '../formula/foods/look-up';
import { kitchen } from '../reference/kitchen';
import { loosely } from '../reference/measure-error';
import type { Coefficient, Origin } from '../reference/origins';
import type { IngredientProblem } from './recipe-reading/problem';
import type { Ends, Habits, ReadIngredient, RecipeText } from './recipe-reading/shape';

export interface WeighedIngredient {
  /** Places in the text: which line, and which ingredient of it. */
  readonly line: number;
  readonly at: number;
  readonly ingredient: ReadIngredient;
  /** Null where it cannot be weighed, and `problem` says why. */
  readonly grams: Spread | null;
  readonly millilitres: Spread | null;
  readonly weighedBy: 'stated' | 'cup' | 'piece' | null;
  /** The published measure that grams or millilitres were worked out from. */
  readonly by: { readonly measure: string; readonly grams: number; readonly origin: Origin } | null;
  /** The error to expect of the measure; null where a weight was given. */
  readonly error: Coefficient | null;
  /** Whether the cut or packing named has a weight of its own; else the usual one was taken. */
  readonly formKnown: boolean;
  /** Where the text gives a weight and a measure that do not agree with the published cup weight. */
  readonly disagreement: Disagreement | null;
  readonly problem: IngredientProblem | null;
}

export interface Disagreement {
  /** g, as the text has it. */
  readonly stated: number;
  /** g, by the published cup weight, and the range to expect of the measure. */
  readonly published: Spread;
  /** How much more the text says, as a share of the published weight; negative for less. */
  readonly share: number;
  /** Whether it is more than the measure itself explains. */
  readonly beyond: boolean;
}

function spreadOf({ low, high }: Ends): Spread {
  return { low, likely: (low + high) / 2, high };
}

/** A scant cup is less than a level one, and how much less is anyone’s guess within a range. */
function loosen(spread: Spread, modifiers: readonly string[]): Spread {
  const word = modifiers.includes('scant') ? 'scant' : modifiers.includes('generous') ? 'generous' : null;
  if (word === null) return spread;
  const { value, low = value, high = value } = loosely[word];
  return { low: spread.low * low, likely: spread.likely * value, high: spread.high * high };
}

function weighSpread(food: string, form: string | null, volume: Spread, { ownFoods }: Habits) {
  const [low, likely, high] = [volume.low, volume.likely, volume.high].map((each) =>
    weighVolume(food, form, each, ownFoods),
  );
  if (!low || !likely || !high) return null;
  return { ...likely, spread: { low: low.spread.low, likely: likely.spread.likely, high: high.spread.high } };
}

function measureSpread(food: string, form: string | null, mass: Spread, { ownFoods }: Habits) {
  const [low, likely, high] = [mass.low, mass.likely, mass.high].map((each) => measureMass(food, form, each, ownFoods));
  if (!low || !likely || !high) return null;
  return { ...likely, spread: { low: low.spread.low, likely: likely.spread.likely, high: high.spread.high } };
}

type Weighed = Omit<WeighedIngredient, 'line' | 'at' | 'ingredient'>;

const nothing: Weighed = {
  grams: null,
  millilitres: null,
  weighedBy: null,
  by: null,
  error: null,
  formKnown: true,
  disagreement: null,
  problem: null,
};

/** One ingredient in g and mL: a weight in the text first, else the cup weight of its food, else that of a piece. */
export function weighIngredient(ingredient: ReadIngredient, habits: Habits): Weighed {
  const { amount, kind, food, problem } = ingredient;
  if (ingredient.dismissed) return nothing;
  const stated = kind === 'mass' ? amount : ingredient.statedMass;
  const measured = kind === 'volume' ? amount : ingredient.statedVolume;
  const heaped = problem?.code === 'heaped';
  const volume = measured === null || heaped ? null : loosen(spreadOf(measured), ingredient.modifiers);
  const key = food?.key ?? null;
  const form = food?.form ?? null;
  if (stated !== null) {
    const grams = spreadOf(stated);
    const filled = key === null ? null : measureSpread(key, form, grams, habits);
    const disagreement =
      key === null || volume === null ? null : compare(grams, weighSpread(key, form, volume, habits)?.spread);
    const millilitres = volume ?? filled?.spread ?? null;
    const by = volume === null ? (filled?.by ?? null) : null;
    const formKnown = filled?.formKnown ?? true;
    return {
      ...nothing,
      grams,
      millilitres,
      weighedBy: 'stated',
      by,
      formKnown,
      disagreement,
      problem: heaped ? null : problem,
    };
  }
  if (amount === null || heaped) return { ...nothing, problem };
  if (kind === 'count') return weighPieces(ingredient, amount, habits);
  if (key === null || food === null) return { ...nothing, millilitres: volume, problem };
  const weighed = volume === null ? null : weighSpread(key, form, volume, habits);
  if (weighed === null)
    return { ...nothing, millilitres: volume, problem: problem ?? { code: 'noCupWeight', food: food.name } };
  const { spread, by, error, formKnown } = weighed;
  return { ...nothing, grams: spread, millilitres: volume, weighedBy: 'cup', by, error, formKnown, problem };
}

function weighPieces({ food, problem }: ReadIngredient, amount: Ends, habits: Habits): Weighed {
  if (problem !== null || food === null || food.key === null) return { ...nothing, problem };
  const piece = pieceWeight(food.key);
  if (piece === null) return { ...nothing, problem: { code: 'noPieceWeight', food: food.name } };
  const grams = spreadOf({ low: amount.low * piece.grams, high: amount.high * piece.grams });
  const filled = measureSpread(food.key, food.form, grams, habits);
  return { ...nothing, grams, millilitres: filled?.spread ?? null, weighedBy: 'piece', by: piece };
}

function compare(stated: Spread, published: Spread | undefined): Disagreement | null {
  if (published === undefined || !(published.likely > 0)) return null;
  const share = stated.likely / published.likely - 1;
  if (!Number.isFinite(share) || Math.abs(share) <= kitchen.agreement.value) return null;
  const beyond = stated.high < published.low || stated.low > published.high;
  return { stated: stated.likely, published, share, beyond };
}

/** Every ingredient of a pasted recipe, weighed, in the order of the text. */
export function weighIngredients(read: RecipeText, habits: Habits): readonly WeighedIngredient[] {
  return read.lines.flatMap(({ ingredients }, line) =>
    ingredients.map((ingredient, at) => ({ line, at, ingredient, ...weighIngredient(ingredient, habits) })),
  );
}
