import { describe, expect, it, test } from 'vitest';
import { checks } from './checks';
import { findAt, type Path, plant } from './figures';
import { tables } from './tables';

describe('the reference tables', () => {
  it.each(checks)('$name', ({ faults }) => {
    expect(faults(tables)).toEqual([]);
  });
});

// Each is a slip of the kind that a hand makes in copying.
const planted: readonly (readonly [string, readonly (readonly [Path, unknown])[]])[] = [
  [
    'protein and fat of walnuts exchanged',
    [
      [['foods', '12155', 'protein'], 65.21],
      [['foods', '12155', 'fat'], 15.23],
    ],
  ],
  ['the digits of the water of walnuts transposed', [[['foods', '12155', 'water'], 7.04]]],
  ['more sugars than carbohydrate in hemp', [[['foods', '12012', 'sugars'], 15]]],
  ['fibre of flax above its carbohydrate', [[['foods', '12220', 'fibre'], 72.3]]],
  ['a missing lactose of honey turned to zero', [[['foods', '19296', 'lactose'], 0]]],
  [
    'glucose and fructose of agave exchanged',
    [
      [['sweeteners', 'agave', 'sugars', 'glucose'], 55.6],
      [['sweeteners', 'agave', 'sugars', 'fructose'], 12.43],
    ],
  ],
  ['the digits of the almond cup transposed', [[['sources', 'almond', 'cup', 'grams'], 134]]],
  ['the ash of almonds ten times as much', [[['foods', '12061', 'ash'], 29.7]]],
  ['a measure of sesame called by another spoon', [[['foodMeasures', '12023', 'measures', '1', 'unit'], 'tsp']]],
  ['a dose of grains outside its own range', [[['grains', 'milk', 'dose', 'value'], 41]]],
  ['a soak in minutes', [[['sources', 'cashew', 'soak', 'hours', 'unit'], 'min']]],
  ['milk left off the US list of allergens', [[['allergens', 'milk', 'us'], false]]],
  ['a number where there are words alone, typed nowhere', [[['growthModel', 'name'], 3]]],
  ['walnuts that name no allergen', [[['sources', 'walnut', 'allergens'], []]]],
];

describe('a planted fault is found', () => {
  test.each(planted)('%s', (_, changes) => {
    const faulty = structuredClone(tables);
    for (const [path, leaf] of changes) {
      expect(findAt(faulty, path)).not.toEqual(leaf);
      plant(faulty, path, leaf);
    }
    expect(checks.flatMap(({ faults }) => faults(faulty))).not.toEqual([]);
  });
});
