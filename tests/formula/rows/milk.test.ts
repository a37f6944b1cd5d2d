import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import type { Yours } from '../../../src/formula/recipe/recipe';
import { recipeOf, twoInches, typed } from '../../batches';
import { codesAt, numberIn, problemAt, worked } from '../../results';

const own = (value: number): Yours => ({ value, how: 'typed' });

// 150 g of almonds by hand, per gram: water w 0.0441, sugars S 0.0435, so N = 0.9124; u 0.593, R 5, x 0.6, p 0.7, l 0.02.
// Slurry 1 + 0.593 + 5 = 6.593 g. W = 0.0441 + 0.593 + 5 = 5.6371; k = 0.7/0.3 = 2.33333.
// q = k × 0.4 × N ÷ (W − kS) = 0.851573 ÷ 5.5356 = 0.153836. Pulp = (0.36496 + 0.153836 × 0.0435) ÷ 0.3 = 1.238839 g.
// Milk = (6.593 − 1.238839) × 0.98 = 5.247077 g. Solids = (0.54744 + 0.846164 × 0.0435) ÷ 5.354161 = 10.912 %.
const byHand = recipeOf({
  given: [typed('sourceMass', 150), typed('waterRatio', 5)],
  yours: { 'almond.passing': own(0.6), 'almond.pulpMoisture': own(0.7), 'almond.handlingLoss': own(0.02) },
});

describe('150 g of almonds, worked by hand', () => {
  const formulation = formulate(byHand);

  test('take 3 mL of soaking water a gram, for 10 h', () => {
    expect(numberIn(formulation, 'soakWater')).toBe(450);
    expect(numberIn(formulation, 'soakTime')).toBe(10);
  });

  test('weigh 150 × 1.593 = 238.95 g after soaking', () => {
    expect(numberIn(formulation, 'soakedMass')).toBeCloseTo(238.95, 9);
  });

  test('are blended with 750 g of water, 751.35 mL, in one load', () => {
    expect(numberIn(formulation, 'blendWater')).toBeCloseTo(750 / 0.9982, 2);
    expect(formulation.of('slurryMass')).toBeCloseTo(988.95, 9);
    expect(numberIn(formulation, 'blenderLoads')).toBe(1);
  });

  test('leave 150 × 1.238839 = 185.826 g of pulp', () => {
    expect(numberIn(formulation, 'pulpMass')).toBeCloseTo(185.826, 3);
  });

  test('give 150 × 5.247077 = 787.062 g of milk at 10.912 % solids', () => {
    expect(formulation.of('milkMass')).toBeCloseTo(787.062, 2);
    expect(numberIn(formulation, 'milkVolume') * formulation.of('milkDensity')).toBeCloseTo(787.062, 2);
    expect(numberIn(formulation, 'milkSolids')).toBeCloseTo(10.912, 3);
  });
});

describe('source', () => {
  test('of nothing is refused, of 100 kg is taken', () => {
    expect(codesAt(formulate(recipeOf({ given: [typed('sourceMass', 0)] })), 'sourceMass')).toEqual(['notPositive']);
    expect(worked(recipeOf({ given: [typed('sourceMass', 100_000)] }), 'sourceMass')).toBe(100_000);
    expect(codesAt(formulate(recipeOf({ given: [typed('sourceMass', 100_001)] })), 'sourceMass')).toEqual(['tooLarge']);
    expect(codesAt(formulate(recipeOf({ given: [typed('sourceMass', -5)] })), 'sourceMass')).toEqual(['negative']);
  });

  test('follows from typed water: 692.5 mL × 0.99820 ÷ 4.5 = 153.6 g', () => {
    expect(worked(recipeOf({ given: [typed('blendWater', 692.5)] }), 'sourceMass')).toBeCloseTo(153.612, 2);
  });

  test('cannot follow from tap water where its own water is more than the ratio wants', () => {
    const formulation = formulate(
      recipeOf({ source: 'coconutFresh', given: [typed('waterRatio', 0.5), typed('blendWater', 200)] }),
    );
    expect(problemAt(formulation, 'sourceMass', 'noRatio')).toMatchObject({ rows: ['blendWater', 'waterRatio'] });
    expect(problemAt(formulation, 'milkVolume', 'waits')).toMatchObject({ for: 'sourceMass' });
  });
});

describe('soaking', () => {
  test('is absent for what needs none, steeps in its own water, or is a liquid', () => {
    expect(formulate(recipeOf({ source: 'hemp' })).rows.soakTime.absence).toBe('notSoaked');
    for (const row of ['soakWater', 'soakTime'] as const)
      expect(formulate(recipeOf({ source: 'coconutMilk' })).rows[row].absence).toBe('notSoaked');
    expect(formulate(recipeOf({ source: 'coconutDried' })).rows.soakWater.absence).toBe('soaksInBlendingWater');
    expect(worked(recipeOf({ source: 'coconutDried' }), 'soakTime')).toBeCloseTo(1 / 6, 9);
    expect(formulate(recipeOf({ source: 'coconutMilk' })).rows.soakedMass.absence).toBe('notSoaked');
  });

  test('typed changes no amount, and speaks up outside the usual time', () => {
    const plain = formulate(recipeOf());
    const long = formulate(recipeOf({ given: [typed('soakTime', 24), typed('soakWater', 1000)] }));
    expect(numberIn(long, 'sourceMass')).toBe(numberIn(plain, 'sourceMass'));
    expect(problemAt(long, 'soakTime', 'outsideUsual')).toMatchObject({ low: 8, high: 12 });
    expect(codesAt(formulate(recipeOf({ given: [typed('soakTime', 73)] })), 'soakTime')).toEqual(['tooLarge']);
  });

  test('typed for what needs none says that nothing comes of it', () => {
    expect(codesAt(formulate(recipeOf({ source: 'hemp', given: [typed('soakTime', 2)] })), 'soakTime')).toEqual([
      'notSoaked',
    ]);
  });
});

describe('water', () => {
  test('by weight is that of the source, and an unusual one is remarked on', () => {
    expect(worked(recipeOf(), 'waterRatio')).toBe(4.5);
    expect(codesAt(formulate(recipeOf({ given: [typed('waterRatio', 9)] })), 'waterRatio')).toEqual([]);
    expect(problemAt(formulate(recipeOf({ given: [typed('waterRatio', 9.1)] })), 'waterRatio', 'outsideUsual')).toEqual(
      { code: 'outsideUsual', at: 'waterRatio', low: 2.25, high: 9, kind: 'ratio' },
    );
  });

  test('that the pulp keeps gives no milk, and says what it takes at least', () => {
    // The slurry is no wetter than the pulp while W ≤ k(N + S): R ≤ 2.33333 × (0.9124 + 0.0435) − 0.0441 − 0.593 = 1.59333.
    const tooDry = formulate({ ...byHand, given: [typed('waterRatio', 1.593)] });
    expect(problemAt(tooDry, 'waterRatio', 'gels')).toMatchObject({ least: 1.6, gelling: false });
    expect(problemAt(tooDry, 'sourceMass', 'waits')).toMatchObject({ for: 'waterRatio' });
    expect(worked({ ...byHand, given: [typed('waterRatio', 1.594)] }, 'milkSolids')).toBeGreaterThan(29);
  });

  // k(N + S) − w − u of each, from its composition and the moisture of its pulp.
  test.each([
    ['chia', 12.46],
    ['flax', 6.75],
    ['almond', 1.14],
    ['sesameHulled', 1.35],
  ] as const)('of %s gives no milk up to %d g/g, and at what it then asks for it does', (source, threshold) => {
    const at = (ratio: number) => formulate(recipeOf({ source, given: [typed('waterRatio', ratio)] }));
    const problem = problemAt(at(threshold - 0.01), 'waterRatio', 'gels');
    expect(at(threshold + 0.01).rows.milkVolume.value).not.toBeNull();
    if (problem.code !== 'gels') expect.fail(problem.code);
    expect(problem.gelling).toBe(source === 'chia' || source === 'flax');
    expect(problem.least).toBeGreaterThan(threshold - 0.01);
    expect(problem.least).toBeLessThanOrEqual(threshold + 0.1);
    expect(codesAt(at(problem.least), 'waterRatio')).not.toContain('gels');
    expect(numberIn(at(problem.least), 'milkVolume')).toBeGreaterThan(0);
  });

  test('is what the fresh nut’s own leaves to add: (2.5 − 0.519) g a gram', () => {
    const formulation = formulate(recipeOf({ source: 'coconutFresh', given: [typed('sourceMass', 400)] }));
    expect(numberIn(formulation, 'blendWater')).toBeCloseTo((400 * (2.5 - 0.519)) / 0.9982, 1);
    expect(formulation.of('ownLiquid')).toBeCloseTo(400 * 0.519, 9);
    expect(codesAt(formulation, 'blendWater')).toEqual(['ownWater']);
  });

  test('is none where less is wanted than the fresh nut’s own, of which so much is used', () => {
    const given = [typed('sourceMass', 400), typed('waterRatio', 0.4)];
    const yours = { 'coconutFresh.passing': own(0.3) };
    const formulation = formulate(recipeOf({ source: 'coconutFresh', given, yours }));
    expect(numberIn(formulation, 'blendWater')).toBe(0);
    expect(formulation.of('ownLiquid')).toBeCloseTo(400 * 0.4, 9);
  });

  test('has no usual parts in what is poured, and up to twice the usual in what is blended', () => {
    const parts = (source: 'almond' | 'coconutMilk', ratio: number) =>
      codesAt(formulate(recipeOf({ source, given: [typed('waterRatio', ratio)] })), 'waterRatio');
    expect(parts('almond', 10)).toEqual(['outsideUsual']);
    expect(parts('almond', 8)).toEqual([]);
    expect(parts('coconutMilk', 10)).toEqual([]);
  });

  test('is none where a poured source is used as it is', () => {
    expect(formulate(recipeOf({ source: 'coconutWater' })).rows.blendWater.absence).toBe('poured');
  });

  test('goes into the blender by the load: 4 L of slurry make three', () => {
    const formulation = formulate(recipeOf({ given: [typed('sourceMass', 680)] }));
    expect(formulation.of('slurryVolume')).toBeGreaterThan(3000);
    expect(formulation.of('slurryVolume')).toBeLessThan(4500);
    expect(numberIn(formulation, 'blenderLoads')).toBe(3);
  });
});

describe('milk', () => {
  test('that fills the jar is (fill − nothing typed by weight) ÷ 1.06693', () => {
    // 1 + 26.26/1000 ÷ 1.05052 × 0.62008 + 54/1000 ÷ 1.05 = 1.066929.
    const formulation = formulate(recipeOf({ yours: twoInches }));
    expect(formulation.of('roomPerMilk')).toBeCloseTo(1.066929, 6);
    expect(numberIn(formulation, 'milkVolume')).toBeCloseTo(740.191 / 1.066929, 2);
  });

  test('is refused where grains and sweetener leave no room for any', () => {
    const full = formulate(recipeOf({ yours: twoInches, given: [typed('grainMass', 900)] }));
    expect(problemAt(full, 'milkVolume', 'noRoomForMilk')).toMatchObject({ fill: expect.closeTo(740.19, 2) });
    expect(problemAt(full, 'sourceMass', 'waits')).toMatchObject({ for: 'milkVolume' });
  });

  test('solids typed set the water, and come out as typed', () => {
    const formulation = formulate(recipeOf({ given: [typed('milkSolids', 6)] }));
    expect(formulation.rows.milkSolids).toMatchObject({ status: 'given', value: 6 });
    expect(100 * (formulation.evaluation.stages()?.milkSolids ?? 0)).toBeCloseTo(6, 9);
  });

  test('of a fresh coconut, thicker than with all of its own water, are met with less of that', () => {
    for (const solids of [20, 25, 32, 40]) {
      const formulation = formulate(recipeOf({ source: 'coconutFresh', given: [typed('milkSolids', solids)] }));
      expect(formulation.rows.milkSolids).toMatchObject({ status: 'given', value: solids });
      expect(100 * (formulation.evaluation.stages()?.milkSolids ?? 0), `${solids} %`).toBeCloseTo(solids, 9);
    }
    // Less water than that would leave the milk drier than its own pulp.
    const dry = formulate(recipeOf({ source: 'coconutFresh', given: [typed('milkSolids', 45)] }));
    expect(codesAt(dry, 'milkSolids')).toEqual(['noSolids']);
  });

  test('of more solids than the source has is refused', () => {
    const formulation = formulate(recipeOf({ source: 'coconutWater', given: [typed('milkSolids', 30)] }));
    expect(codesAt(formulation, 'milkSolids')).toEqual(['noSolids']);
    expect(problemAt(formulation, 'waterRatio', 'waits')).toMatchObject({ for: 'milkSolids' });
  });

  test('of a poured source leaves no pulp and loses nothing', () => {
    const formulation = formulate(recipeOf({ source: 'coconutMilk' }));
    expect(formulation.rows.pulpMass.absence).toBe('noPulp');
    expect(formulation.rows.blenderLoads.absence).toBe('noBlending');
    expect(formulation.of('lost')).toBe(0);
  });
});

describe('what is poured', () => {
  test.each(['coconutMilk', 'coconutWater', 'cartonPlain'] as const)(
    'of %s, two cans in are two cans out',
    (source) => {
      const cans = typed('sourceMass', 800, 'volume');
      expect(worked(recipeOf({ source, given: [cans, typed('waterRatio', 0)] }), 'milkVolume')).toBeCloseTo(800, 6);
    },
  );
});
