import { type Exact, exactly } from '../../measure/exact';
import type { Amount } from '../recipe/recipe';
import type { FoodToBuy } from './needs';

/** What a package of a food holds and costs, as the cook has typed it. */
export interface PackagePrice {
  readonly food: string;
  /** A name of the cook's own for it. */
  readonly name?: string;
  readonly amount: Amount & { readonly text: string };
  /** A decimal number of 0 or more, such as 4.35; no currency stands with it. */
  readonly price: string;
}

/** Why a package can't be counted with: its amount can't be read, or by measure where no measure is weighed. */
export type PackageFault = 'unreadable' | 'noWeight' | 'noPiece' | 'nothing';

/** What a package holds, g: by weight, or by volume or pieces through what those weigh. */
export function gramsIn({ amount: { kind, amount } }: PackagePrice, food: FoodToBuy): number | PackageFault {
  if (amount === null || !Number.isFinite(amount)) return 'unreadable';
  if (!(amount > 0)) return 'nothing';
  if (kind === 'mass') return amount;
  if (kind === 'volume') return food.weight === null ? 'noWeight' : amount * food.weight;
  if (kind === 'count') return food.piece === null ? 'noPiece' : amount * food.piece;
  return 'unreadable';
}

/** The package of a food, where it has one that can be counted with. */
export interface Priced {
  readonly entry: PackagePrice;
  /** What it holds, g. */
  readonly grams: number;
}

/** Whether a food has a price, and what a package of it holds. */
export function priceOf(
  food: FoodToBuy,
  packages: readonly PackagePrice[],
): Priced | { readonly why: 'noPrice' | PackageFault } {
  const entry = packages.find((one) => one.food === food.food);
  if (entry === undefined) return { why: 'noPrice' };
  const grams = gramsIn(entry, food);
  return typeof grams === 'number' ? { entry, grams } : { why: grams };
}

/** What so many grams cost, exactly; grams of 0 or more. */
export function costOf({ entry, grams: held }: Priced, grams: number): Exact {
  return exactly(entry.price).times(exactly(grams)).div(exactly(held));
}
