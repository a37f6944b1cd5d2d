import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { flowsOf } from '../../../src/formula/steps/flows';
import { anyRecipe, measuredRecipe, recipeOf, sensibleRecipe, typed } from '../../batches';
import { numberIn } from '../../results';

function flows(recipe: Recipe) {
  return flowsOf(formulate(recipe));
}

function sum(of: readonly number[]): number {
  return of.reduce((total, mass) => total + mass, 0);
}

describe('the streams of making milk', () => {
  test('come out as they go in', () => {
    fc.assert(
      fc.property(sensibleRecipe, (recipe) => {
        const found = flows(recipe);
        if (found === null) return;
        const [into, out] = [found.into, found.out].map((all) => sum(all.map(({ mass }) => mass)));
        expect(into).toBe(found.total);
        expect(Math.abs((out ?? 0) / found.total - 1)).toBeLessThan(1e-9);
      }),
      { numRuns: 500 },
    );
  });

  test('are each more than nothing, a share of all, and no more than all', () => {
    fc.assert(
      fc.property(fc.oneof(anyRecipe, measuredRecipe), (recipe) => {
        const found = flows(recipe);
        if (found === null) return;
        for (const { mass, share, label } of [...found.into, ...found.out]) {
          expect(mass).toBeGreaterThan(0);
          expect(share).toBeCloseTo(mass / found.total, 12);
          expect(label).toMatch(/^\p{Lu}/u);
        }
        expect(sum(found.into.map(({ share }) => share))).toBeCloseTo(1, 9);
      }),
    );
  });

  test('for 200 g of almonds at four to one are their source, uptake and water, milk, pulp and loss', () => {
    const recipe = recipeOf({ given: [typed('sourceMass', 200), typed('waterRatio', 4)] });
    const formulation = formulate(recipe);
    const found = flowsOf(formulation);
    const masses = Object.fromEntries(
      [...(found?.into ?? []), ...(found?.out ?? [])].map(({ id, mass }) => [id, mass]),
    );
    expect(masses).toMatchObject({ source: 200, water: 800, pulp: numberIn(formulation, 'pulpMass') });
    expect(masses.uptake).toBeCloseTo(200 * formulation.evaluation.c('uptake'), 9);
    expect(masses).not.toHaveProperty('ownLiquid');
  });

  test('count the liquid that coconut flesh brings itself', () => {
    expect(flows(recipeOf({ source: 'coconutFresh' }))?.into.map(({ id }) => id)).toContain('ownLiquid');
  });

  test('for a carton are only what is poured', () => {
    const found = flows(recipeOf({ source: 'cartonPlain' }));
    expect(found?.out.map(({ id }) => id)).not.toContain('pulp');
    expect(found?.into.map(({ id }) => id)).toEqual(['source']);
  });
});

test.each<[string, Recipe]>([
  ['gels', recipeOf({ given: [typed('waterRatio', 0.1)] })],
  ['can’t be read', recipeOf({ given: [typed('sourceMass', null)] })],
])('there is no balance where the batch %s', (_, recipe) => {
  expect(flows(recipe)).toBeNull();
});
