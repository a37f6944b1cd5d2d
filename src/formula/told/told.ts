import type { Telling } from '../figure';
import type { TermId } from '../row';
import { balanceTold } from './balance';
import { bottleTold } from './bottle';
import { cultureTold } from './culture';
import { fermentTold } from './ferment';
import { fillTold } from './fill';
import { jarTold } from './jar';
import { keepTold } from './keep';
import { milkTold } from './milk';
import { ripenTold } from './ripen';
import { ripeningTold } from './ripening';
import { sugarTold } from './sugar';
import { yieldTold } from './yield';

/**
 * How each way of each row and intermediate is told: `words`, and the same as a `formula` with `{id}` for each quantity
 * in it, where the working writes symbols, then the numbers put in. A way is told here under the name that it has beside
 * its rule.
 */
export const told: Readonly<Record<TermId, Readonly<Record<string, Telling>>>> = {
  ...jarTold,
  ...milkTold,
  ...cultureTold,
  ...ripenTold,
  ...fermentTold,
  ...bottleTold,
  ...keepTold,
  ...fillTold,
  ...balanceTold,
  ...yieldTold,
  ...sugarTold,
  ...ripeningTold,
};
