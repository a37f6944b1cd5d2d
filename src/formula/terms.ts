import type { IntermediateId } from './order';
import type { Term } from './row';
import { balanceTerms } from './terms/balance';
import { bottleTerms } from './terms/bottle';
import { fillTerms } from './terms/fill';
import { keepTerms } from './terms/keep';
import { ripeningTerms } from './terms/ripening';
import { sugarTerms } from './terms/sugar';
import { yieldTerms } from './terms/yield';

/** Every quantity that rows share and the working shows, but that has no row of its own. */
export const intermediates: Readonly<Record<IntermediateId, Term>> = {
  ...fillTerms,
  ...balanceTerms,
  ...yieldTerms,
  ...sugarTerms,
  ...ripeningTerms,
  ...bottleTerms,
  ...keepTerms,
};
