import type { Packaged } from '../batch/document/document';
import { foodOfKey } from '../formula/cost/food-of-key';
import type { Currency } from '../formula/cost/money';
import type { ShoppingList } from '../formula/cost/shopping-list';
import { doubleOf } from '../measure/exact';
import { baseUnits } from '../measure/units';
import { plainNumber, writeTable } from './csv-file';

/** The prices as CSV, a line a package: amounts in g, mL or pieces, prices as typed with a decimal point. */
export function writePricesCsv(packages: readonly Packaged[], currency: Currency): string {
  const headings = ['Food', 'Package', 'Amount', 'Unit', 'Price', 'Currency'];
  const lines = packages.map(({ food, name, amount, price }) => [
    ...[foodOfKey(food, name).name, amount.text, plainNumber(amount.amount)],
    ...[amount.kind === 'count' ? 'pieces' : baseUnits[amount.kind], price, signOf(currency)],
  ]);
  return writeTable(headings, lines);
}

/** A shopping list as CSV, a line a food, amounts in g; what has no package or price stays empty. */
export function writeShoppingCsv({ items }: ShoppingList, currency: Currency): string {
  const headings = [
    ...['Food', 'Needed (g)', 'In the house (g)', 'To buy (g)', 'Packages', 'Package'],
    ...['Over (g)', 'Cost', 'Currency', 'For'],
  ];
  const lines = items.map(({ name, grams, inHouse, toBuy, packages, of }) => [
    ...[name, plainNumber(grams), plainNumber(inHouse), plainNumber(toBuy)],
    ...[packages?.count ?? null, packages?.entry.amount.text ?? null, plainNumber(packages?.over ?? null)],
    ...[packages === null ? null : plainNumber(doubleOf(packages.cost)), packages === null ? null : signOf(currency)],
    of.map(({ batch }) => batch).join('; '),
  ]);
  return writeTable(headings, lines);
}

function signOf({ before, after }: Currency): string {
  return `${before}${after}`.trim();
}
