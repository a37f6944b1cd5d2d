import type { Exact } from '../../measure/exact';
import type { SweetenerId } from '../../reference/sweeteners';
import { sweetenerToBuy } from './needs';
import { costOf, type PackagePrice, priceOf } from './package-price';

/** What so many grams of each sweetener cost by the packages there are; null of one without a price to count with. */
export function sweetenerCosts(packages: readonly PackagePrice[]): (id: SweetenerId, grams: number) => Exact | null {
  return (id, grams) => {
    const priced = priceOf(sweetenerToBuy(id), packages);
    return 'why' in priced || !Number.isFinite(grams) ? null : costOf(priced, grams);
  };
}
