import type { Recipe } from '../../formula/recipe/recipe';
import type { Batch, SheetDocument } from './document-schema';

export { largestShare, longestName, longestText, mostBatches } from './document-limits';
export type { Batch, Cell, GivenCell, Logged, Settings, SheetDocument } from './document-schema';
export type { Carton, KeptBlend, KeptClass, Kitchen, Packaged, Stock, StockLine } from './kept-list-schema';

const nothing = {};

/** What the engine works this batch out from: its own cells, and the corrections that hold for every batch. */
export function recipeOf({ yours }: SheetDocument, batch: Batch): Recipe {
  const {
    id: jarOf,
    vessel,
    source,
    sweetener,
    grains,
    given,
    measured,
    heat,
    onHand = nothing,
    fruit,
    extras,
  } = batch;
  const plain = { vessel, source, sweetener, grains, given, measured, yours, heat, onHand, jarOf };
  const recipe = extras === undefined ? plain : { ...plain, extras };
  // Fruit is what the sugar in each bottle was counted from, until that is typed anew.
  const sugar = given.find(({ row }) => row === 'bottleSugar')?.text;
  return fruit === undefined || fruit.sugar !== sugar ? recipe : { ...recipe, fruit };
}
