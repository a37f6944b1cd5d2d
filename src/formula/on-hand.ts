import type { Formulation } from './formulate';
import { readGiven } from './givens';
import { type StockId, stockIds, stockRows } from './order';
import type { Amount } from './recipe';
import { numericRows } from './sheet';

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
 * enough for the least milk. Null where nothing on hand can be read or limits. Source: everything grows with the milk.
 */
export function largestBatch(
  formulation: Formulation,
  onHand: Readonly<Partial<Record<StockId, Amount>>>,
): LargestBatch | null {
  const limits = stockIds
    .map((stock): Limit => ({ stock, milk: milkFrom(stock, onHand[stock], formulation) }))
    .filter(({ milk }) => Number.isFinite(milk) && milk >= 0)
    .sort((a, b) => a.milk - b.milk);
  const [first, ...rest] = limits;
  return first === undefined ? null : { limits: [first, ...rest], milk: first.milk, limitedBy: first.stock };
}

function milkFrom(stock: StockId, amount: Amount | undefined, formulation: Formulation): number {
  if (amount === undefined) return Number.NaN;
  const { of, evaluation } = formulation;
  const row = stockRows[stock];
  const have = readGiven(evaluation, row, numericRows[row], amount);
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
