import { writeOneWay } from '../../measure/write-one-way';
import { kitchenLines } from '../../reference/kitchen-lines';
import { type Formulation, formulate } from '../engine/formulate';
import { readGiven } from '../engine/givens';
import { amountRows, type NumericRowId, type StockId, stockIds, stockRows } from '../recipe/order';
import type { Problem } from '../recipe/problem';
import type { Amount, Recipe } from '../recipe/recipe';
import type { Access } from '../rows/row';
import { numericRows } from '../rows/sheet';
import { type Change, changeRecipe } from './typed-change';

/** How much milk one thing on hand is enough for, mL. */
export interface Limit {
  readonly stock: StockId;
  readonly milk: number;
}

export interface LargestBatch {
  /** Each thing on hand that could be read, the scarcest first. */
  readonly limits: readonly [Limit, ...Limit[]];
  readonly milk: number;
  readonly limitedBy: StockId;
}

/**
 * The largest batch that what is on hand allows, mL of milk, by this recipe's rates; it is limited by the thing that is
 * enough for the least milk. Amounts that are typed are let go: the batch is sized from what there is. Null where
 * nothing on hand can be read or limits, and where the rates themselves need mending. Source: everything grows with the milk.
 */
export function largestBatch(
  { recipe }: Formulation,
  onHand: Readonly<Partial<Record<StockId, Amount>>>,
): LargestBatch | null {
  if (stockIds.every((stock) => onHand[stock] === undefined)) return null;
  const byRates = formulate(changeRecipe(recipe, letAmountsGo(recipe)));
  if (!Number.isFinite(byRates.of('milkVolume')) || !Number.isFinite(byRates.of('sourceMass'))) return null;
  const limits = stockIds
    .map((stock): Limit => ({ stock, milk: milkFrom(stock, onHand[stock], byRates) }))
    .filter(({ milk }) => Number.isFinite(milk) && milk >= 0)
    .sort((a, b) => a.milk - b.milk);
  const [first, ...rest] = limits;
  return first === undefined ? null : { limits: [first, ...rest], milk: first.milk, limitedBy: first.stock };
}

/** Why what is on hand of this can’t be counted with; null where it can, and where nothing is. */
export function stockProblem(stock: StockId, { recipe, evaluation }: Formulation): Problem | null {
  const have = recipe.onHand?.[stock];
  const read = have === undefined ? null : readStock(stock, have, evaluation);
  return typeof read === 'number' ? null : read;
}

function readStock(stock: StockId, have: Amount, x: Access): number | Problem {
  const row = stockRows[stock];
  return readGiven(x, row, numericRows[row], have);
}

/**
 * Sizes the batch from one thing on hand: lets go of every typed amount and types the stock into its row. None where
 * there is no such stock.
 */
export function makeFrom(stock: StockId, { recipe }: Formulation): readonly Change[] {
  const have = recipe.onHand?.[stock];
  if (have === undefined) return [];
  const { text, kind, amount } = have;
  const row = stockRows[stock];
  const use = stock === 'sweetener' || stock === 'grains' ? { use: 'onHand' as const } : {};
  const sized: Change = { do: 'type', row, text, kind, amount, ...use };
  return [...letAmountsGo(recipe), ...(stock === 'source' ? keepRatio(recipe) : []), sized];
}

/** What is left of one thing on hand once the batch is made, in its row's base unit. */
export interface Over {
  readonly stock: StockId;
  readonly amount: number;
}

/** What stays over of what is on hand where this batch is made; a thing that is used up, or nearly, is not named. */
export function staysOver(formulation: Formulation): readonly Over[] {
  const onHand = formulation.recipe.onHand ?? {};
  return stockIds.flatMap((stock) => {
    const have = onHand[stock];
    const read = have === undefined ? null : readStock(stock, have, formulation.evaluation);
    const { value } = formulation.rows[stockRows[stock]];
    if (typeof read !== 'number' || typeof value !== 'number') return [];
    return read - value > read * kitchenLines.leftOver.value ? [{ stock, amount: read - value }] : [];
  });
}

/**
 * One jar fewer than the largest batch takes, where the last jar would be for a few per cent of it alone: what to type
 * for it, the jars and the share of the milk that it leaves out. Null where every jar is worth its place.
 */
export function jarFewer(
  largest: Formulation,
): { readonly changes: readonly Change[]; readonly jars: number; readonly share: number } | null {
  const { value: jars } = largest.rows.vesselCount;
  if (typeof jars !== 'number' || jars < 2) return null;
  const fewer: Change = { do: 'type', row: 'vesselCount', text: String(jars - 1), kind: 'count', amount: jars - 1 };
  const changes = [...letAmountsGo(largest.recipe), fewer];
  const share = 1 - formulate(changeRecipe(largest.recipe, changes)).of('milkVolume') / largest.of('milkVolume');
  return share > 0 && share <= kitchenLines.lastJar.value ? { changes, jars: jars - 1, share } : null;
}

const sizing: readonly NumericRowId[] = [...amountRows, 'sweetenerMass', 'caneEquivalent', 'grainMass'];

function letAmountsGo({ given }: Recipe): readonly Change[] {
  return given.filter(({ row }) => sizing.includes(row)).map(({ row }) => ({ do: 'clear', row }));
}

/** A typed source beside a typed headspace would settle the water ratio, so the ratio is typed to stay as it is. */
function keepRatio(recipe: Recipe): readonly Change[] {
  const isTyped = (...rows: readonly NumericRowId[]): boolean => recipe.given.some(({ row }) => rows.includes(row));
  if (!isTyped('headspaceDepth', 'headspaceVolume') || isTyped('waterRatio', 'milkSolids')) return [];
  const amount = formulate(changeRecipe(recipe, letAmountsGo(recipe))).rows.waterRatio.value;
  if (typeof amount !== 'number') return [];
  const text = writeOneWay(String(amount), false);
  return [{ do: 'type', row: 'waterRatio', text, kind: 'ratio', amount }];
}

function milkFrom(stock: StockId, amount: Amount | undefined, formulation: Formulation): number {
  if (amount === undefined) return Number.NaN;
  const { of, evaluation } = formulation;
  const have = readStock(stock, amount, evaluation);
  if (typeof have !== 'number') return Number.NaN;
  switch (stock) {
    case 'source':
      return have * of('milkPerGram');
    case 'sweetener':
      return of('sugarRate') > 0 ? (1000 * have * of('fermentable')) / of('sugarRate') : Number.NaN;
    case 'grains':
      return (1000 * have) / of('grainRate');
    case 'jars':
      return (have * of('fillAllowed')) / fillPerMilk(formulation);
  }
}

/** mL of jar that 1 mL of milk takes with its sweetener and grains, at the recipe's rates. */
function fillPerMilk({ of, evaluation }: Formulation): number {
  const rate = of('sugarRate');
  const sweetener = rate > 0 ? (rate / 1000 / of('fermentable')) * of('sweetenerRoom') : 0;
  return 1 + sweetener + of('grainRate') / 1000 / evaluation.c('grainDensity');
}
