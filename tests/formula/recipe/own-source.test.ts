import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import type { Yours } from '../../../src/formula/recipe/recipe';
import { recipeOf } from '../../batches';
import { codesAt, numberIn } from '../../results';

const typedIn = (figures: Readonly<Record<string, number>>): Readonly<Record<string, Yours>> =>
  Object.fromEntries(Object.entries(figures).map(([id, value]) => [`own@b1.${id}`, { value, how: 'typed' }]));

const make = (figures: Readonly<Record<string, number>>, jarOf = 'b1') =>
  formulate(recipeOf({ source: 'own', jarOf, yours: typedIn(figures) }));

// Almonds, record 12061: starch is what is left of the carbohydrate beside sugars and fibre; water 4.41 is by difference.
const almonds = {
  ...{ byFat: 49.93, byProtein: 21.15, byStarch: 21.55 - 12.5 - 4.35, bySugars: 4.35, byFibre: 12.5, byAsh: 2.96 },
  ...{ uptake: 0.593, passing: 0.67 },
};

describe('a source of the cook’s own', () => {
  test('counts as a usual nut, and says so, until its label is typed', () => {
    expect(codesAt(make({}), 'source')).toEqual(['ownAssumed']);
    expect(codesAt(make(almonds), 'source')).toEqual([]);
  });

  test('of the label of almonds comes to the milk of almonds', () => {
    const [own, table] = [make(almonds), formulate(recipeOf({ source: 'almond' }))];
    for (const row of ['milkVolume', 'sourceMass', 'pulpMass', 'milkSolids'] as const)
      expect(numberIn(own, row), row).toBeCloseTo(numberIn(table, row), 0);
    expect(own.choices.source.composition.water).toBeCloseTo(4.41, 6);
    expect(own.choices.source.composition.origin).toEqual({ kind: 'yours', how: 'typed' });
  });

  test('is that of one batch alone', () => {
    expect(numberIn(make(almonds, 'b2'), 'pulpMass')).toBe(numberIn(make({}), 'pulpMass'));
  });

  test('holds no more than a hundred grams in a hundred', () => {
    const tooMuch = make({ ...almonds, byFat: 90 });
    expect(codesAt(tooMuch, 'source')).toEqual(['labelTooMuch']);
    expect(tooMuch.choices.source.composition.water).toBe(0);
    expect(numberIn(tooMuch, 'milkVolume')).toBeGreaterThan(0);
  });

  test('that is not strained leaves no pulp', () => {
    const whole = make({ ...almonds, passing: 1 });
    expect(whole.rows.pulpMass.status).toBe('absent');
    expect(numberIn(whole, 'milkSolids')).toBeGreaterThan(numberIn(make(almonds), 'milkSolids'));
  });
});
