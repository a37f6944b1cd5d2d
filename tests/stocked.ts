import fc from 'fast-check';
import { demo, startBatch } from '../src/batch/document/demo';
import type { Cell, SheetDocument } from '../src/batch/document/document';
import type { StockId } from '../src/formula/recipe/order';
import type { Recipe, Stock } from '../src/formula/recipe/recipe';

/** Some of what a recipe takes on hand, each as it might be typed. */
export const anyOnHand: fc.Arbitrary<Readonly<Partial<Record<StockId, Stock>>>> = fc.record(
  {
    source: grams(20, 1000),
    sweetener: grams(2, 150),
    grains: grams(5, 300),
    jars: fc.integer({ min: 1, max: 6 }).map((amount) => ({ text: `${amount}`, kind: 'count' as const, amount })),
  },
  { requiredKeys: [] },
);

function grams(min: number, max: number): fc.Arbitrary<Stock> {
  return fc.integer({ min, max }).map((amount) => ({ text: `${amount} g`, kind: 'mass', amount }));
}

/** A document with one batch, `b1`, that is worked out from this recipe. */
export function documentOf(recipe: Recipe): SheetDocument {
  const { vessel, source, sweetener, grains, yours, onHand } = recipe;
  const given = recipe.given.map((cell) => ({ ...cell, text: String(cell.amount) }));
  const measured: Record<string, Cell> = {};
  for (const [row, cell] of Object.entries(recipe.measured)) measured[row] = { ...cell, text: String(cell.amount) };
  const batch = { ...startBatch('b1', 'Saturday'), vessel, source, sweetener, grains, given, measured };
  return { ...demo, yours, batches: [onHand === undefined ? batch : { ...batch, onHand }] };
}
