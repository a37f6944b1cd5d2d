import { doubleOf, type Exact, exactly } from '../../measure/exact';
import type { Formulation } from '../engine/formulate';
import { sumOf } from './money';
import { type Need, needsOf } from './needs';
import { costOf, type PackageFault, type PackagePrice, priceOf } from './package-price';

/** What one of the things that a batch takes costs; why it can't be said, where it can't. */
export interface CostLine {
  readonly need: Need;
  readonly cost: Exact | null;
  readonly why: 'noPrice' | PackageFault | null;
}

export interface BatchCost {
  readonly lines: readonly CostLine[];
  /** Of the lines that have a price. */
  readonly total: Exact;
  /** What of it has no price yet that can be counted with; none where the total is whole. */
  readonly missing: readonly CostLine[];
  /** A culture that is bought anew for each batch, by its name: packets are no packages here. Null where it is kept. */
  readonly uncounted: string | null;
  /** The total shared out; null where there is nothing to drink. */
  readonly perLitre: Exact | null;
  readonly perGlass: Exact | null;
}

/** What a batch costs by the prices there are: design rows `batchCost` (`total`) and `litreCost` (`perLitre`). */
export function batchCost(formulation: Formulation, packages: readonly PackagePrice[], carton?: string): BatchCost {
  const lines = needsOf(formulation, carton).map((need): CostLine => {
    const priced = priceOf(need, packages);
    return 'why' in priced
      ? { need, cost: null, why: priced.why }
      : { need, cost: costOf(priced, need.grams), why: null };
  });
  const total = sumOf(lines.flatMap(({ cost }) => (cost === null ? [] : [cost])));
  const { of, choices } = formulation;
  const { name, starter } = choices.grain;
  return {
    lines,
    total,
    missing: lines.filter(({ cost }) => cost === null),
    uncounted: starter?.packet === undefined ? null : name,
    perLitre: shareOf(total, of('drinkVolume') / 1000),
    perGlass: shareOf(total, of('drinkVolume') / of('servingSize')),
  };
}

function shareOf(total: Exact, count: number): Exact | null {
  return Number.isFinite(count) && count > 0 ? total.div(exactly(count)) : null;
}

/** Whether anything of a batch has a price. */
export function hasPrice({ lines }: BatchCost): boolean {
  return lines.some(({ cost }) => cost !== null);
}

/** A share of a cost, 0 to 1. */
export function partOf(cost: Exact, share: number): Exact {
  return cost.times(exactly(share));
}

/** Which of two costs is the smaller, for a list in order. */
export function compareCosts(one: Exact, other: Exact): number {
  return doubleOf(one.minus(other));
}
