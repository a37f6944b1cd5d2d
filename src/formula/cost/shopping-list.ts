import type { Exact } from '../../measure/exact';
import { exactly } from '../../measure/exact';
import { wholeAbove } from '../../measure/nearly';
import { formulate } from '../engine/formulate';
import type { Formulation } from '../engine/formulation';
import { readGiven } from '../engine/givens';
import type { Amount, Recipe } from '../recipe/recipe';
import { numericRows } from '../rows/sheet';
import { dairyMilk } from './food-of-key';
import { sumOf } from './money';
import { type FoodToBuy, type Need, needsOf, sweetenerToBuy } from './needs';
import { gramsIn, type PackagePrice, type Priced, priceOf } from './package-price';

/** A batch to shop for. */
export interface ToShopFor {
  readonly name: string;
  readonly needs: readonly Need[];
  /** What of it is in the house, g by food. */
  readonly has: Readonly<Record<string, number>>;
}

export interface ShoppingItem extends FoodToBuy {
  /** What all the batches take, g, and which takes how much of it. */
  readonly grams: number;
  readonly of: readonly { readonly batch: string; readonly grams: number }[];
  /** What is in the house, g, no more than is taken. */
  readonly inHouse: number;
  /** What is left to be bought, g. */
  readonly toBuy: number;
  /** In whole packages: how many, what stays over of them, g, and what they cost; null where no package is known. */
  readonly packages: {
    readonly entry: PackagePrice;
    readonly count: number;
    readonly over: number;
    readonly cost: Exact;
  } | null;
}

export interface ShoppingList {
  readonly items: readonly ShoppingItem[];
  /** Of all whole packages. */
  readonly total: Exact;
  /** Things to buy that have no package with a price. */
  readonly unpriced: number;
}

/** What a recipe needs from a shop, and what of it the cook has said to have. */
export function toShopFor(name: string, formulation: Formulation, carton?: string): ToShopFor {
  const needs = needsOf(formulation, carton);
  return { name, needs, has: inHouseOf(formulation, needs) };
}

/** What the cook has typed to have of the source and of a sweetener by itself, g by food; what can't be read is none. */
function inHouseOf({ recipe, evaluation }: Formulation, needs: readonly Need[]): ToShopFor['has'] {
  const { source, sweetener } = recipe.onHand ?? {};
  const has: Record<string, number> = {};
  const [first] = needs.filter(({ part }) => part === 'source' || part === 'carton');
  const sweet = needs.filter(({ part }) => part === 'sweetener');
  const ofSource = source && readGiven(evaluation, 'sourceMass', numericRows.sourceMass, source);
  const ofSweetener = sweetener && readGiven(evaluation, 'sweetenerMass', numericRows.sweetenerMass, sweetener);
  if (first !== undefined && typeof ofSource === 'number') has[first.food] = ofSource;
  const [only] = sweet;
  if (only !== undefined && sweet.length === 1 && typeof ofSweetener === 'number') has[only.food] = ofSweetener;
  return has;
}

/** The list for so many recipes at once, as for a class; each by its name. */
export function shoppingListFor(
  recipes: readonly { readonly name: string; readonly recipe: Recipe; readonly carton?: string }[],
  packages: readonly PackagePrice[],
): ShoppingList {
  return shoppingList(
    recipes.map(({ name, recipe, carton }) => toShopFor(name, formulate(recipe), carton)),
    packages,
    { lessInHouse: false },
  );
}

/**
 * What to buy for these batches: each food once, in whole packages where one is known, with what stays over. What the
 * cook has is counted once, by the batch that says the most of it, since all of them look into one cupboard.
 */
export function shoppingList(
  batches: readonly ToShopFor[],
  packages: readonly PackagePrice[],
  { lessInHouse }: { readonly lessInHouse: boolean },
): ShoppingList {
  const foods = new Map<string, { food: FoodToBuy; grams: number; of: Map<string, number> }>();
  for (const [at, { needs }] of batches.entries()) {
    for (const need of needs) {
      const known = foods.get(need.food) ?? { food: need, grams: 0, of: new Map() };
      known.grams += need.grams;
      known.of.set(String(at), (known.of.get(String(at)) ?? 0) + need.grams);
      foods.set(need.food, known);
    }
  }
  const items = [...foods.values()].map(({ food, grams, of }): ShoppingItem => {
    const most = Math.max(0, ...batches.map(({ has }) => has[food.food] ?? 0));
    const inHouse = lessInHouse ? Math.min(most, grams) : 0;
    const toBuy = grams - inHouse;
    const priced = priceOf(food, packages);
    const { weight, piece, isLiquid, name } = food;
    return {
      ...{ food: food.food, name, weight, piece, isLiquid },
      grams,
      of: [...of].map(([at, part]) => ({ batch: batches[Number(at)]?.name ?? '', grams: part })),
      inHouse,
      toBuy,
      packages: 'why' in priced ? null : inPackages(priced, toBuy),
    };
  });
  return {
    items,
    total: sumOf(items.flatMap(({ packages: bought }) => (bought === null ? [] : [bought.cost]))),
    unpriced: items.filter(({ packages: bought, toBuy }) => bought === null && toBuy > 0).length,
  };
}

function inPackages({ entry, grams }: Priced, toBuy: number): NonNullable<ShoppingItem['packages']> {
  const count = wholeAbove(toBuy / grams);
  return { entry, count, over: Math.max(count * grams - toBuy, 0), cost: exactly(entry.price).times(count) };
}

/** What grains at rest are fed with besides: sugar for water grains, dairy milk for milk grains; what can’t be read is none. */
export function forGrainsAtRest(sugar: Amount | null, milk: Amount | null): ToShopFor {
  const need = (food: FoodToBuy, amount: Amount | null): readonly Need[] => {
    const grams =
      amount === null ? null : gramsIn({ food: food.food, amount: { ...amount, text: '' }, price: '0' }, food);
    return typeof grams === 'number' ? [{ ...food, part: 'sweetener', grams }] : [];
  };
  return {
    name: 'Grains at rest',
    needs: [...need(sweetenerToBuy('caneWhite'), sugar), ...need(dairyMilk, milk)],
    has: {},
  };
}
