import { type SweetenerId, sweeteners } from '../../reference/sweeteners';
import type { Formulation } from '../engine/formulate';
import {
  type AdditionId,
  additionName,
  additionWeight,
  bottleFruits,
  bottleSweeteners,
  pieceOf,
} from '../fizz/bottle-additions';
import { fermentableOfOne, weightOf } from '../models/blend';

/** What a food is to a batch that takes it. */
export type NeedPart = 'source' | 'carton' | 'sweetener' | 'bottle' | 'fruit';

/** What is known of a food for buying it. */
export interface FoodToBuy {
  /** Its key among the packages: `source.almond`, `sweetener.honey`, `carton.` and its name, `fruit.raspberries`. */
  readonly food: string;
  readonly name: string;
  /** g per mL; null where no cup of it is published. */
  readonly weight: number | null;
  /** What one piece or one can of it weighs, g; null where it is neither sold nor counted so. */
  readonly piece: number | null;
  readonly isLiquid: boolean;
}

/** Something that a batch takes and that is bought; g. */
export interface Need extends FoodToBuy {
  readonly part: NeedPart;
  readonly grams: number;
}

/**
 * All that a batch takes and that is bought, g: the source, each sweetener of a blend, and what goes into the bottles.
 * Water and grains are not bought. What can't be worked out is not among them. `carton` is the name of the carton that
 * its milk comes from.
 */
export function needsOf(formulation: Formulation, carton?: string): readonly Need[] {
  const needs = [sourceNeed(formulation, carton), ...sweetenerNeeds(formulation), ...bottleNeeds(formulation)];
  return needs.filter(({ grams }) => Number.isFinite(grams) && grams > 0);
}

function sourceNeed(formulation: Formulation, carton: string | undefined): Need {
  const { recipe, choices, of, evaluation } = formulation;
  const { name, form, can, label } = choices.source;
  const weight = finiteOrNull(of('sourceWeight'));
  const isCarton = label !== null && carton !== undefined && carton !== '';
  return {
    food: isCarton ? `carton.${carton}` : `source.${recipe.source}`,
    name: isCarton ? carton : name,
    part: isCarton ? 'carton' : 'source',
    grams: of('sourceMass'),
    weight,
    piece: can === undefined || weight === null ? null : evaluation.c('canSize') * weight,
    isLiquid: form === 'liquid',
  };
}

/** A sweetener as it is bought, whatever batch it is for. */
export function sweetenerToBuy(id: SweetenerId): FoodToBuy {
  const entry = sweeteners[id];
  return {
    food: `sweetener.${id}`,
    name: entry.name,
    weight: weightOf([{ entry, share: 1 }]),
    piece: entry.piece?.grams ?? null,
    isLiquid: entry.state === 'liquid',
  };
}

function sweetenerNeeds({ recipe, rows, of }: Formulation): readonly Need[] {
  const { value } = rows.sweetenerMass;
  if (typeof value !== 'number') return [];
  const shares = recipe.sweetener.reduce((sum, { share }) => sum + share, 0);
  return recipe.sweetener
    .filter(({ id }) => id !== 'none')
    .map(({ id, share }) => ({
      ...sweetenerToBuy(id),
      part: 'sweetener',
      grams: (of('sweetenerMass') * share) / shares,
    }));
}

/** Fruit by what goes into each bottle; sugar that was typed as such is bought as white cane sugar. */
function bottleNeeds({ recipe, rows, of, choices }: Formulation): readonly Need[] {
  if (of('bottleTime') === 0 || !(of('bottleSugar') > 0)) return [];
  const { fruit } = recipe;
  if (fruit === undefined) {
    const hexose = (of('bottleSugar') * of('drinkVolume')) / 1000;
    const grams = hexose / fermentableOfOne(sweeteners.caneWhite, choices.grain.takes).value;
    return [{ ...sweetenerToBuy('caneWhite'), part: 'bottle', grams }];
  }
  const { value: bottles } = rows.bottleCount;
  const grams = typeof bottles === 'number' ? bottles * fruit.grams : Number.NaN;
  return [{ ...fruitToBuy(fruit.name), part: 'fruit', grams }];
}

/** What goes into bottles by the name it was chosen by; of what is in no table only the name is known. */
function fruitToBuy(chosen: string): FoodToBuy {
  const name = chosen.trim();
  const isIt = (id: AdditionId): boolean => id !== 'byLabel' && additionName(id).toLowerCase() === name.toLowerCase();
  const sweetener = bottleSweeteners.find(isIt);
  if (sweetener !== undefined) return sweetenerToBuy(sweetener);
  const id = bottleFruits.find(isIt);
  return id === undefined
    ? { food: `fruit.${name}`, name, weight: null, piece: null, isLiquid: false }
    : {
        food: `fruit.${id}`,
        name: additionName(id),
        weight: additionWeight(id),
        piece: pieceOf(id),
        isLiquid: false,
      };
}

function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) && value > 0 ? value : null;
}
