import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { plainRecipe, recipeOf, twoInches, typed } from '../../batches';
import { agrees, codesAt, numberIn, problemAt } from '../../results';

// Thousands of recipes take longer than one example does.
vi.setConfig({ testTimeout: 60_000 });

describe('a water ratio that joins two amounts', () => {
  test('of almonds and milk, by hand: 150 g and 787.062 g of milk want R = 5', () => {
    const yours = {
      'almond.passing': { value: 0.6, how: 'typed' },
      'almond.pulpMoisture': { value: 0.7, how: 'typed' },
    } as const;
    const five = formulate(recipeOf({ yours, given: [typed('sourceMass', 150), typed('waterRatio', 5)] }));
    const milk = numberIn(five, 'milkVolume');
    const joined = formulate(recipeOf({ yours, given: [typed('sourceMass', 150), typed('milkVolume', milk)] }));
    expect(numberIn(joined, 'waterRatio')).toBeCloseTo(5, 9);
  });

  test('gives both amounts as typed, whatever the sugar rule', () => {
    const sugars = fc.constantFrom(
      [],
      [typed('sugarRate', 20)],
      [typed('startingSugar', 45)],
      [typed('sweetenerMass', 15)],
      [typed('grainMass', 30)],
    );
    const others = fc.constantFrom('milkVolume', 'drinkVolume', 'fillVolume');
    const anchors = fc.constantFrom('sourceMass', 'blendWater');
    fc.assert(
      fc.property(
        plainRecipe,
        anchors,
        others,
        sugars,
        fc.integer({ min: 70, max: 140 }),
        (base, anchor, other, rates, percent) => {
          const recipe: Recipe = { ...base, vessel: 'twoLitre' };
          const usual = formulate({ ...recipe, given: [...rates, typed('milkVolume', 1000)] });
          const [source, target] = [usual.rows[anchor].value, usual.rows[other].value];
          fc.pre(typeof source === 'number' && source > 0 && typeof target === 'number');
          const amount = (target * percent) / 100;
          const joined = formulate({ ...recipe, given: [...rates, typed(anchor, source), typed(other, amount)] });
          if (codesAt(joined, 'waterRatio').includes('noRatio')) return;
          fc.pre(!codesAt(joined, 'startingSugar').includes('belowNative'));
          // A blend with hardly any sugar in it takes so much room that a fuller jar would run over.
          fc.pre(!codesAt(joined, 'fillVolume').includes('fillOverBrim'));
          expect(agrees(numberIn(joined, anchor), source)).toBe(true);
          const milk = numberIn(joined, 'milkVolume');
          const fill = joined.of('totalFill') / numberIn(joined, 'vesselCount');
          const reached = { milkVolume: milk, drinkVolume: numberIn(joined, 'drinkVolume'), fillVolume: fill };
          expect(agrees(reached[other], amount), `${other}: ${reached[other]}, not ${amount}`).toBe(true);
          expect(agrees(milk, joined.of('sourceMass') * joined.of('milkPerGram'))).toBe(true);
        },
      ),
      { numRuns: 2500 },
    );
  });

  test.each(['sugarRate', 'startingSugar'] as const)('counts the room of a typed %s', (row) => {
    for (const other of ['drinkVolume', 'fillVolume'] as const) {
      const base = recipeOf({ vessel: 'fiveLitre' });
      const given = [typed('sourceMass', 200), typed(row, 45)];
      const straight = formulate({ ...base, given: [...given, typed('waterRatio', 6)] });
      const joined = formulate({ ...base, given: [...given, typed(other, numberIn(straight, other))] });
      expect(numberIn(joined, 'waterRatio')).toBeCloseTo(6, 8);
    }
  });

  test('crosses the line where native sugar begins to count', () => {
    // Coconut flesh at a low ratio brings more than 10 g/L, at a high one less.
    for (const ratio of [1, 6, 12]) {
      const base = recipeOf({ source: 'coconutFresh', vessel: 'fiveLitre' });
      const straight = formulate({ ...base, given: [typed('sourceMass', 300), typed('waterRatio', ratio)] });
      const drink = numberIn(straight, 'drinkVolume');
      const joined = formulate({ ...base, given: [typed('sourceMass', 300), typed('drinkVolume', drink)] });
      expect(numberIn(joined, 'waterRatio')).toBeCloseTo(ratio, 8);
      expect(straight.of('nativeSugar') > 10).toBe(ratio !== 12);
    }
  });

  test('of two that do it, is the one nearer to the usual', () => {
    const plain = formulate(recipeOf({ yours: twoInches }));
    const given = [typed('blendWater', numberIn(plain, 'blendWater')), typed('headspaceDepth', 5)];
    expect(numberIn(formulate(recipeOf({ given })), 'waterRatio')).toBeCloseTo(4.5, 8);
  });

  test('of two, with little of the source and with much, is the one nearer to the usual', () => {
    const sweetened = (...given: Recipe['given']) => formulate(recipeOf({ source: 'coconutDriedSweetened', given }));
    const water = typed('blendWater', 700);
    const milk = numberIn(sweetened(water, typed('waterRatio', 1.2)), 'milkVolume');
    const joined = sweetened(water, typed('milkVolume', milk));
    expect(numberIn(joined, 'milkVolume')).toBeCloseTo(milk, 9);
    // The least milk comes at 1.44; usual are 5.6.
    expect(numberIn(joined, 'waterRatio')).toBeGreaterThan(1.44);
  });

  test('that does not exist is refused with the two that do not fit', () => {
    // The pulp of 500 g of almonds alone holds more than 100 mL of milk would leave.
    const formulation = formulate(recipeOf({ given: [typed('sourceMass', 500), typed('milkVolume', 100)] }));
    expect(problemAt(formulation, 'waterRatio', 'noRatio')).toMatchObject({ rows: ['sourceMass', 'milkVolume'] });
    expect(problemAt(formulation, 'blendWater', 'waits')).toMatchObject({ for: 'waterRatio' });
    expect(numberIn(formulation, 'milkVolume')).toBe(100);
  });

  test('of poured coconut milk lets it down to the jar', () => {
    const formulation = formulate(
      recipeOf({ source: 'coconutMilk', given: [typed('sourceMass', 392), typed('milkVolume', 800)] }),
    );
    expect(numberIn(formulation, 'blendWater')).toBeGreaterThan(390);
    expect(numberIn(formulation, 'blendWater')).toBeLessThan(420);
  });
});
