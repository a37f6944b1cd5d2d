import { expect, test } from 'vitest';
import { currencyOf } from '../../src/formula/cost/money';
import { shoppingListFor } from '../../src/formula/cost/shopping-list';
import { writePricesCsv, writeShoppingCsv } from '../../src/interchange/money-csv';
import { recipeOf, typed } from '../batches';

const packages = [
  { food: 'source.almond', amount: { text: '500 g', amount: 500, kind: 'mass' as const }, price: '9.90' },
  { food: 'carton.=evil()', amount: { text: '1 L', amount: 1000, kind: 'volume' as const }, price: '2' },
];

test('prices are a line each, to the last digit, with nothing a spreadsheet program would work out', () => {
  expect(writePricesCsv(packages, currencyOf('1 €')).split('\r\n')).toEqual([
    '\uFEFFFood,Package,Amount,Unit,Price,Currency',
    '"Almonds, whole",500 g,500,g,9.90,€',
    "'=evil(),1 L,1000,mL,2,€",
    '',
  ]);
});

test('a shopping list has what is needed, how many packages, and for which batch', () => {
  const given = [typed('sourceMass', 700), typed('sweetenerMass', 30)];
  const list = shoppingListFor([{ name: 'Tuesday', recipe: recipeOf({ given }) }], packages);
  const [, almonds, sugar] = writeShoppingCsv(list, currencyOf('1 €')).split('\r\n');
  expect(almonds).toBe('"Almonds, whole",700,0,700,2,500 g,300,19.8,€,Tuesday');
  expect(sugar).toBe('"Cane sugar, white",30,0,30,,,,,,Tuesday');
});
