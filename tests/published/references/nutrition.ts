import { formulate } from '../../../src/formula/engine/formulate';
import { energyOf } from '../../../src/formula/glass/energy';
import { inMilk } from '../../../src/formula/glass/in-the-bag';
import type { Yours } from '../../../src/formula/recipe/recipe';
import { recipeOf, typed } from '../../batches';
import { type Reference, withinShare } from '../outside';

/** What is printed of a drink, in 100 g: kcal, protein, fat and carbohydrate by difference. */
const drinks = [
  ['16222 soymilk, unsweetened', 33, 2.86, 1.61, 1.74],
  ['16120 soymilk, plain, unfortified', 54, 3.27, 1.75, 6.28],
  ['14016 almond milk, sweetened, vanilla', 38, 0.42, 1.04, 6.67],
  ['14639 rice milk', 47, 0.28, 0.97, 9.17],
  ['01077 cow’s milk, whole', 61, 3.15, 3.25, 4.8],
] as const;

export const energies: Reference = {
  citation:
    'US Department of Agriculture, National Nutrient Database for Standard Reference, Release 26 (2013): energy of drinks, kcal in 100 g.',
  seen: 'the tables of foods and nutrients, in a public data package',
  kind: 'result',
  tolerance: 'Printed to the whole kcal; soymilk by factors of its own: within half a kcal, and 1 % on top.',
  rows: drinks.map(([what, printed, protein, fat, carbohydrate]) => ({
    what,
    printed,
    ours: energyOf({ protein, fat, carbohydrate, alcohol: 0, acid: 0 }),
    within: 0.5 + printed / 100,
  })),
};

/** 150 g of almonds, 750 g of water, x 0.60, p 0.70, l 0.02, as the balance of 781.8 g of milk was worked out. */
const own = (value: number): Yours => ({ value, how: 'typed' });
const home = formulate(
  recipeOf({
    given: [typed('sourceMass', 150), typed('waterRatio', 5)],
    yours: { 'almond.passing': own(0.6), 'almond.pulpMoisture': own(0.7), 'almond.handlingLoss': own(0.02) },
  }),
);
/** The same almonds by the bag of the table, of which the fibre of the pulp in the paper was the measure. */
const byTable = formulate(recipeOf({ given: [typed('sourceMass', 150), typed('waterRatio', 5)] }));
const printedMilk = 781.8146;

function percent(part: 'fat' | 'protein'): number {
  return (100 * (inMilk(byTable, 'likely')?.[part] ?? Number.NaN)) / printedMilk;
}

export const homeMilk: Reference = {
  citation:
    'Almond okara in biscuits (2022), J. Sci. Food Agric., doi 10.1002/jsfa.12286, with USDA record 12061: what of 150 g of almonds is in 781.8 g of milk.',
  seen: 'abstract only; the shares that pass, fat 0.742 and protein 0.797, are worked out from its pulp',
  kind: 'result',
  tolerance:
    'Fat and protein pass in one proportion here and in two there, and 2 % of the milk is lost here: within 5 %. Its weight by the same balance, in which sugar passed as all else did: within 1 %.',
  rows: [
    withinShare('milk, g', printedMilk, home.of('milkMass'), 0.01),
    withinShare('protein, %', 3.23, percent('protein'), 0.05),
    withinShare('fat, %', 7.1, percent('fat'), 0.05),
  ],
};
