import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { coefficientIds, coefficients } from '../../../src/formula/recipe/coefficients';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { convertNumber } from '../../../src/measure/units';
import { writeMetric } from '../../../src/measure/write-quantity';
import { anyRecipe, bottledRecipe, recipeOf, sourceIds, typed } from '../../batches';
import { codesAt, numberIn, problemAt } from '../../results';
import { anyOnHand } from '../../stocked';

function isNumber(value: unknown): boolean {
  return typeof value === 'number';
}

describe('what is worth knowing', () => {
  test('is little, of a plain batch', () => {
    const { rows } = formulate(recipeOf());
    const problems = Object.values(rows).flatMap((row) => row.problems);
    expect(problems).toEqual([]);
  });

  test('is that sugars no table gives are an estimate: canned coconut milk has 0 to all of its carbohydrate', () => {
    const formulation = formulate(recipeOf({ source: 'coconutMilk' }));
    const added = numberIn(formulation, 'sugarRate');
    const problem = problemAt(formulation, 'startingSugar', 'sugarEstimated');
    const [low, high] = problem.code === 'sugarEstimated' ? [problem.low, problem.high] : [0, 0];
    expect(low).toBeCloseTo(added, 9);
    expect((low + high) / 2).toBeCloseTo(numberIn(formulation, 'startingSugar'), 9);
  });

  test('is no estimate where its ends are the same to any kitchen', () => {
    for (const source of sourceIds) {
      for (const [sweetener, milk] of [
        ['caneWhite', 10],
        ['coconutSugar', 900],
      ] as const) {
        const recipe = recipeOf({
          source,
          sweetener: [{ id: sweetener, share: 1 }],
          given: [typed('milkVolume', milk)],
        });
        for (const { problems, kind } of Object.values(formulate(recipe).rows)) {
          for (const problem of problems) {
            if (problem.code !== 'sugarEstimated' || kind === 'choice') continue;
            expect(problem.high / problem.low).toBeGreaterThan(1.005);
            expect(writeMetric(problem.low, kind, false)).not.toBe(writeMetric(problem.high, kind, false));
          }
        }
      }
    }
  });

  test('is how to measure a jar of one’s own, until its capacity is typed or corrected', () => {
    const own = recipeOf({ vessel: 'own' });
    expect(codesAt(formulate(own), 'brimful')).toEqual(['weighWater']);
    expect(codesAt(formulate({ ...own, given: [typed('brimful', 1050)] }), 'brimful')).toEqual([]);
    expect(
      codesAt(formulate({ ...own, yours: { 'own.brimfulUsual': { value: 1050, how: 'typed' } } }), 'brimful'),
    ).toEqual([]);
  });

  test('is a batch over the brim, where its jars and its size were typed', () => {
    const over = formulate(
      recipeOf({ given: [typed('vesselCount', 1), typed('milkVolume', 1200), typed('sourceMass', 300)] }),
    );
    const brim = problemAt(over, 'headspaceVolume', 'overBrim');
    for (const at of ['vesselCount', over.sizedFrom] as const) {
      if (at === 'jar') throw new Error('the milk sizes it');
      expect(problemAt(over, at, 'runsOver')).toEqual({ ...brim, at, code: 'runsOver' });
    }
    expect(codesAt(over, 'fillVolume')).not.toContain('runsOver');
    const measured = formulate(
      recipeOf({
        given: [typed('vesselCount', 1), typed('milkVolume', 1200)],
        measured: { milkVolume: { kind: 'volume', amount: 700 } },
      }),
    );
    expect([codesAt(measured, 'vesselCount'), codesAt(measured, 'milkVolume')]).not.toContain('runsOver');
    expect(codesAt(measured, 'vesselCount')).toEqual([]);
  });

  test('is what was typed and nearly comes out, and nothing where it comes out', () => {
    const near = formulate(recipeOf({ given: [typed('drinkVolume', 600), typed('milkVolume', 600)] }));
    const milk = numberIn(near, 'milkVolume');
    expect(problemAt(near, 'milkVolume', 'nearlyAgrees')).toEqual({
      at: 'milkVolume',
      code: 'nearlyAgrees',
      typed: 600,
      computed: milk,
      with: ['drinkVolume'],
    });
    expect(near.rows.milkVolume.status).toBe('workedOut');
    const same = formulate(recipeOf({ given: [typed('drinkVolume', 600), typed('milkVolume', milk * (1 + 1e-12))] }));
    expect(codesAt(same, 'milkVolume')).toEqual([]);
    expect(same.rows.milkVolume.status).toBe('given');
  });

  test('is a headspace typed beside a batch that nearly leaves it', () => {
    const sized = typed('milkVolume', 700);
    const left = numberIn(formulate(recipeOf({ given: [sized] })), 'headspaceDepth');
    const near = formulate(recipeOf({ given: [sized, typed('headspaceDepth', left * 0.997)] }));
    expect(problemAt(near, 'headspaceDepth', 'nearlyAgrees')).toMatchObject({ with: ['milkVolume'] });
    const same = formulate(recipeOf({ given: [sized, typed('headspaceDepth', left)] }));
    expect(same.rows.headspaceDepth.status).toBe('given');
  });

  test('is a headspace under 2.5 cm, but not one of 2.5', () => {
    expect(codesAt(formulate(recipeOf({ given: [typed('headspaceDepth', 2.4)] })), 'headspaceDepth')).toEqual([
      'headspaceUnderWise',
    ]);
    expect(codesAt(formulate(recipeOf({ given: [typed('headspaceDepth', 2.5)] })), 'headspaceDepth')).toEqual([]);
  });

  test('is not a room at an end of the usual range as either degree writes it, but one a degree further', () => {
    const at = (fahrenheit: number) =>
      codesAt(
        formulate(recipeOf({ given: [typed('roomTemperature', convertNumber(fahrenheit, '°F', '°C'))] })),
        'roomTemperature',
      );
    // Usual is 18 °C to 24 °C, which are 64.4 °F and 75.2 °F.
    for (const usual of [64, 65, 75]) expect(at(usual), String(usual)).not.toContain('outsideUsual');
    for (const unusual of [63, 77]) expect(at(unusual), String(unusual)).toContain('outsideUsual');
  });

  test('is not that there is too little on hand of what the batch can’t be worked out for', () => {
    const onHand = { grains: { text: '5 g', kind: 'mass', amount: 5 } } as const;
    const measured = { grainMass: { kind: 'mass', amount: 2 } } as const;
    const refused = formulate(recipeOf({ given: [typed('sugarRate', null)], measured, onHand }));
    expect(refused.rows.milkVolume.value).toBeNull();
    expect(codesAt(refused, 'grainMass')).not.toContain('moreThanOnHand');
    const more = formulate(recipeOf({ given: [typed('grainMass', 6)], onHand }));
    expect(codesAt(more, 'grainMass')).toContain('moreThanOnHand');
  });

  test('is not that there is too little on hand where there is just enough', () => {
    const onHand = { grains: { text: '6 g', kind: 'mass', amount: 6 } } as const;
    const enough = formulate(recipeOf({ given: [typed('grainMass', 6)], onHand }));
    expect(codesAt(enough, 'grainMass')).not.toContain('moreThanOnHand');
  });

  test('is that a capacity typed makes the jar one’s own, and nothing else typed does', () => {
    expect(codesAt(formulate(recipeOf({ given: [typed('brimful', 1000)] })), 'vessel')).toEqual(['ownCapacity']);
    expect(codesAt(formulate(recipeOf({ given: [typed('headspaceDepth', 3)] })), 'vessel')).toEqual([]);
  });

  test('is whether an estimate is so for want of its label, or of any table', () => {
    const estimate = (source: Recipe['source']) =>
      problemAt(formulate(recipeOf({ source })), 'startingSugar', 'sugarEstimated');
    expect(estimate('cartonPlain')).toMatchObject({ byLabel: true });
    expect(estimate('coconutMilk')).toMatchObject({ byLabel: false });
  });

  test('is how much of the water is the coconut’s own: its weight, at 0.99820 g a millilitre', () => {
    const formulation = formulate(recipeOf({ source: 'coconutFresh' }));
    expect(problemAt(formulation, 'blendWater', 'ownWater')).toMatchObject({
      volume: expect.closeTo(formulation.of('ownLiquid') / 0.9982, 2),
    });
  });

  test('of a bottle over its limit says whether it is so without sugar: by the milk’s own, if that is still there', () => {
    const over = (limit: number, measured: Recipe['measured'] = {}) =>
      problemAt(
        formulate(bottledRecipe({ given: [typed('bottleLimit', limit), typed('bottleSugar', 5)], measured })),
        'bottlePressureForgotten',
        'overLimit',
      );
    // The almonds bring 7.8 g/L; 5.5 g/L reach 4 bar, and 10.3 g/L reach 6.
    expect(over(4)).toMatchObject({ unsweetened: true });
    expect(over(6)).toMatchObject({ unsweetened: false });
    expect(over(2, { sugarLeft: { kind: 'concentration', amount: 0 } })).toMatchObject({ unsweetened: false });
  });

  test('has a number wherever it speaks of one, whatever the recipe', () => {
    fc.assert(
      fc.property(anyRecipe, anyOnHand, (recipe, onHand) => {
        for (const { problems } of Object.values(formulate({ ...recipe, onHand }).rows)) {
          for (const problem of problems) {
            const numbers = Object.entries(problem).filter(([name, value]) => name !== 'typed' && isNumber(value));
            expect(numbers.filter(([, value]) => !Number.isFinite(value))).toEqual([]);
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  test('is a figure of the cook’s own that can’t be, told where it belongs', () => {
    const formulation = formulate(
      recipeOf({
        yours: {
          'almond.uptake': { value: -1, how: 'typed' },
          'kitchen.servingUsual': { value: 1e9, how: 'typed' },
          'hemp.uptake': { value: -1, how: 'typed' },
        },
      }),
    );
    expect(problemAt(formulation, 'source', 'coefficientRefused')).toMatchObject({ coefficient: 'uptake', typed: -1 });
    expect(codesAt(formulation, 'source')).toEqual(['coefficientRefused']);
    expect(codesAt(formulation, 'servingSize')).toEqual(['coefficientRefused']);
    expect(numberIn(formulation, 'servingSize')).toBe(250);
  });

  test('of a refused figure finds a row for every coefficient', () => {
    for (const id of coefficientIds) {
      const { owner, least } = coefficients[id];
      const key = { kitchen: 'kitchen', vessel: 'quartWide', source: 'almond', grains: 'water' }[owner];
      const formulation = formulate(bottledRecipe({ yours: { [`${key}.${id}`]: { value: least - 1, how: 'typed' } } }));
      const told = Object.values(formulation.rows).filter(({ problems }) =>
        problems.some(({ code }) => code === 'coefficientRefused'),
      );
      expect(told.length, id).toBe(1);
    }
  });

  test('is every sweetener of a blend that feeds nothing', () => {
    const blend = recipeOf({
      sweetener: [
        { id: 'caneWhite', share: 0.5 },
        { id: 'stevia', share: 0.25 },
        { id: 'xylitol', share: 0.25 },
      ],
    });
    const formulation = formulate(blend);
    expect(codesAt(formulation, 'sweetener')).toEqual(['nothingToFerment', 'nothingToFerment']);
    expect(numberIn(formulation, 'sweetenerMass')).toBeGreaterThan(0);
  });
});

describe('pulp', () => {
  test('heavier than the milk is spoken of, up to where it is lighter', () => {
    const at = (waterRatio: number) =>
      codesAt(formulate(recipeOf({ source: 'chia', given: [typed('waterRatio', waterRatio)] })), 'pulpMass');
    expect(at(13)).toEqual(['mostlyPulp']);
    expect(at(20)).toEqual([]);
  });

  test.each([
    ['chia', 12.46],
    ['flax', 6.75],
    ['almond', 1.14],
  ] as const)('of %s is wetter than the slurry under %f g of water a gram, and refused', (source, least) => {
    const at = (waterRatio: number) =>
      codesAt(formulate(recipeOf({ source, given: [typed('waterRatio', waterRatio)] })), 'waterRatio');
    expect(at(least - 0.01)).toContain('gels');
    expect(at(least + 0.01)).not.toContain('gels');
  });
});
