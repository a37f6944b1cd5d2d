import type { FoodId } from './foods';
import { type Coefficient, fromMemory, judgement } from './origins';
import type { OtherFoodId } from './other-foods';

/** How a food lies in a cup or spoon, which decides how far two level measures of it may differ. */
export type MeasureKind = 'liquid' | 'sugar' | 'pieces' | 'fine' | 'own';

const remembered = 'A judgement of how well a level measure repeats in one kitchen; no study of these foods was found.';

function either(value: number, low: number, high: number, note = remembered): Coefficient {
  return { value, unit: 'share', low, high, origin: fromMemory(note) };
}

/** The error to expect of a level kitchen measure, as a share of the weight, to either side. */
export const measureErrors: Readonly<Record<MeasureKind, Coefficient>> = {
  liquid: either(0.05, 0.02, 0.05),
  sugar: either(0.075, 0.05, 0.1),
  pieces: either(0.15, 0.1, 0.2, `Of cut nuts; whole ones and seeds are taken to be no better. ${remembered}`),
  fine: either(0.2, 0.1, 0.25, `Of what is ground or flaked. ${remembered}`),
  own: { value: 0.1, unit: 'share', origin: judgement('Your own cup, scooped again by the same hand.') },
};

/** How far a scant or a generous measure is from a level one, as a factor. */
export const loosely: Readonly<Record<'scant' | 'generous', Coefficient>> = {
  scant: {
    value: 0.95,
    unit: 'times',
    low: 0.9,
    high: 1,
    origin: judgement('A little less than level, nobody says how much.'),
  },
  generous: {
    value: 1.05,
    unit: 'times',
    low: 1,
    high: 1.1,
    origin: judgement('A little more than level, nobody says how much.'),
  },
};

/** Forms that lie otherwise than the food itself does. */
export const kindByForm: Readonly<Record<string, MeasureKind>> = {
  ground: 'fine',
  shredded: 'fine',
  sliced: 'pieces',
  slivered: 'pieces',
  chopped: 'pieces',
};

/** Measures of a record that cannot be right, and why; kept, but never used to weigh. */
export const doubtfulMeasures: readonly { readonly food: FoodId; readonly unit: string; readonly reason: string }[] = [
  { food: '19912', unit: 'cup', reason: 'It would make the syrup lighter than water; the teaspoon is used.' },
];

/** How each record’s food lies in a cup. */
export const measureKinds: Readonly<Record<FoodId | OtherFoodId, MeasureKind>> = {
  '01077': 'liquid',
  '01079': 'liquid',
  '01085': 'liquid',
  '01151': 'liquid',
  '08120': 'fine',
  '09087': 'pieces',
  '09421': 'pieces',
  '12006': 'pieces',
  '12012': 'pieces',
  '12014': 'pieces',
  '12023': 'pieces',
  '12036': 'pieces',
  '12061': 'pieces',
  '12062': 'pieces',
  '12078': 'pieces',
  '12087': 'pieces',
  '12104': 'fine',
  '12108': 'fine',
  '12109': 'fine',
  '12115': 'liquid',
  '12117': 'liquid',
  '12118': 'liquid',
  '12119': 'liquid',
  '12120': 'pieces',
  '12121': 'pieces',
  '12131': 'pieces',
  '12142': 'pieces',
  '12147': 'pieces',
  '12151': 'pieces',
  '12155': 'pieces',
  '12166': 'liquid',
  '12177': 'fine',
  '12179': 'fine',
  '12195': 'liquid',
  '12201': 'pieces',
  '12220': 'pieces',
  '14411': 'liquid',
  '14429': 'liquid',
  '16087': 'pieces',
  '16108': 'pieces',
  '16398': 'liquid',
  '19296': 'liquid',
  '19304': 'liquid',
  '19334': 'sugar',
  '19335': 'sugar',
  '19336': 'fine',
  '19340': 'sugar',
  '19349': 'liquid',
  '19350': 'liquid',
  '19353': 'liquid',
  '19355': 'liquid',
  '19908': 'sugar',
  '19911': 'liquid',
  '19912': 'liquid',
  '20038': 'pieces',
  '20444': 'pieces',
  '90480': 'liquid',
};
