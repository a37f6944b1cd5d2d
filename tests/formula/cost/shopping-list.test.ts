import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { currencyOf } from '../../../src/formula/cost/money';
import type { PackagePrice } from '../../../src/formula/cost/package-price';
import { shoppingList, shoppingListFor, toShopFor } from '../../../src/formula/cost/shopping-list';
import { tellShopping, writeShoppingText } from '../../../src/formula/cost/shopping-words';
import { formulate } from '../../../src/formula/engine/formulate';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { doubleOf } from '../../../src/measure/exact';
import { recipeOf, typed } from '../../batches';

function pack(food: string, amount: number, price: string, text = `${amount} g`): PackagePrice {
  return { food, amount: { kind: 'mass', amount, text }, price };
}

const kitchen = {
  leads: 'metric',
  cups: 'us',
  scoops: { cups: ['1'], tablespoon: true, teaspoons: ['1'] },
  decimalComma: false,
} as const;
const prices = [pack('source.almond', 500, '9.90'), pack('sweetener.caneWhite', 1000, '1.50', '1 kg')];

function make(name: string, grams: number, changes: Partial<Recipe> = {}) {
  const recipe = recipeOf({ given: [typed('sourceMass', grams), typed('sweetenerMass', 30)], ...changes });
  return toShopFor(name, formulate(recipe));
}

const stock = (amount: number) => ({ text: `${amount} g`, kind: 'mass' as const, amount });
const bare = { lessInHouse: false };

describe('a shopping list', () => {
  test('has each food once, in whole packages, with what stays over', () => {
    const list = shoppingList([make('One', 200), make('Two', 350)], prices, bare);
    expect(list.items.map(({ food, grams }) => [food, grams])).toEqual([
      ['source.almond', 550],
      ['sweetener.caneWhite', 60],
    ]);
    expect(list.items[0]?.packages).toMatchObject({ count: 2, over: 450 });
    expect(list.items[0]?.of).toEqual([
      { batch: 'One', grams: 200 },
      { batch: 'Two', grams: 350 },
    ]);
    // Two bags at 9.90 and one of sugar.
    expect(doubleOf(list.total)).toBe(21.3);
  });

  test('buys no package more for what fills one to the gram', () => {
    expect(shoppingList([make('One', 500)], prices, bare).items[0]?.packages).toMatchObject({ count: 1, over: 0 });
    expect(shoppingList([make('One', 500.1)], prices, bare).items[0]?.packages?.count).toBe(2);
  });

  test('lists by weight what has no package', () => {
    const list = shoppingList([make('One', 200)], [], bare);
    expect(list.items[0]).toMatchObject({ packages: null, toBuy: 200 });
    expect(list.unpriced).toBe(2);
  });

  test('takes off what is in the house once, by whoever says the most', () => {
    const has = { onHand: { source: stock(300), sweetener: stock(900) } };
    const batches = [make('One', 200, has), make('Two', 350, { onHand: { source: stock(100) } })];
    const list = shoppingList(batches, prices, { lessInHouse: true });
    expect(list.items[0]).toMatchObject({ inHouse: 300, toBuy: 250, packages: { count: 1, over: 250 } });
    expect(list.items[1]).toMatchObject({ inHouse: 60, toBuy: 0, packages: { count: 0 } });
    expect(doubleOf(list.total)).toBe(9.9);
  });

  test('is read in a shop, and as text', () => {
    const told = tellShopping(
      shoppingList([make('One', 200), make('Two', 350)], prices, bare),
      currencyOf('$1'),
      kitchen,
    );
    expect(writeShoppingText(told).replaceAll('\u00A0', ' ')).toBe(
      'Almonds, whole: 2 × 500 g (550 g needed, 450 g over; $19.80)\nCane sugar, white: 1 kg (60 g needed, 940 g over; $1.50)\nTogether: $21.30',
    );
    const part = tellShopping(shoppingList([make('One', 200)], prices.slice(0, 1), bare), currencyOf('$1'), kitchen);
    expect(writeShoppingText(part)).toContain('So far: $9.90');
    expect(writeShoppingText(part).replaceAll('\u00A0', ' ')).toContain('Cane sugar, white: 30 g\n');
  });

  test('is one for thirty recipes at once, in any order', () => {
    const recipes = Array.from({ length: 30 }, (_, at) => ({
      name: `Kitchen ${at}`,
      recipe: recipeOf({ given: [typed('sourceMass', 100 + at)] }),
    }));
    const list = shoppingListFor(recipes, prices);
    expect(list.items[0]?.grams).toBeCloseTo(30 * 100 + 435, 9);
    expect(list.items[0]?.packages?.count).toBe(7);
    const turned = shoppingListFor(recipes.toReversed(), prices);
    expect(turned.items[0]?.grams).toBeCloseTo(list.items[0]?.grams ?? 0, 6);
  });

  test('holds what is needed, never a package too many, whatever is planned', () => {
    const batch = fc.record({ grams: fc.integer({ min: 1, max: 4000 }), has: fc.integer({ min: 1, max: 2000 }) });
    fc.assert(
      fc.property(fc.array(batch, { minLength: 1, maxLength: 5 }), fc.integer({ min: 50, max: 3000 }), (all, size) => {
        const batches = all.map(({ grams, has }) => make('One', grams, { onHand: { source: stock(has) } }));
        const list = shoppingList(batches, [pack('source.almond', size, '3')], { lessInHouse: true });
        const [item] = list.items;
        if (item?.packages == null) throw new Error('no package');
        const { count, over } = item.packages;
        expect(item.inHouse + count * size).toBeGreaterThanOrEqual(item.grams - 1e-6);
        expect(over).toBeLessThan(size);
        expect(item.inHouse + count * size - over).toBeCloseTo(item.grams, 6);
      }),
      { numRuns: 60 },
    );
  });
});
