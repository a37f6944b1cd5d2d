import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { type Formulation, formulate } from '../../../../src/formula/engine/formulate';
import { anyRecipe, plainRecipe, recipeOf, sensibleRecipe, typed } from '../../../batches';
import { agrees, numberIn } from '../../../results';

// Thousands of recipes take longer than one example does.
vi.setConfig({ testTimeout: 60_000 });

const anything = fc.oneof(
  plainRecipe,
  sensibleRecipe,
  anyRecipe.map((recipe) => ({ ...recipe, measured: {} })),
);

function balanced(check: (formulation: Formulation, source: number) => readonly (readonly [number, number])[]): void {
  fc.assert(
    fc.property(anything, (recipe) => {
      const formulation = formulate(recipe);
      fc.pre(formulation.evaluation.stages() !== null && Number.isFinite(formulation.of('sourceMass')));
      for (const [into, out] of check(formulation, formulation.of('sourceMass'))) {
        expect(agrees(into, out), `${into} in, ${out} out`).toBe(true);
      }
    }),
    { numRuns: 2500 },
  );
}

describe('nothing is made and nothing is lost', () => {
  test('of the mass: source, uptake, tap water and its own water are leached, pulp, milk and what is lost', () => {
    balanced(({ of, evaluation, rows }, source) => {
      const tap = rows.blendWater.absence === null ? of('blendWater') * of('waterDensity') : 0;
      const into = source + source * evaluation.c('uptake') + tap + of('ownLiquid');
      const milk = of('milkVolume') * of('milkDensity');
      return [
        [into, of('leached') + of('pulpMass') + milk + of('lost')],
        [into, of('leached') + of('slurryMass')],
        [milk, of('milkMass')],
      ];
    });
  });

  test('of the sugars: those that reach the blender are in the pulp, the milk and what is lost', () => {
    balanced(({ of, evaluation }, source) => {
      const sugars = source * of('sourceSugars');
      const passed = sugars * (1 - of('heldBack'));
      const lost = passed * evaluation.c('handlingLoss');
      const inMilk = source * (evaluation.stages()?.milkSugars ?? Number.NaN);
      return [[sugars, sugars * of('heldBack') + inMilk + lost]];
    });
  });

  test('of the fill: milk, sweetener and grains are what the jars hold, and jars and headspace the brimful', () => {
    balanced(({ of, rows }) => {
      fc.pre(rows.fillVolume.value !== null && rows.headspaceVolume.value !== null && Number.isFinite(of('totalFill')));
      return [
        [of('totalFill'), of('fillVolume') * of('vesselCount')],
        [of('brimful'), of('fillVolume') + of('headspaceVolume')],
      ];
    });
  });

  test('of the hexose: what the sweetener holds is the rate times the milk', () => {
    balanced(({ of, rows }) => {
      fc.pre(rows.sugarRate.value !== null && rows.sweetenerMass.value !== null);
      return [[of('sweetenerMass') * of('fermentable'), (of('sugarRate') * of('milkVolume')) / 1000]];
    });
  });
});

describe('the stages of 200 g of almonds at 5 g/g', () => {
  const formulation = formulate(recipeOf({ given: [typed('sourceMass', 200), typed('waterRatio', 5)] }));

  test('bring 8.7 g of sugars and 182.48 g of other solids', () => {
    expect(200 * formulation.of('sourceSugars')).toBeCloseTo(8.7, 9);
    expect(200 * formulation.of('sourceSolids')).toBeCloseTo(182.48, 9);
  });

  test('leach nothing, unless the cook says a share', () => {
    expect(formulation.of('leached')).toBe(0);
    const yours = { 'almond.leaching': { value: 0.3, how: 'typed' } } as const;
    const leached = formulate({ ...formulation.recipe, yours });
    expect(leached.of('leached')).toBeCloseTo(2.61, 9);
    expect(numberIn(leached, 'soakedMass')).toBeCloseTo(200 * 1.593 - 2.61, 9);
    expect(leached.of('nativeSugar') / formulation.of('nativeSugar')).toBeCloseTo(0.7, 2);
  });

  test('lose a fiftieth of the milk on the way', () => {
    expect(formulation.of('lost') / (formulation.of('milkMass') + formulation.of('lost'))).toBeCloseTo(0.02, 12);
  });
});

describe('a fresh coconut', () => {
  test('brings its own water with its own sugars: 0.0623 + 0.519 × 0.0261 g a gram', () => {
    const formulation = formulate(recipeOf({ source: 'coconutFresh' }));
    expect(formulation.of('sourceSugars')).toBeCloseTo(0.0623 + 0.519 * 0.0261, 12);
  });

  test('at a ratio under its own water takes no tap water, and uses no more of its own than that', () => {
    const formulation = formulate(
      recipeOf({ source: 'coconutFresh', given: [typed('sourceMass', 400), typed('waterRatio', 0.3)] }),
    );
    expect(numberIn(formulation, 'blendWater')).toBe(0);
    expect(formulation.of('ownLiquid')).toBeCloseTo(120, 9);
  });
});
