import { convertNumber } from '../../measure/units';
import { bottles } from '../../reference/bottles';
import { type FruitId, fruits } from '../../reference/fruits';
import { type SweetenerId, sweeteners } from '../../reference/sweeteners';
import type { Formulation } from '../engine/formulate';
import { fermentableOfOne, weightOf } from '../models/blend';
import { hexoseOf, hexoseOfUnknown, type Ranged } from '../models/sugar';

/** What can be put in a bottle: a sweetener or a fruit of the tables, or anything else by the sugars on its label. */
export type AdditionId = SweetenerId | FruitId | 'byLabel';

function isSweetener(id: string): id is SweetenerId {
  return Object.hasOwn(sweeteners, id);
}

export function isFruit(id: string): id is FruitId {
  return Object.hasOwn(fruits, id);
}

/** The fruits and juices, in the order of the menu. */
export const bottleFruits: readonly FruitId[] = Object.keys(fruits).filter(isFruit);

/** The sweeteners that the grains’ yeasts have something to make gas of, in the order of the menu. */
export const bottleSweeteners: readonly SweetenerId[] = Object.keys(sweeteners)
  .filter(isSweetener)
  .filter((id) => id !== 'none' && sweeteners[id].refused === undefined);

/** What it is called in a bottle, where it need not be blended in. */
export function additionName(id: SweetenerId | FruitId): string {
  if (isFruit(id)) return fruits[id].name;
  return id === 'dates' ? 'Dates, medjool, chopped' : sweeteners[id].name;
}

/** Weight of a millilitre of it, g: from a published level spoon, or of juice; null where there is none. */
export function additionWeight(id: AdditionId): number | null {
  if (id === 'byLabel') return bottles.fruitWeight.value;
  if (!isFruit(id)) return weightOf([{ entry: sweeteners[id], share: 1 }]);
  const { cupGrams } = fruits[id];
  return cupGrams === null ? null : cupGrams / convertNumber(1, 'cup', 'mL');
}

/** What one piece of it weighs, g, such as a strawberry; null where no record says. */
export function pieceOf(id: AdditionId): number | null {
  if (id === 'byLabel') return null;
  return isFruit(id) ? fruits[id].pieceGrams : (sweeteners[id].piece?.grams ?? null);
}

export interface BottleAddition {
  /** Fermentable sugar it brings to one bottle, g of hexose. */
  readonly hexose: Ranged;
  /** The same per litre of what the bottle holds, g/L. */
  readonly perLitre: Ranged;
  /** What the bottle is filled with, what is added and the kefir together, mL. */
  readonly filled: number;
  /** Whether it leaves the kefir too little room. */
  readonly crowds: boolean;
}

/**
 * What `grams` of something in each bottle come to, per litre of what is in the bottle with it. `labelSugar` is the
 * sugars in 100 g, for what is known by its label alone: single or double, the label does not say, so the range is
 * × 1 to × 1.0526. Null where the bottle can't be worked out, or an amount is below 0 or no number.
 */
export function addToBottle(
  { rows, choices }: Formulation,
  id: AdditionId,
  grams: number,
  labelSugar: number | null,
): BottleAddition | null {
  const [whole, empty] = [rows.bottleVolume.value, rows.bottleHeadspace.value];
  if (typeof whole !== 'number' || typeof empty !== 'number' || !(whole > empty)) return null;
  const perGram = fermentableOf(id, labelSugar, choices.grain.takes);
  if (perGram === null || !(grams >= 0) || !Number.isFinite(grams)) return null;
  const filled = whole - empty;
  const hexose = scale(perGram, grams);
  const crowds =
    (id === 'byLabel' || isFruit(id)) && grams / bottles.fruitWeight.value > bottles.mostFruit.value * filled;
  return { hexose, perLitre: scale(hexose, 1000 / filled), filled, crowds };
}

function fermentableOf(
  id: AdditionId,
  labelSugar: number | null,
  takes: Formulation['choices']['grain']['takes'],
): Ranged | null {
  if (isFruit(id)) {
    const fruit = fruits[id];
    const known = hexoseOf({ ...fruit, maltose: null, lactose: null, galactose: null }, takes);
    const hexose = (known + fruit.otherHexose) / 100;
    return { value: hexose, low: hexose, high: hexose };
  }
  if (id !== 'byLabel') return fermentableOfOne(sweeteners[id], takes);
  if (labelSugar === null || !(labelSugar >= 0 && labelSugar <= 100)) return null;
  return scale(hexoseOfUnknown(labelSugar, labelSugar), 1 / 100);
}

function scale({ value, low, high }: Ranged, by: number): Ranged {
  return { value: value * by, low: low * by, high: high * by };
}
