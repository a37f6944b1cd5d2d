import type { IntermediateId } from './order';
import type { Term } from './row';
import { balanceTerms } from './terms/balance';
import { fillTerms } from './terms/fill';
import { sugarTerms } from './terms/sugar';

/** Every quantity that rows share and the working shows, but that has no row of its own. */
export const intermediates: Readonly<Record<IntermediateId, Term>> = { ...fillTerms, ...balanceTerms, ...sugarTerms };
