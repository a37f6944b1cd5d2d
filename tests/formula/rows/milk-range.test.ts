import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import type { Yours } from '../../../src/formula/recipe/recipe';
import { type Kitchen, writeRow } from '../../../src/formula/words/write-row';
import { workingIn } from '../../../src/formula/working/working';
import { usualScoopSet } from '../../../src/measure/scoops';
import { anyRecipe, recipeOf, sensibleRecipe, typed } from '../../batches';
import { numberIn, rounding } from '../../results';

const own = (value: number): Yours => ({ value, how: 'typed' });
const kitchen: Kitchen = { leads: 'metric', cups: 'us', scoops: usualScoopSet, decimalComma: false };

/** The milk of these almonds with a bag and hand of the cook's own. */
function almonds(x?: number, p?: number, l?: number) {
  const yours = {
    ...(x === undefined ? {} : { 'almond.passing': own(x) }),
    ...(p === undefined ? {} : { 'almond.pulpMoisture': own(p) }),
    ...(l === undefined ? {} : { 'almond.handlingLoss': own(l) }),
  };
  return formulate(recipeOf({ given: [typed('sourceMass', 150)], yours }));
}

describe('how much milk comes, and how rich it is', () => {
  const usual = almonds();

  test('lies between what the least and the most that bags let pass give, pressed the least and the most', () => {
    const { range } = usual.rows.milkVolume;
    expect(range?.low).toBeCloseTo(numberIn(almonds(0.4, 0.72, 0.04), 'milkVolume'), 9);
    expect(range?.high).toBeCloseTo(numberIn(almonds(0.78, 0.6, 0.01), 'milkVolume'), 9);
  });

  test('has its least solids in milk pressed out the most, its most in milk pressed out the least', () => {
    const { range } = usual.rows.milkSolids;
    expect(range?.low).toBeCloseTo(numberIn(almonds(0.4, 0.6), 'milkSolids'), 9);
    expect(range?.high).toBeCloseTo(numberIn(almonds(0.78, 0.72), 'milkSolids'), 9);
  });

  test('is written beside the figure that the batch is planned with, not in its place', () => {
    const written = writeRow(usual, 'milkVolume', kitchen);
    expect(written?.range).toBeNull();
    expect(written?.metric).toBe('763\u00A0mL');
    expect(written?.spread).toBe('587–825\u00A0mL');
    expect(writeRow(usual, 'readyTime', kitchen)).toMatchObject({ spread: null, range: expect.any(String) });
  });

  test('has both ends in the working, with the shares they rest on', () => {
    const ends = workingIn(usual.rows.milkVolume)?.ends ?? [];
    expect(ends.map(({ id }) => id)).toEqual(['milkLeast', 'milkMost']);
  });

  test('is one number where the cook has weighed it all, where nothing is strained, and once it is measured', () => {
    expect(almonds(0.5, 0.65, 0.02).rows.milkVolume.range).toBeNull();
    expect(formulate(recipeOf({ source: 'coconutMilk' })).rows.milkVolume.range).toBeNull();
    const measured = formulate(recipeOf({ measured: { milkVolume: { kind: 'volume', amount: 600 } } }));
    expect(measured.rows.milkVolume.range).toBeNull();
  });

  test('a weighed pulp takes its moisture out of the range and leaves what passes', () => {
    const weighed = formulate(
      recipeOf({ given: [typed('sourceMass', 150)], measured: { pulpMass: { kind: 'mass', amount: 140 } } }),
    );
    const before = usual.rows.milkSolids.range;
    const after = weighed.rows.milkSolids.range;
    expect(Number(after?.high) - Number(after?.low)).toBeLessThan(Number(before?.high) - Number(before?.low));
  });

  test('lies within its range, whatever the batch', () => {
    fc.assert(
      fc.property(fc.oneof(anyRecipe, sensibleRecipe), (recipe) => {
        const formulation = formulate(recipe);
        for (const id of ['milkVolume', 'milkSolids'] as const) {
          const { range, status, value } = formulation.rows[id];
          if (range === null || status !== 'workedOut') continue;
          const slack = rounding * range.high;
          expect(Number(value), id).toBeGreaterThanOrEqual(range.low - slack);
          expect(Number(value), id).toBeLessThanOrEqual(range.high + slack);
        }
      }),
      { numRuns: 500 },
    );
  });
});
