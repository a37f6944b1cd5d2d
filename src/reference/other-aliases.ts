import type { CultureId } from './grains';
import type { OtherFoodId } from './other-foods';

/**
 * Lower-case words a recipe may use for a food that is no source or sweetener, the plainest first; none is shared with
 * `aliases.ts`.
 */
export const otherFoodAliases: Readonly<Partial<Record<OtherFoodId, readonly string[]>>> = {
  '01077': ['whole milk', 'milk', 'dairy milk', 'full-fat milk', 'fresh milk', 'cow’s milk', "cow's milk", 'cows milk'],
  '01079': ['2% milk', 'reduced-fat milk', 'semi-skimmed milk', 'low-fat milk'],
  '01151': ['skim milk without vitamins added'],
  '01085': ['skim milk', 'skimmed milk', 'nonfat milk', 'fat-free milk'],
  '09087': ['deglet noor dates', 'deglet noor', 'chopped dates'],
  '12109': ['sweetened coconut flakes', 'sweetened flaked coconut'],
  '12117': ['fresh coconut milk', 'raw coconut milk', 'homemade coconut milk'],
  '12121': ['blanched hazelnuts', 'skinned hazelnuts', 'hazelnuts, blanched'],
  '12177': ['creamed coconut', 'coconut butter'],
  '14411': [
    'water',
    'tap water',
    'cold water',
    'warm water',
    'hot water',
    'boiling water',
    'filtered water',
    'spring water',
    'lukewarm water',
    'drinking water',
  ],
  '14429': ['municipal tap water'],
  '19336': ['powdered sugar', 'icing sugar', 'confectioners’ sugar', "confectioners' sugar", 'confectioners sugar'],
  '19349': ['dark corn syrup'],
  '19911': ['canadian maple syrup'],
  '20038': ['oat groats', 'whole oats'],
};

/** The record that plain water is weighed by, and those that are dairy milk. */
export const waterRecord: OtherFoodId = '14411';
export const dairyRecords: readonly OtherFoodId[] = ['01077', '01079', '01085', '01151'];

/** The same for kefir grains. Plain “kefir grains” may be either, and are in `unclearGrains`. */
export const grainAliases: Readonly<Record<CultureId, readonly string[]>> = {
  water: ['water kefir grains', 'water kefir grain', 'water grains', 'water kefir', 'tibicos', 'sugar kefir grains'],
  milk: ['milk kefir grains', 'milk kefir grain', 'milk grains', 'milk kefir', 'dairy kefir grains'],
  powder: [
    ...['kefir starter powder', 'kefir powder', 'kefir starter', 'kefir starter culture', 'kefir culture starter'],
    ...['kefir starter packet', 'kefir starter sachet', 'kefir packet', 'kefir sachet', 'kefir culture powder'],
    ...['packet kefir starter', 'sachet kefir starter', 'starter culture', 'starter powder', 'powdered kefir starter'],
    ...['freeze-dried kefir starter', 'kefir starter cultures', 'kefir starter packets', 'kefir starter sachets'],
  ],
  kefir: [
    ...['finished kefir', 'ready kefir', 'ready-made kefir', 'plain kefir', 'prepared kefir', 'fresh kefir'],
    ...['strained kefir', 'store-bought kefir', 'shop-bought kefir', 'bought kefir', 'leftover kefir', 'old kefir'],
    ...['kefir from the last batch', 'kefir from a previous batch', 'kefir from the previous batch', 'active kefir'],
    ...['kefir from your last batch', 'kefir of the last batch', 'live kefir', 'plain live kefir', 'liquid kefir'],
  ],
};

export const unclearGrains: readonly string[] = [
  'kefir grains',
  'kefir grain',
  'kefir crystals',
  'kefir culture',
  'grains',
];
