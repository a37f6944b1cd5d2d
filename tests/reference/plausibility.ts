import type { Food, Proximates } from '../../src/reference/foods';
import type { Check } from './check';
import { liesAs } from './expected/kitchen';
import { allergensOfSources } from './expected/sources';
import { printed } from './expected/usda';
import type { Tables } from './tables';
import { coefficientsIn } from './walk';

// Each figure is printed to 0.01 g, so five of them sum to 100 within 0.05 g, which is what USDA's do.
const roundingOfSum = 0.05 + 1e-9;
// Six sugars printed to 0.01 g, and a total of its own.
const roundingOfSugars = 0.05;

// Lactose as analysed is more than the carbohydrate left over by difference; of cane syrup the total is derived.
const moreSugarThanCarbohydrate = ['01077', '01079', '01085', '01151', '90480'];
// Analysed apart, sugars, starch and fibre need not agree with what is left over by difference: in macadamias, pecans,
// hulled sesame, oats, peanut butter and cashews they exceed it, by 0.2 to 2.5 g.
const morePartsThanCarbohydrate = [
  ...moreSugarThanCarbohydrate,
  ...['12131', '12142', '12201', '08120', '12087', '16398'],
];
// Carbohydrate by difference stands for the total of molasses, the total of pistachios is of a later release than their
// single sugars, no release seen has the sucrose of powdered sugar, and of almond butter three sugars were not written down.
const sugarsNotOneByOne = ['19304', '12151', '19336', '12195'];

interface Named {
  readonly at: string;
  readonly food: Proximates;
}

function recordsOf({ foods, otherFoods }: Tables): readonly Food[] {
  return [...Object.values(foods), ...Object.values(otherFoods)];
}

function compositionsOf(tables: Tables): readonly Named[] {
  const sources = Object.entries(tables.sources).flatMap(([at, { composition, ownWater }]) => [
    { at, food: composition },
    ...(ownWater ? [{ at: `${at}, its water`, food: ownWater.composition }] : []),
  ]);
  return [...recordsOf(tables).map((food) => ({ at: food.ndb, food })), ...sources];
}

function wrong<T>(all: readonly T[], isWrong: (one: T) => boolean, say: (one: T) => string): readonly string[] {
  return all.filter(isWrong).map(say);
}

function sumOfSix({ sucrose, glucose, fructose, maltose, lactose, galactose }: Proximates): number {
  return [sucrose, glucose, fructose, maltose, lactose, galactose].reduce<number>((sum, one) => sum + (one ?? 0), 0);
}

const composition = ['foods', 'otherFoods', 'sources'] as const;

/** What must hold of the figures whatever they are. */
export const plausibility: readonly Check[] = [
  {
    name: 'water, protein, fat, carbohydrate and ash sum to 100 within their rounding',
    reads: composition,
    faults: (tables) =>
      wrong(
        compositionsOf(tables),
        ({ food }) =>
          !(Math.abs(food.water + food.protein + food.fat + food.carbohydrate + food.ash - 100) <= roundingOfSum),
        ({ at }) => `${at} does not sum to 100`,
      ),
  },
  {
    name: 'no part is below 0 or above 100',
    reads: composition,
    faults: (tables) =>
      wrong(
        compositionsOf(tables),
        ({ food }) => Object.values(food).some((part) => typeof part === 'number' && !(part >= 0 && part <= 100)),
        ({ at }) => `${at} has a part that can't be`,
      ),
  },
  {
    name: 'fibre and sugars are within the carbohydrate, and the sugars within their total',
    reads: composition,
    faults: (tables) => [
      ...wrong(
        compositionsOf(tables),
        ({ food }) => (food.fibre ?? 0) > food.carbohydrate,
        ({ at }) => `${at}: more fibre than carbohydrate`,
      ),
      ...wrong(
        recordsOf(tables),
        ({ ndb, sugars, carbohydrate }) => (sugars ?? 0) > carbohydrate !== moreSugarThanCarbohydrate.includes(ndb),
        ({ ndb }) => `${ndb}: more sugar than carbohydrate, or no longer`,
      ),
      ...wrong(
        recordsOf(tables),
        ({ ndb, sugars, fibre, starch, carbohydrate }) =>
          (sugars ?? 0) + (fibre ?? 0) + (starch ?? 0) > carbohydrate + roundingOfSugars !==
          morePartsThanCarbohydrate.includes(ndb),
        ({ ndb }) => `${ndb}: sugars, fibre and starch exceed the carbohydrate, or no longer`,
      ),
      ...wrong(
        recordsOf(tables),
        (food) => sumOfSix(food) > (food.sugars ?? 0) + roundingOfSugars,
        ({ ndb }) => `${ndb}: single sugars exceed the total`,
      ),
      ...wrong(
        recordsOf(tables).filter(({ ndb, sucrose, glucose }) => {
          return sucrose !== null && glucose !== null && !sugarsNotOneByOne.includes(ndb);
        }),
        (food) => sumOfSix(food) < (food.sugars ?? 0) - roundingOfSugars,
        ({ ndb }) => `${ndb}: single sugars do not make up the total`,
      ),
    ],
  },
  {
    name: 'records carry the number, name and measures of the release',
    reads: ['foods', 'otherFoods', 'foodMeasures'],
    faults: (tables) =>
      printed.flatMap(({ ndb, name, measures }) => {
        const record = recordsOf(tables).find((food) => food.ndb === ndb);
        const [, kept] = Object.entries(tables.foodMeasures).find(([id]) => id === ndb) ?? [];
        const units = (all: readonly { readonly unit: string }[]) => all.map(({ unit }) => unit).join('|');
        return [
          ...(record?.name === name ? [] : [`${ndb} is ${name}`]),
          ...(kept !== undefined && units(kept.measures) === units(measures) ? [] : [`${ndb} is measured otherwise`]),
        ];
      }),
  },
  {
    name: 'a range has two ends that differ and holds its value; a share is between 0 and 1',
    reads: [
      'sources',
      'grains',
      'jars',
      'kitchen',
      'kitchenLines',
      'fermenting',
      'handwork',
      'bottles',
      'learning',
      'physics',
    ],
    faults: (tables) =>
      wrong(
        coefficientsIn(tables),
        ({ value, low, high, unit }) => {
          const [from, to] = [low ?? value, high ?? value];
          const isSpread = low === undefined && high === undefined ? true : from < to;
          const isShare = unit === 'share' ? from >= 0 && to <= 1 : true;
          return !(Number.isFinite(value) && from <= value && value <= to && isSpread && isShare);
        },
        ({ at }) => `${at}: not within its range, or no range`,
      ),
  },
  {
    name: 'sources name their allergens',
    reads: ['sources'],
    faults: ({ sources }) =>
      wrong(
        Object.entries(sources),
        ([id, { allergens }]) => allergens.join() !== (allergensOfSources[id] ?? ['typed nowhere']).join(),
        ([id, { allergens }]) => `${id}: ${allergens.join()}`,
      ),
  },
  {
    name: 'each record lies in a cup as its food does',
    reads: ['measureKinds'],
    faults: ({ measureKinds }) =>
      wrong(
        Object.entries(measureKinds),
        ([id, kind]) => kind !== (Object.entries(liesAs).find(([, records]) => records.includes(id))?.[0] ?? 'pieces'),
        ([id, kind]) => `${id}: ${kind}`,
      ),
  },
  {
    name: 'no sweetener holds more sugar and water than its own weight',
    reads: ['sweeteners'],
    faults: ({ sweeteners }) =>
      wrong(
        Object.entries(sweeteners),
        ([, { sugars, total, water }]) => {
          const { origin, ...single } = sugars;
          const sum = Object.values(single).reduce<number>((all, one) => all + (one ?? 0), 0);
          return !((total?.high ?? sum) + water <= 100) || !((total?.low ?? 0) <= (total?.high ?? 0));
        },
        ([id]) => `${id} holds more than there is of it`,
      ),
  },
];
