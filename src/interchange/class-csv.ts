import type { Kitchen } from '../batch/document/document';
import type { Formulation } from '../formula/engine/formulate';
import type { NumericRowId } from '../formula/recipe/order';
import { roundNumber } from '../measure/rounding';
import { grains } from '../reference/grains';
import { jars } from '../reference/jars';
import { type Field, plainNumber, writeTable } from './csv-file';

const worked: readonly (readonly [heading: string, row: NumericRowId])[] = [
  ['Milk source (g)', 'sourceMass'],
  ['Water to blend (mL)', 'blendWater'],
  ['Sweetener (g)', 'sweetenerMass'],
  ['Culture to add (g)', 'grainMass'],
  ['Ready after (h)', 'readyTime'],
];

/** Decimals of a degree: far finer than any thermometer. */
const places = 6;

/** A kitchen of a class with the recipe worked out in it. */
export interface WorkedKitchen {
  readonly kitchen: Kitchen;
  readonly formulation: Formulation;
}

/**
 * A class as CSV, a line a kitchen: what was said of it, which can be pasted as a list again, and the amounts that came
 * of it. An empty room is that of the recipe.
 */
export function writeClassCsv(kitchens: readonly WorkedKitchen[]): string {
  const headings = [
    'Kitchen',
    'Jar',
    'Room (°C)',
    'Units',
    'Culture',
    ...worked.map(([one]) => one),
    'From (h)',
    'To (h)',
  ];
  const lines = kitchens.map(({ kitchen, formulation: { rows } }): readonly Field[] => [
    kitchen.name,
    jars[kitchen.vessel].name,
    kitchen.temperature === null ? null : roundNumber(kitchen.temperature, places),
    kitchen.leads === 'us' ? 'US' : 'metric',
    grains[kitchen.grains].name,
    ...worked.map(([, row]) => plainNumber(rows[row].value)),
    plainNumber(rows.readyTime.range?.low ?? null),
    plainNumber(rows.readyTime.range?.high ?? null),
  ]);
  return writeTable(headings, lines);
}
