import { foodDensity } from '../../../src/formula/models/strain';
import { sumOfSugars } from '../../../src/formula/models/sugar';
import { foodMeasures } from '../../../src/reference/food-measures';
import { foods } from '../../../src/reference/foods';
import { otherFoods } from '../../../src/reference/other-foods';
import { printed } from '../../reference/expected/usda';
import { kept, type Reference, type Row, withinShare } from '../outside';

const publisher = 'US Department of Agriculture, Agricultural Research Service, USDA National Nutrient Database';
const table: Readonly<Record<string, (typeof foods)[keyof typeof foods]>> = { ...foods, ...otherFoods };
const measured: Readonly<Record<string, (typeof foodMeasures)[keyof typeof foodMeasures]>> = foodMeasures;

function carried(fields: readonly string[]): readonly Row[] {
  return printed.flatMap(({ ndb, per100g }) => {
    const ours: Readonly<Record<string, unknown>> = { ...table[ndb] };
    return fields.flatMap((field) => {
      const value = per100g[field];
      return typeof value === 'number' ? [kept(`${ndb} ${field}`, value, Number(ours[field]))] : [];
    });
  });
}

const cup = 236.5882365;
/** Liquids whose printed cup is held against their composition instead, so that it counts once. */
const liquids = ['01077', '01079', '01085', '19296', '19353', '19350', '19304', '14411', '12119'];
const isCupOfLiquid = (ndb: string, amount: number, unit: string): boolean =>
  liquids.includes(ndb) && amount === 1 && unit === 'cup';

export const release28: Reference = {
  citation: `${publisher} for Standard Reference, Release 28 (2015): household measures, g.`,
  seen: 'the original text file of weights, in a public copy',
  kind: 'carried over',
  tolerance: 'As printed.',
  rows: printed.flatMap(({ ndb, measures }) =>
    measures.flatMap(({ amount, unit, grams }) => {
      if (isCupOfLiquid(ndb, amount, unit)) return [];
      const ours = measured[ndb]?.measures.find((each) => each.amount === amount && each.unit === unit);
      return [kept(`${ndb} ${amount} ${unit}`, grams, ours?.grams ?? Number.NaN)];
    }),
  ),
};

export const legacy: Reference = {
  citation: `${publisher} for Standard Reference, Legacy (April 2018): proximates, g per 100 g.`,
  seen: 'a copy whose release is inferred',
  kind: 'carried over',
  tolerance: 'As printed.',
  rows: carried(['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash']),
};

export const release26: Reference = {
  citation: `${publisher} for Standard Reference, Release 26 (2013): individual sugars, g per 100 g.`,
  seen: 'a copy of the nutrient file whole',
  kind: 'carried over',
  tolerance: 'As printed.',
  rows: carried(['sucrose', 'glucose', 'fructose', 'maltose', 'lactose', 'galactose']),
};

// Where the release itself is wrong or has not all sugars, by its own notes.
const sumsAtOdds = ['19304', '19336', '12036'];

export const totalSugars: Reference = {
  citation: `${publisher}, Legacy (2018): total sugars, against the sum of the kinds of Release 26.`,
  seen: 'copies of both',
  kind: 'result',
  tolerance: 'Rounding of six figures and a revision between the releases: 0.1 g.',
  rows: printed.flatMap(({ ndb, per100g }) => {
    const [food, total] = [table[ndb], per100g.sugars];
    if (food === undefined || typeof total !== 'number' || total === 0) return [];
    if (sumsAtOdds.includes(ndb) || sumOfSugars(food) === 0) return [];
    return [{ what: `${ndb} sugars, g`, printed: total, ours: sumOfSugars(food), within: 0.1 }];
  }),
};

export const cupDensity: Reference = {
  citation: `${publisher}, Release 28: a cup of a liquid, against the density that its composition makes.`,
  seen: 'copies of both',
  kind: 'result',
  tolerance:
    'Component densities run 0.25 % low in water and 0.5 % in sugar, a printed cup is rounded, and syrups keep air or are filled warm: 1.5 % to 80 % water, else 3 %.',
  rows: liquids.flatMap((ndb) => {
    const food = table[ndb];
    const grams = measured[ndb]?.measures.find(({ amount, unit }) => isCupOfLiquid(ndb, amount, unit))?.grams;
    if (food === undefined || grams === undefined) return [];
    const origin = { kind: 'from memory' } as const;
    const density = foodDensity({ ...food, origin });
    const share = food.water > 80 ? 0.015 : 0.03;
    return [withinShare(`${ndb} density of a cup, g/mL`, grams / cup, density, share)];
  }),
};
