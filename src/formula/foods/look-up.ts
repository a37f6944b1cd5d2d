import { foodMeasures, measurePlace } from '../../reference/food-measures';
import { type CultureId, grains } from '../../reference/grains';
import { type Coefficient, type Origin, published } from '../../reference/origins';
import { sweeteners } from '../../reference/sweeteners';
import { type CupWeight, cupWeights, kindOf } from './cup-weights';
import { findFood, type OwnFood } from './food-keys';
import { readMeasureWords } from './measure-words';

export { type CupWeight, cupWeights } from './cup-weights';
export { findFoods } from './find-foods';
export {
  type FoodEntry,
  type FoodKey,
  type FoodPart,
  findFood,
  isFoodKey,
  listFoods,
  type OwnFood,
  ownKey,
} from './food-keys';

/** An amount with what it may be instead; `low` ≤ `likely` ≤ `high`. */
export interface Spread {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

export interface LookedUp {
  /** In g, or in mL where a mass was measured out. */
  readonly spread: Spread;
  /** The published measure it is worked out from. */
  readonly by: CupWeight;
  /** The share to expect of the measure itself; null where its range is known instead. */
  readonly error: Coefficient | null;
  /** Whether the form asked for is one that was weighed; else it is the usual form. */
  readonly formKnown: boolean;
}

/**
 * What a volume of a food weighs, g, with the range to expect of a level measure. It is weighed as the sheet weighs it,
 * so by one measure whatever the size; another form by its largest, which is rounded least. The range takes in its other
 * measures of that form, and of every form of a sugar where none is named. Null for a volume that is below zero or not
 * finite, and for a food without a cup weight.
 */
export function weighVolume(
  food: string,
  form: string | null,
  millilitres: number,
  own: readonly OwnFood[] = [],
): LookedUp | null {
  return lookUp(food, form, millilitres, own, (weight, grams) => grams / weight.millilitres);
}

/** The volume that a mass of a food fills, mL, by the same rules as `weighVolume`. */
export function measureMass(
  food: string,
  form: string | null,
  grams: number,
  own: readonly OwnFood[] = [],
): LookedUp | null {
  return lookUp(food, form, grams, own, (weight, mass) => weight.millilitres / mass);
}

function lookUp(
  food: string,
  form: string | null,
  amount: number,
  own: readonly OwnFood[],
  rateOf: (weight: CupWeight, grams: number) => number,
): LookedUp | null {
  if (!Number.isFinite(amount) || amount < 0) return null;
  const weights = cupWeights(food, own).filter(({ doubt }) => doubt === null);
  const [usual] = weights;
  if (usual === undefined) return null;
  const named = weights.filter((weight) => form !== null && weight.form === form);
  const formKnown = form === null || named.length > 0;
  const same = named.length > 0 ? named : weights.filter(({ form: each }) => each === null || each === usual.form);
  const by = same[0] ?? usual;
  const ranged = named.length === 0 && lumpsForms(food, own) ? weights : same;
  const rates = ranged.flatMap((weight) => [rateOf(weight, weight.low), rateOf(weight, weight.high)]);
  const spread = {
    low: amount * Math.min(...rates),
    likely: amount * rateOf(by, by.grams),
    high: amount * Math.max(...rates),
  };
  return { spread, by, error: by.error, formKnown };
}

/** A cup of brown sugar may be packed or not; a cup of almonds is of whole ones unless it says otherwise. */
function lumpsForms(food: string, own: readonly OwnFood[]): boolean {
  const entry = findFood(food, own);
  const kind = entry === null ? null : kindOf(entry);
  return kind === 'sugar' || kind === 'fine';
}

export interface PieceWeight {
  readonly grams: number;
  readonly measure: string;
  readonly origin: Origin;
}

/** What one piece of a food weighs, g, such as a pitted date; null where no record says. Source: USDA SR Release 28. */
export function pieceWeight(food: string): PieceWeight | null {
  const entry = findFood(food);
  if (entry === null) return null;
  if (entry.part.role === 'sweetener') {
    const { piece } = sweeteners[entry.part.id];
    if (piece !== undefined) return piece;
  }
  if (entry.part.role === 'grains') return packetOf(entry.part.id);
  if (entry.record === null) return null;
  const { record } = entry;
  const found = foodMeasures[record].measures.find(
    ({ amount, unit }) => readMeasureWords(amount, unit)?.is === 'piece',
  );
  if (found === undefined) return null;
  const measure = `${found.amount} ${found.unit}`;
  return {
    grams: found.grams / found.amount,
    measure,
    origin: published('usda-sr', measurePlace(record, measure)),
  };
}

/** A packet counts as a piece of what is sold by the packet. */
function packetOf(culture: CultureId): PieceWeight | null {
  const packet = grains[culture].starter?.packet;
  return packet === undefined ? null : { grams: packet.value, measure: '1 packet', origin: packet.origin };
}
