import { type Food, foods } from '../../reference/foods';
import { type FruitId, fruits } from '../../reference/fruits';
import { sweeteners } from '../../reference/sweeteners';
import type { Formulation } from '../engine/formulate';
import { additionName, bottleFruits } from '../fizz/bottle-additions';
import { fermentableOfOne } from '../models/blend';
import { sumOfSugars } from '../models/sugar';
import type { Parts } from './in-the-bag';

const none: Parts = { protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0, sugars: 0 };

function add(one: Parts, other: Parts): Parts {
  return {
    protein: one.protein + other.protein,
    fat: one.fat + other.fat,
    carbohydrate: one.carbohydrate + other.carbohydrate,
    fibre: one.fibre + other.fibre,
    ash: one.ash + other.ash,
    sugars: one.sugars + other.sugars,
  };
}

/** What is in so much sweetener, g; of one without a record its sugars alone. */
function ofSweetener(id: keyof typeof sweeteners, grams: number): Parts {
  const { food, sugars: kinds, total } = sweeteners[id];
  const sugars = total === undefined ? sumOfSugars(kinds) : (total.low + total.high) / 2;
  const record: Food | null = food === null ? null : foods[food];
  const { protein = 0, fat = 0, ash = 0 } = record ?? {};
  const fibre = record?.fibre ?? 0;
  const other = record === null ? 0 : Math.max(record.carbohydrate - fibre - sugars, 0);
  const of = (share: number): number => (share * grams) / 100;
  return {
    protein: of(protein),
    fat: of(fat),
    carbohydrate: of(other),
    fibre: of(fibre),
    ash: of(ash),
    sugars: of(sugars),
  };
}

/** What the sweeteners of a batch bring, g. */
export function inSweetener({ recipe, rows }: Formulation): Parts {
  const { value: grams } = rows.sweetenerMass;
  if (typeof grams !== 'number') return none;
  const shares = recipe.sweetener.reduce((sum, { share }) => sum + share, 0);
  return recipe.sweetener
    .map(({ id, share }) => ofSweetener(id, (grams * share) / shares))
    .reduce((sum, part) => add(sum, part), none);
}

/**
 * What goes into the bottles of a batch, g: of fruit its sugars alone, and of sugar that was typed as such the weight
 * of white sugar that holds as much for the grains.
 */
export function inBottles({ recipe, of, choices }: Formulation): Parts {
  if (!(of('bottleTime') > 0) || !(of('bottleSugar') > 0)) return none;
  const hexose = (of('bottleSugar') * of('drinkVolume')) / 1000;
  const fruit = bottleFruits.find((id) => additionName(id).toLowerCase() === recipe.fruit?.name);
  if (fruit !== undefined) return { ...none, sugars: hexose / hexosePerSugar(fruit) };
  return ofSweetener('caneWhite', hexose / fermentableOfOne(sweeteners.caneWhite, choices.grain.takes).value);
}

/** g of hexose per g of the sugars that a fruit holds. */
function hexosePerSugar(id: FruitId): number {
  const { sucrose, glucose, fructose, otherHexose } = fruits[id];
  const split = fermentableOfOne(sucroseAlone, { lactose: false, galactose: false }).value;
  const rest = glucose + fructose + otherHexose;
  return (sucrose * split + rest) / (sucrose + rest);
}

const sucroseAlone = {
  ...sweeteners.none,
  sugars: { ...sweeteners.none.sugars, sucrose: 100 },
};

/** What the milk, the sweetener and the bottle bring together, g. */
export function together(parts: readonly Parts[]): Parts {
  return parts.reduce((sum, part) => add(sum, part), none);
}
