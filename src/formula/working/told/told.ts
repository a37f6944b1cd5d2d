import type { TermId } from '../../rows/row';
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
import type { ToldWay } from './told-ways';
import { yieldTold } from './yield';

/** How each way of each row and intermediate is told, under the name that it has where it is defined. */
export const told: Readonly<Record<TermId, Readonly<Record<string, ToldWay>>>> = {
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
