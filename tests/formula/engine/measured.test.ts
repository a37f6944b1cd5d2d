import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import type { MeasuredRowId } from '../../../src/formula/recipe/order';
import type { Amount, Recipe } from '../../../src/formula/recipe/recipe';
import { measuredRecipe, onHand, bottledRecipe as recipeOf, typed } from '../../batches';
import { agrees, codesAt, differences, numberIn, problemAt } from '../../results';

// Thousands of recipes take longer than one example does.
vi.setConfig({ testTimeout: 60_000 });

function measuring(
  entries: Partial<Record<MeasuredRowId, number>>,
  changes: Partial<Recipe> = {},
): ReturnType<typeof formulate> {
  const measured: Partial<Record<MeasuredRowId, Amount>> = {};
  for (const row of ['soakedMass', 'pulpMass', 'grainMass'] as const) {
    const amount = entries[row];
    if (amount !== undefined) measured[row] = { kind: 'mass', amount };
  }
  for (const row of ['milkVolume', 'drinkVolume'] as const) {
    const amount = entries[row];
    if (amount !== undefined) measured[row] = { kind: 'volume', amount };
  }
  return formulate(recipeOf({ ...changes, measured }));
}

const planned = formulate(recipeOf());

describe('measuring', () => {
  test('never resizes: source, water and jars stay as they were', () => {
    const formulation = measuring({ soakedMass: 240, pulpMass: 200, milkVolume: 650, grainMass: 30, drinkVolume: 600 });
    for (const id of ['vesselCount', 'sourceMass', 'soakWater', 'waterRatio', 'blendWater', 'blenderLoads'] as const) {
      expect(numberIn(formulation, id), id).toBe(numberIn(planned, id));
    }
  });

  test('milk gives sugar and grains for the milk that is really there', () => {
    const formulation = measuring({ milkVolume: 650 });
    expect(formulation.of('nativeSugar')).toBeCloseTo(planned.of('nativeSugar'), 9);
    expect(numberIn(formulation, 'sweetenerMass')).toBeCloseTo((650 * 26.26) / 1000 / 1.050524, 4);
    expect(numberIn(formulation, 'grainMass')).toBeCloseTo(650 * 0.054, 9);
    expect(numberIn(formulation, 'headspaceDepth')).toBeGreaterThan(5);
  });

  test('milk leaves what was typed by weight as it is', () => {
    const formulation = measuring({ milkVolume: 650 }, { given: [typed('sweetenerMass', 20)] });
    expect(numberIn(formulation, 'sweetenerMass')).toBe(20);
    expect(numberIn(formulation, 'sugarRate')).toBeCloseTo((20 * 1.050524 * 1000) / 650, 4);
  });

  test('milk is followed where sweetener on hand sized the batch: 100 g of cane sugar in 2 L is 52.5 g/L', () => {
    const sized = { given: [onHand('sweetenerMass', 100)] };
    expect(numberIn(measuring({}, sized), 'milkVolume')).toBeCloseTo(4000, 0);
    const formulation = measuring({ milkVolume: 2000 }, sized);
    expect(numberIn(formulation, 'sweetenerMass')).toBe(100);
    expect(numberIn(formulation, 'sugarRate')).toBeCloseTo(52.526, 3);
    const unsized = measuring(
      { milkVolume: 2000 },
      { given: [typed('milkVolume', 2000), typed('sweetenerMass', 100)] },
    );
    for (const id of ['startingSugar', 'bottlePressureForgotten', 'readyTime'] as const)
      expect(numberIn(formulation, id), id).toBeCloseTo(numberIn(unsized, id), 9);
  });

  test('milk beside a rate typed to size it by sweetener on hand says that the rate is off', () => {
    const given = [typed('sugarRate', 30), onHand('sweetenerMass', 100)];
    const formulation = measuring({ milkVolume: 2000 }, { given });
    expect(problemAt(formulation, 'sugarRate', 'measuredOff')).toMatchObject({ planned: 30 });
    const start = measuring(
      { milkVolume: 2000 },
      { given: [typed('startingSugar', 30), onHand('sweetenerMass', 100)] },
    );
    expect(problemAt(start, 'startingSugar', 'measuredOff')).toMatchObject({ planned: 30 });
  });

  test('milk is followed where grains on hand sized the batch: the dose is of the milk that is there', () => {
    const formulation = measuring({ milkVolume: 500 }, { given: [onHand('grainMass', 54)] });
    expect(numberIn(formulation, 'grainMass')).toBe(54);
    expect(numberIn(formulation, 'grainRate')).toBeCloseTo(108, 9);
  });

  test('pulp beside solids that were typed says which solids are there', () => {
    const formulation = measuring({ pulpMass: 150 }, { given: [typed('milkSolids', 12)] });
    const stages = formulation.evaluation.stages();
    expect(numberIn(formulation, 'milkSolids')).toBeCloseTo(100 * (stages?.milkSolids ?? Number.NaN), 9);
    expect(problemAt(formulation, 'milkSolids', 'measuredOff')).toMatchObject({ planned: 12 });
  });

  test('milk beside milk that was typed says what was planned', () => {
    const formulation = measuring({ milkVolume: 650 }, { given: [typed('milkVolume', 700)] });
    expect(problemAt(formulation, 'milkVolume', 'measuredOff')).toMatchObject({ planned: 700, measured: 650 });
  });

  test('grains give the dose that is really there, and a typed dose says that it is off', () => {
    const formulation = measuring({ grainMass: 30 }, { given: [typed('milkVolume', 500), typed('grainRate', 50)] });
    expect(numberIn(formulation, 'grainRate')).toBeCloseTo(60, 9);
    expect(problemAt(formulation, 'grainRate', 'measuredOff')).toMatchObject({ planned: 50 });
  });

  test('kefir gives the glasses that are really there', () => {
    const shared = measuring({ drinkVolume: 600 }, { given: [typed('servings', 4)] });
    expect(numberIn(shared, 'servings')).toBe(2.4);
    const byGlass = measuring({ drinkVolume: 600 }, { given: [typed('sourceMass', 150), typed('servings', 4)] });
    expect(numberIn(byGlass, 'servings')).toBe(4);
    expect(numberIn(byGlass, 'servingSize')).toBe(150);
  });

  test('what is read at the end leaves a contradiction of the plan what it was', () => {
    const given = [typed('sourceMass', 140), typed('blendWater', 700), typed('milkVolume', 600)];
    const measured = { finalPH: { kind: 'acidity', amount: 4.2 } } as const;
    expect(codesAt(formulate(recipeOf({ given, measured })), 'milkVolume')).toEqual(['conflict']);
  });

  test('raises no question about what may well be', () => {
    const formulation = measuring({ soakedMass: 230, drinkVolume: 650 });
    expect(codesAt(formulation, 'soakedMass')).toEqual([]);
    expect(codesAt(formulation, 'drinkVolume')).toEqual([]);
  });

  test('more milk of a fresh coconut than with nothing lost has its pulp pressed drier, its own water counted', () => {
    const fresh = recipeOf({ source: 'coconutFresh' });
    const before = formulate(fresh);
    const amount = (numberIn(before, 'milkVolume') / (1 - before.evaluation.c('handlingLoss'))) * 1.02;
    const after = formulate({ ...fresh, measured: { milkVolume: { kind: 'volume', amount } } });
    expect(after.evaluation.c('pulpMoisture')).toBeLessThan(before.evaluation.c('pulpMoisture'));
    expect(after.of('sourceMass') * after.of('milkPerGram')).toBeCloseTo(amount, 6);
  });

  test('exactly what was planned changes nothing', () => {
    const rows = ['soakedMass', 'pulpMass', 'milkVolume', 'drinkVolume', 'grainMass'] as const;
    for (const row of rows) {
      expect(differences(planned, measuring({ [row]: numberIn(planned, row) })), row).toEqual([]);
    }
  });

  test('conserves mass wherever a coefficient takes up the difference', () => {
    fc.assert(
      fc.property(measuredRecipe, (recipe) => {
        const { of, evaluation, rows } = formulate(recipe);
        const corrected = evaluation.standing.coefficients;
        const { soakedMass, pulpMass, milkVolume } = recipe.measured;
        const solid = evaluation.choices.source.form === 'solid';
        fc.pre(rows.milkVolume.status !== 'refused' && Number.isFinite(of('waterRatio')));
        fc.pre(soakedMass === undefined || corrected.has('uptake') || rows.soakedMass.status === 'absent');
        fc.pre(pulpMass === undefined || corrected.has('pulpMoisture') || !solid);
        fc.pre(milkVolume === undefined || corrected.has('handlingLoss') || corrected.has('pulpMoisture'));
        fc.pre(milkVolume === undefined || pulpMass === undefined || corrected.has('handlingLoss'));
        const source = of('sourceMass');
        const into = source * (1 + evaluation.c('uptake') + of('waterRatio'));
        const out = of('leached') + of('pulpMass') + of('milkVolume') * of('milkDensity') + of('lost');
        fc.pre(Number.isFinite(into) && Number.isFinite(out));
        expect(agrees(into, out), `${into} in, ${out} out`).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });
});

describe('what can’t be', () => {
  test.each([
    ['pulp heavier than the slurry', 'pulpMass', 1100],
    ['more milk than there was slurry', 'milkVolume', 1000],
    ['more kefir than there was in the jars', 'drinkVolume', 850],
    ['nuts lighter after soaking than before', 'soakedMass', 100],
    ['more milk than a bone-dry pulp would leave', 'milkVolume', 900],
    ['nuts heavier than nuts and soaking water', 'soakedMass', 700],
  ] as const)('is told of: %s', (_, row, amount) => {
    const formulation = measuring({ [row]: amount });
    expect(numberIn(formulation, row)).toBe(amount);
    expect(problemAt(formulation, row, 'measuredImpossible')).toMatchObject({ planned: numberIn(planned, row) });
  });

  test('says what it could be at most or at least', () => {
    const said = (row: MeasuredRowId, amount: number) => {
      const problem = problemAt(measuring({ [row]: amount }), row, 'measuredImpossible');
      return problem.code === 'measuredImpossible' ? problem : expect.fail(problem.code);
    };
    const into = planned.of('slurryMass');
    expect(said('pulpMass', 1100)).toMatchObject({ least: null, most: expect.closeTo(into, 6) });
    expect(said('soakedMass', 100).least).toBeLessThanOrEqual(numberIn(planned, 'sourceMass'));
    const leaching = { yours: { 'almond.leaching': { value: 0.5, how: 'typed' } } } as const;
    const washed = measuring({ soakedMass: 100 }, leaching);
    // Half of the 4.35 g of sugar in 100 g of almonds.
    expect(problemAt(washed, 'soakedMass', 'measuredImpossible')).toMatchObject({
      least: expect.closeTo(numberIn(washed, 'sourceMass') * (1 - 0.0435 / 2), 6),
    });
    const together = numberIn(planned, 'sourceMass') + numberIn(planned, 'soakWater') * 0.9982;
    expect(said('soakedMass', 700)).toMatchObject({ least: null, most: expect.closeTo(together, 1) });
    const { most } = said('milkVolume', 1000);
    // Less than all that went in, by the dry solids that stay in the bag.
    expect(most).toBeLessThan(planned.of('slurryVolume'));
    expect(most).toBeGreaterThan(numberIn(planned, 'milkVolume'));
  });

  test('is milk and pulp that weigh more than went in, at both', () => {
    const into = planned.of('slurryMass');
    const milkVolume = numberIn(planned, 'milkVolume');
    const tooMuch = measuring({ milkVolume, pulpMass: into - milkVolume + 20 });
    for (const row of ['milkVolume', 'pulpMass'] as const) {
      expect(problemAt(tooMuch, row, 'moreOutThanIn')).toMatchObject({ into: expect.closeTo(into, 6) });
      expect(numberIn(tooMuch, row)).toBe(row === 'milkVolume' ? milkVolume : into - milkVolume + 20);
    }
    const weighed = measuring({ milkVolume, pulpMass: numberIn(planned, 'pulpMass') });
    for (const row of ['milkVolume', 'pulpMass'] as const) expect(codesAt(weighed, row)).toEqual([]);
  });

  test('counts the soaked weight that was measured as what went in', () => {
    const soakedMass = numberIn(planned, 'soakedMass');
    const milkVolume = numberIn(planned, 'milkVolume');
    const pulpMass = planned.of('slurryMass') - milkVolume;
    expect(codesAt(measuring({ soakedMass: soakedMass - 30, milkVolume, pulpMass }), 'milkVolume')).toEqual([
      'moreOutThanIn',
    ]);
  });

  test.each([
    ['0.7 of a litre read as mL', 'milkVolume', 0.7, 'volume', 700, 'mL'],
    ['1.005 of a litre read as mL', 'milkVolume', 1.005, 'volume', 1005, 'mL'],
    ['0.25 kg read as g', 'soakedMass', 0.25, 'mass', 250, 'g'],
    ['240 g read as ounces', 'soakedMass', 240 * 28.349523125, 'mass', 240, 'g'],
    ['3 cups read as mL', 'milkVolume', 3, 'volume', 709.8, 'mL'],
    ['700 g of milk read as 0.7 g', 'milkVolume', 0.7, 'mass', 700, 'g'],
    ['200 000 g of pulp, kilograms for grams', 'pulpMass', 200_000, 'mass', 200, 'g'],
  ] as const)('is asked about: %s', (_, row, amount, kind, meant, unit) => {
    const formulation = formulate(recipeOf({ measured: { [row]: { kind, amount } } }));
    expect(codesAt(formulation, row)).toEqual(['unitMeant']);
    expect(problemAt(formulation, row, 'unitMeant')).toMatchObject({ meant, unit });
    expect(formulation.rows[row].status).toBe('measured');
  });

  test('is not asked about where a batch came to half or twice', () => {
    for (const share of [0.5, 0.7, 1.1]) {
      const milkVolume = share * numberIn(planned, 'milkVolume');
      expect(codesAt(measuring({ milkVolume }), 'milkVolume')).toEqual([]);
    }
  });

  test('is read no further: another unit, or nothing legible', () => {
    const time = formulate(recipeOf({ measured: { pulpMass: { kind: 'time', amount: 3 } } }));
    expect(codesAt(time, 'pulpMass')).toEqual(['wrongKind']);
    const blank = formulate(recipeOf({ measured: { milkVolume: { kind: 'volume', amount: null } } }));
    expect(codesAt(blank, 'milkVolume')).toEqual(['unreadable']);
    expect(numberIn(blank, 'sweetenerMass')).toBe(numberIn(planned, 'sweetenerMass'));
  });

  test('has no place in a source that lacks it: a poured milk leaves no pulp', () => {
    const formulation = measuring({ pulpMass: 50, soakedMass: 300 }, { source: 'coconutMilk' });
    expect(formulation.rows.pulpMass).toMatchObject({ status: 'absent', absence: 'noPulp' });
    expect(formulation.rows.soakedMass.status).toBe('absent');
    expect(formulation.of('pulpMass')).toBe(0);
  });

  test('is no soaked weight of kernels that need no soak: it counts', () => {
    const sunflower = measuring({ soakedMass: 310 }, { source: 'sunflower', given: [typed('sourceMass', 200)] });
    expect(sunflower.rows.soakedMass).toMatchObject({ status: 'measured', value: 310 });
    expect(sunflower.evaluation.c('uptake')).toBeCloseTo(0.55, 9);
  });

  test('is no pulp that was hardly pressed: it holds milk, and mass is conserved', () => {
    const slurry = planned.of('slurryMass');
    const pulpMass = 0.7 * slurry;
    const formulation = measuring({ pulpMass });
    expect(codesAt(formulation, 'pulpMass')).toEqual(['hardlyPressed']);
    const milk = numberIn(formulation, 'milkVolume') * formulation.of('milkDensity');
    expect(milk + formulation.of('lost') + pulpMass).toBeCloseTo(slurry, 4);
    expect(numberIn(formulation, 'milkSolids')).toBeCloseTo(100 * (1 - formulation.evaluation.c('pulpMoisture')), 4);
  });

  test('counts for all it can while the plan is refused: the jars wait, the sugar is of the milk that is there', () => {
    const given = [typed('vesselCount', 1.5), typed('sourceMass', 150), typed('sweetenerMass', 100)];
    const formulation = measuring({ milkVolume: 2000 }, { given });
    expect(codesAt(formulation, 'vesselCount')).toEqual(['notWhole']);
    expect(problemAt(formulation, 'fillVolume', 'waits')).toMatchObject({ for: 'vesselCount' });
    expect(formulation.of('milkVolume')).toBe(2000);
    expect(numberIn(formulation, 'sugarRate')).toBeCloseTo(52.526, 3);
  });

  test('says that it does not count yet, and what to mend, where nothing can follow from it', () => {
    const formulation = measuring({ pulpMass: 150, soakedMass: 240 }, { given: [typed('vesselCount', 1.5)] });
    expect(numberIn(formulation, 'pulpMass')).toBe(150);
    expect(problemAt(formulation, 'pulpMass', 'notCounted')).toMatchObject({ for: 'vesselCount' });
    expect(problemAt(formulation, 'soakedMass', 'notCounted')).toMatchObject({ for: 'vesselCount' });
  });

  test('leaves a plan that can’t be worked out with its own problem to mend', () => {
    const formulation = measuring({ grainMass: 30 }, { source: 'cartonPlain', given: [typed('milkSolids', 15)] });
    expect(codesAt(formulation, 'milkSolids')).toEqual(['noSolids']);
    expect(problemAt(formulation, 'sourceMass', 'waits')).toMatchObject({ for: 'milkSolids' });
    expect(formulation.rows.grainMass).toMatchObject({ status: 'measured', value: 30 });
    expect(formulation.of('grainMass')).toBe(30);
  });
});
