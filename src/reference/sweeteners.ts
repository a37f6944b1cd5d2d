import type { FoodId, Sugars } from './foods';
import { fromMemory, judgement, type Origin, published } from './origins';

export interface Sweetener {
  readonly name: string;
  readonly food: FoodId | null;
  /** g per 100 g; `null`: not known, which is not zero. */
  readonly sugars: Sugars & { readonly origin: Origin };
  /** Where the single sugars are unknown: all fermentable sugar as it is, g per 100 g, not yet counted as hexose. */
  readonly total?: { readonly low: number; readonly high: number; readonly origin: Origin };
  /** g per 100 g. */
  readonly water: number;
  readonly waterOrigin: Origin;
  /** The one level measure that it is weighed by, in a cell, in a recipe and looked up. */
  readonly spoon: {
    readonly grams: number;
    readonly millilitres: number;
    readonly measure: string;
    readonly origin: Origin;
  } | null;
  /** For fruit: what one piece weighs. */
  readonly piece?: { readonly grams: number; readonly measure: string; readonly origin: Origin };
  readonly state: 'dry' | 'liquid' | 'fruit';
  /** Why it cannot be used: there is nothing in it the grains can ferment. */
  readonly refused?: string;
  readonly honeyUnderOne?: boolean;
  readonly mostlyFructose?: boolean;
}

// 231 in³ over 16, over 256 and over 768.
const cupful = 236.5882365;
const tablespoon = 14.78676478125;
const teaspoon = 4.92892159375;

function record(id: FoodId, note?: string): Origin {
  return published('usda-sr', `Release 26, record ${id}, individual sugars`, note);
}

function water(id: FoodId): Origin {
  return published('usda-sr', `Legacy, record ${id}, water`);
}

function spoon(id: FoodId, measure: string, grams: number, millilitres: number, note?: string) {
  return { grams, millilitres, measure, origin: published('usda-sr', `Release 28, record ${id}, ${measure}`, note) };
}

/** By the cup wherever a record has one: of its level measures the largest is rounded least. */
function cup(id: FoodId, measure: string, grams: number, note?: string) {
  return spoon(id, measure, grams, cupful, note);
}

function guessedSpoon(grams: number, note: string) {
  return { grams, millilitres: tablespoon, measure: '1 tbsp', origin: fromMemory(note) };
}

function unknownSugars(origin: Origin) {
  return { sucrose: null, glucose: null, fructose: null, maltose: null, lactose: null, galactose: null, origin };
}

function noSugars(origin: Origin) {
  return { sucrose: 0, glucose: 0, fructose: 0, maltose: 0, lactose: 0, galactose: 0, origin };
}

function refuse(name: string, refused: string) {
  return {
    name,
    food: null,
    sugars: noSugars(fromMemory('The pure sweetener holds none of these.')),
    water: 0,
    waterOrigin: fromMemory('A dry powder.'),
    spoon: null,
    state: 'dry',
    refused,
  } as const;
}

const table = {
  caneWhite: {
    name: 'Cane sugar, white',
    food: '19335',
    sugars: {
      ...{ sucrose: 99.8, glucose: 0, fructose: 0, maltose: 0, lactose: 0, galactose: 0 },
      origin: record('19335'),
    },
    water: 0.02,
    waterOrigin: water('19335'),
    spoon: cup('19335', '1 cup', 200),
    state: 'dry',
  },
  caneRaw: {
    name: 'Cane sugar, raw (turbinado)',
    food: '19908',
    sugars: {
      ...{ sucrose: 99.19, glucose: 0, fructose: 0, maltose: 0, lactose: 0, galactose: 0 },
      origin: record('19908'),
    },
    water: 0.03,
    waterOrigin: water('19908'),
    spoon: cup('19908', '1 cup', 202, 'The teaspoon of the same record, 4.6 g, is 9 % heavier for its volume.'),
    state: 'dry',
  },
  brown: {
    name: 'Brown sugar',
    food: '19334',
    sugars: {
      ...{ sucrose: 94.56, glucose: 1.35, fructose: 1.11, maltose: 0, lactose: 0, galactose: 0 },
      origin: record('19334'),
    },
    water: 1.34,
    waterOrigin: water('19334'),
    spoon: cup('19334', '1 cup packed', 220),
    state: 'dry',
  },
  mapleSyrup: {
    name: 'Maple syrup',
    food: '19353',
    sugars: {
      ...{ sucrose: 58.32, glucose: 1.6, fructose: 0.52, maltose: 0, lactose: 0, galactose: 0 },
      origin: record('19353'),
    },
    water: 32.39,
    waterOrigin: water('19353'),
    spoon: cup(
      '19353',
      '1 cup',
      315,
      'The quarter-cup serving of the same record, 83 g, is 5 % heavier for its volume.',
    ),
    state: 'liquid',
  },
  mapleSugar: {
    name: 'Maple sugar',
    food: '19340',
    sugars: unknownSugars(record('19340', 'The record has no individual sugars.')),
    total: {
      low: 84.87,
      high: 84.87,
      origin: published('usda-sr', 'Legacy, record 19340, total sugars', 'A derived value.'),
    },
    water: 8,
    waterOrigin: water('19340'),
    spoon: spoon('19340', '1 tsp', 3, teaspoon),
    state: 'dry',
  },
  honey: {
    name: 'Honey',
    food: '19296',
    sugars: {
      ...{ sucrose: 0.89, glucose: 35.75, fructose: 40.94, maltose: 1.44, lactose: null, galactose: 3.1 },
      origin: record(
        '19296',
        'Glucose, fructose and galactose rest on one data point each; so much galactose is unusual.',
      ),
    },
    water: 17.1,
    waterOrigin: water('19296'),
    spoon: cup('19296', '1 cup', 339),
    state: 'liquid',
    honeyUnderOne: true,
  },
  molasses: {
    name: 'Molasses',
    food: '19304',
    sugars: {
      ...{ sucrose: 29.4, glucose: 11.92, fructose: 12.79, maltose: null, lactose: null, galactose: null },
      origin: record('19304', 'They sum to 54.11; the printed total, 74.72, is only carbohydrate by difference.'),
    },
    water: 21.87,
    waterOrigin: water('19304'),
    spoon: cup('19304', '1 cup', 337, 'The serving of 1 tbsp of the same record, 20 g, is 5 % lighter for its volume.'),
    state: 'liquid',
  },
  agave: {
    name: 'Agave syrup',
    food: '19912',
    sugars: {
      ...{ sucrose: 0, glucose: 12.43, fructose: 55.6, maltose: 0, lactose: 0, galactose: 0 },
      origin: record('19912'),
    },
    water: 22.94,
    waterOrigin: water('19912'),
    spoon: spoon('19912', '1 tsp', 6.9, teaspoon, 'The quarter cup of 55 g is impossible for a syrup.'),
    state: 'liquid',
    mostlyFructose: true,
  },
  coconutSugar: {
    name: 'Coconut sugar',
    food: null,
    sugars: unknownSugars(fromMemory('Mostly sucrose; it is in no table that was read.')),
    total: { low: 75, high: 92, origin: fromMemory('Mostly sucrose.') },
    water: 2,
    waterOrigin: fromMemory('1 to 3 g.'),
    spoon: guessedSpoon(12, '10 to 13 g.'),
    state: 'dry',
  },
  dateSyrup: {
    name: 'Date syrup',
    food: null,
    sugars: unknownSugars(fromMemory('About half glucose and half fructose; it is in no table that was read.')),
    total: { low: 60, high: 75, origin: fromMemory('About half glucose and half fructose.') },
    water: 25,
    waterOrigin: fromMemory('20 to 30 g.'),
    spoon: guessedSpoon(20.5, '20 to 21 g.'),
    state: 'liquid',
  },
  dates: {
    name: 'Dates, medjool, blended in',
    food: '09421',
    sugars: {
      ...{ sucrose: 0.53, glucose: 33.68, fructose: 31.95, maltose: 0.3, lactose: 0, galactose: 0 },
      origin: record('09421'),
    },
    water: 21.32,
    waterOrigin: water('09421'),
    spoon: null,
    piece: {
      grams: 24,
      measure: '1 date, pitted',
      origin: published('usda-sr', 'Release 28, record 09421, 1 date, pitted'),
    },
    state: 'fruit',
  },
  cornSyrup: {
    name: 'Corn syrup, light',
    food: '19350',
    sugars: unknownSugars(record('19350', 'The record has no individual sugars.')),
    total: {
      low: 26.77,
      high: 76.77,
      origin: published(
        'usda-sr',
        'record 19350, total sugars: Release 24 prints 26.77, Legacy 76.77',
        'The higher is carbohydrate by difference and counts long chains the grains may not take.',
      ),
    },
    water: 22.81,
    waterOrigin: water('19350'),
    spoon: cup('19350', '1 cup', 341),
    state: 'liquid',
  },
  dextrose: {
    name: 'Dextrose (glucose powder)',
    food: null,
    sugars: {
      ...{ sucrose: 0, glucose: 90.91, fructose: 0, maltose: 0, lactose: 0, galactose: 0 },
      origin: fromMemory('The monohydrate, as usually sold: computed from molar masses, 180.156/198.171.'),
    },
    water: 9.09,
    waterOrigin: fromMemory('The water of the monohydrate; an anhydrous powder has none.'),
    spoon: guessedSpoon(10, '8 to 12 g, by how fine it is.'),
    state: 'dry',
  },
  sorghumSyrup: {
    name: 'Sorghum syrup',
    food: '19355',
    sugars: unknownSugars(record('19355', 'The record has no individual sugars.')),
    total: {
      low: 60,
      high: 74.9,
      origin: fromMemory('The lower end. The higher is the total printed in record 19355, carbohydrate by difference.'),
    },
    water: 22.7,
    waterOrigin: water('19355'),
    spoon: cup('19355', '1 cup', 330),
    state: 'liquid',
  },
  caneSyrup: {
    name: 'Cane syrup',
    food: '90480',
    sugars: unknownSugars(record('90480', 'The record has no individual sugars.')),
    total: {
      low: 60,
      high: 73.2,
      origin: fromMemory('The lower end. The higher is the total printed in record 90480, a derived value.'),
    },
    water: 26,
    waterOrigin: water('90480'),
    spoon: cup('19355', '1 cup', 330, 'Record 90480 has a serving of 21 g without a volume; this is sorghum syrup’s.'),
    state: 'liquid',
  },
  stevia: refuse('Stevia', 'Stevia is sweet without sugar: there is nothing in it the grains can ferment.'),
  erythritol: refuse('Erythritol', 'Erythritol is a sugar alcohol the grains cannot ferment.'),
  xylitol: refuse('Xylitol', 'Xylitol is a sugar alcohol the grains hardly ferment, and it can hold them back.'),
  monkFruit: refuse(
    'Monk fruit extract',
    'Monk fruit extract is sweet without sugar: there is nothing in it the grains can ferment.',
  ),
  sucralose: refuse('Sucralose', 'Sucralose is sweet without being food: the grains cannot ferment it.'),
  allulose: refuse('Allulose', 'Allulose is a rare sugar the grains cannot ferment.'),
  none: {
    name: 'No sweetener',
    food: null,
    sugars: noSugars(judgement('Nothing is added.')),
    water: 0,
    waterOrigin: judgement('Nothing is added.'),
    spoon: null,
    state: 'dry',
  },
} satisfies Record<string, Sweetener>;

export type SweetenerId = keyof typeof table;

/** What can be added to feed the grains, in the order of the menu; those refused last, each with its reason. */
export const sweeteners: Readonly<Record<SweetenerId, Sweetener>> = table;
