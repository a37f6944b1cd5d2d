import type { Exact } from '../../measure/exact';
import { writeNumber } from '../../measure/write-quantity';
import { leading } from '../words/leading';
import { lowerFirst } from '../words/lower-first';
import { type Kitchen, writeValue } from '../words/write-row';
import type { BatchCost, CostLine } from './batch-cost';
import { allot, type Currency, inCoins, writeMoney } from './money';
import type { FoodToBuy } from './needs';
import { costOf, type PackageFault, type Priced } from './package-price';

const hardSpace = '\u00A0';

/** What one thing of a batch costs, as it is read. */
export interface CostTold {
  readonly line: CostLine;
  /** How much of it the batch takes. */
  readonly amount: string;
  readonly cost: string | null;
}

/** What a batch costs, as it is read; the lines add up to the whole to the coin. */
export interface BatchCostTold {
  readonly lines: readonly CostTold[];
  readonly batch: string;
  readonly litre: string | null;
  readonly glass: string | null;
}

/** What a batch costs in the cook's own currency. */
export function tellCost(cost: BatchCost, currency: Currency, kitchen: Kitchen): BatchCostTold {
  const write = (coins: bigint): string => writeMoney(coins, currency, kitchen.decimalComma);
  const priced = cost.lines.flatMap((line) => (line.cost === null ? [] : [{ line, cost: line.cost }]));
  const { total, lines } = allot(
    priced.map((one) => one.cost),
    currency,
  );
  const each = (amount: Exact | null): string | null => (amount === null ? null : write(inCoins(amount, currency)));
  return {
    lines: cost.lines.map((line) => {
      const coins = lines[priced.findIndex((one) => one.line === line)];
      const amount = tellAmount(line.need, line.need.grams, kitchen);
      return { line, amount, cost: coins === undefined ? null : write(coins) };
    }),
    batch: write(total),
    litre: each(cost.perLitre),
    glass: each(cost.perGlass),
  };
}

/** So many grams of a food as this cook measures it: liquids by volume where they have one. */
export function tellAmount({ weight, isLiquid }: FoodToBuy, grams: number, kitchen: Kitchen): string {
  const written =
    isLiquid && weight !== null
      ? writeValue(grams / weight, 'volume', null, kitchen)
      : writeValue(grams, 'mass', null, kitchen);
  return leading(written, kitchen.leads).first;
}

const faults: Readonly<Record<PackageFault, string>> = {
  unreadable: 'Its package can’t be read. Type what it holds, such as 500 g.',
  nothing: 'A package of nothing has no price for a gram. Type what it holds, such as 500 g.',
  noWeight: 'No cup of it is weighed in any table. Type what the package weighs, such as 500 g.',
  noPiece: 'No piece of it is weighed in any table. Type what the package weighs, such as 500 g.',
};

/** What is wrong with the package of a food, and what to do. */
export function describePackageFault(fault: PackageFault): string {
  return faults[fault];
}

/** For what there is no price yet; null where nothing is missing. */
export function describeMissing({ missing, uncounted }: BatchCost): string | null {
  const names = missing.map(({ need }) => lowerFirst(need.name));
  const [last] = names.slice(-1);
  const apart = uncounted === null ? null : `${uncounted} is not counted: add what it costs.`;
  if (last === undefined) return apart;
  const all = names.length === 1 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
  const asked = `No price yet for ${all}: type one.`;
  return apart === null ? asked : `${asked} ${apart}`;
}

/** What of the price of the source stays in the bag, by its share of the dry weight, 0 to 1. */
export function describeThrownAway(
  { likely, least, most }: { readonly likely: number; readonly least: number; readonly most: number },
  paid: Exact,
  plural: string,
  currency: Currency,
  { decimalComma }: Kitchen,
): string {
  const percent = (share: number): string => writeNumber(100 * share, 0, decimalComma);
  const money = (share: number): string => writeMoney(inCoins(paid.times(share), currency), currency, decimalComma);
  return `The pulp keeps about ${percent(likely)}${hardSpace}% of what is dry in the ${plural}, which is ${money(likely)} of what they cost; by bag and hand ${money(least)} to ${money(most)}.`;
}

/** What moves the cost, since it can't be typed. */
export const costMovedBy = 'Change a price, or how much the batch takes, and the cost follows.';

/** How money is rounded. */
export const costRounding = 'The lines add up to the whole, to the last coin.';

/** What a kilogram or a litre of a food costs by its package, such as `19.80 € a kg`. */
export function tellUnitPrice(food: FoodToBuy, priced: Priced, currency: Currency, { decimalComma }: Kitchen): string {
  const isLitre = food.isLiquid && food.weight !== null;
  const cost = costOf(priced, isLitre ? 1000 * (food.weight ?? 1) : 1000);
  return `${writeMoney(inCoins(cost, currency), currency, decimalComma)} a ${isLitre ? 'litre' : 'kg'}`;
}
