import type { IntermediateId } from '../recipe/order';
import type { Ways } from './row';
import { balanceTerms } from './terms/balance';
import { bottleTerms } from './terms/bottle';
import { fillTerms } from './terms/fill';
import { keepTerms } from './terms/keep';
import { ripeningTerms } from './terms/ripening';
import { sugarTerms } from './terms/sugar';
import { yieldTerms } from './terms/yield';

/** Every quantity that rows share and the working shows, but that has no row of its own. */
export const intermediates: Readonly<Record<IntermediateId, Ways>> = {
  ...fillTerms,
  ...balanceTerms,
  ...yieldTerms,
  ...sugarTerms,
  ...ripeningTerms,
  ...bottleTerms,
  ...keepTerms,
};

export const intermediateIds: readonly IntermediateId[] = Object.keys(intermediates).filter(isIntermediate);

export function isIntermediate(id: string): id is IntermediateId {
  return Object.hasOwn(intermediates, id);
}
