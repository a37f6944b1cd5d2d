import { expect, test } from 'vitest';
import { listFoods } from '../../../src/formula/foods/look-up';
import { foodMenu } from '../../../src/ui/recipe/food-menu';

const oats = { name: 'Sprouted oats', grams: 90, millilitres: 237 };

test('holds every food once, the cook’s own first', () => {
  const foods = listFoods([oats]);
  const menu = foodMenu(foods);
  expect(menu[0]).toEqual({ label: 'Yours', options: [{ value: 'own.Sprouted oats', label: 'Sprouted oats' }] });
  const values = menu.flatMap(({ options }) => options.map(({ value }) => value));
  expect(values.toSorted()).toEqual(foods.map(({ key }) => key).toSorted());
});

test('is by name within each group, in words a cook uses', () => {
  for (const { options } of foodMenu(listFoods())) {
    const names = options.map(({ label }) => label);
    expect(names).toEqual(names.toSorted((a, b) => a.localeCompare(b, 'en')));
    // Records are named for filing: “Milk, nonfat, fluid, without added vitamin A…”.
    for (const name of names) expect(name).not.toMatch(/^(Beverages|Milk|Nuts|Syrups?|Seeds),/);
  }
});

test('has no group for nothing', () => {
  expect(foodMenu([])).toEqual([]);
});
