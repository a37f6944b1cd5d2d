import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import {
  freeWaterAt,
  leastRatio,
  passingSolids,
  ratioAt,
  ratioForSolids,
  ratiosFor,
  reduce,
  type Strain,
  stagesAt,
  sumOfSolids,
  valueAt,
} from '../../../src/formula/models/milk';

// Thousands of recipes take longer than one example does.
vi.setConfig({ testTimeout: 60_000 });

const plain: Strain = {
  water: 0.05,
  uptake: 0.5,
  sugars: 0.05,
  leached: 0,
  solids: { protein: 0.2, fat: 0.5, carbohydrate: 0.05, fibre: 0.12, ash: 0.03 },
  passing: 0.5,
  pulpMoisture: 0.6,
  handlingLoss: 0,
  own: { mass: 0, water: 0, sugars: 0, solids: 0 },
};

const share = (most: number) => fc.integer({ min: 0, max: 1000 }).map((step) => (most * step) / 1000);
const anyStrain: fc.Arbitrary<Strain> = fc
  .record({
    uptake: share(1.2),
    sugars: share(0.2),
    passing: share(1),
    pulpMoisture: share(0.95),
    handlingLoss: share(0.3),
    fibre: share(0.3),
    own: share(0.6),
  })
  .map(({ fibre, own, sugars, ...rest }) => ({
    ...rest,
    leached: 0,
    sugars,
    water: 0.05,
    solids: { protein: 0.2, fat: 0.65 - fibre - sugars, carbohydrate: 0.05, fibre, ash: 0.05 },
    own: { mass: own, water: 0.95 * own, sugars: 0.03 * own, solids: 0.02 * own },
  }));

/** The balance with no more of the source’s own liquid than the whole of the water. */
function balanceAt(strain: Strain, ratio: number) {
  const part = strain.own.mass > 0 ? Math.min(1, ratio / strain.own.mass) : 1;
  const { mass, water, sugars, solids } = strain.own;
  const own = { mass: mass * part, water: water * part, sugars: sugars * part, solids: solids * part };
  return stagesAt(reduce({ ...strain, own }), ratio);
}

describe('what passes the bag', () => {
  test('is all but fibre in proportion, while there is room for them', () => {
    const passing = passingSolids(plain);
    expect(sumOfSolids(passing)).toBeCloseTo(0.45, 12);
    expect(passing.fibre).toBe(0);
    expect(passing.fat / passing.protein).toBeCloseTo(2.5, 12);
  });

  test('is fibre last: of 0.9 with x = 0.95, 0.78 soft and 0.075 of the fibre', () => {
    const passing = passingSolids({ ...plain, passing: 0.95 });
    expect(passing.fibre).toBeCloseTo(0.075, 12);
    expect(passing.fat).toBeCloseTo(0.5, 12);
  });
});

describe('the balance', () => {
  test('by hand at R = 4', () => {
    // k 1.5, (1 − x)N = 0.45, W 4.55, W − kS = 4.475: q = 0.675/4.475 = 0.150838.
    // Pulp (0.45 + 0.150838 × 0.05)/0.4 = 1.143855; milk 5.5 − 1.143855 = 4.356145; solids 0.45 + 0.849162 × 0.05.
    const stages = stagesAt(reduce(plain), 4);
    expect(stages?.heldBack).toBeCloseTo(0.150838, 6);
    expect(stages?.pulpMass).toBeCloseTo(1.143855, 6);
    expect(stages?.milkMass).toBeCloseTo(4.356145, 6);
    expect(stages?.milkSolids).toBeCloseTo(0.492458 / 4.356145, 6);
  });

  test('conserves mass at every ratio that gives milk', () => {
    fc.assert(
      fc.property(anyStrain, share(20), (strain, ratio) => {
        const stages = stagesAt(reduce(strain), strain.own.mass + ratio);
        fc.pre(stages !== null);
        const into = 1 + strain.uptake + strain.own.mass + stages.tapWater;
        expect(stages.pulpMass + stages.milkMass + stages.lost).toBeCloseTo(into, 9);
        expect(stages.slurryMass).toBeCloseTo(into, 9);
      }),
      { numRuns: 2000 },
    );
  });

  test('gives none at the least ratio and milk just above it', () => {
    fc.assert(
      fc.property(anyStrain, (strain) => {
        const least = leastRatio(reduce(strain));
        fc.pre(least > 0);
        expect(balanceAt(strain, least - 1e-9)).toBeNull();
        expect(balanceAt(strain, least + 1e-3)?.milkVolume ?? Number.NaN).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 2000 },
    );
  });

  test('never gives milk that is drier than its own pulp', () => {
    fc.assert(
      fc.property(anyStrain, share(20), (strain, ratio) => {
        const stages = balanceAt(strain, ratio);
        fc.pre(stages !== null && strain.passing < 1);
        expect(stages.milkSolids).toBeLessThanOrEqual(1 - strain.pulpMoisture);
      }),
      { numRuns: 2000 },
    );
  });
});

describe('solving for the water', () => {
  test('turns a ratio into free water and back', () => {
    const reduced = reduce(plain);
    expect(freeWaterAt(reduced, 4)).toBeCloseTo(4.475, 12);
    expect(ratioAt(reduced, 4.475)).toBeCloseTo(4, 12);
  });

  test('finds the ratio of a wanted volume again', () => {
    fc.assert(
      fc.property(anyStrain, share(20), (strain, more) => {
        const reduced = reduce(strain);
        const ratio = Math.max(leastRatio(reduced), 0) + 0.05 + more;
        const volume = valueAt(reduced.volume, freeWaterAt(reduced, ratio));
        const found = ratiosFor(reduced, reduced.volume, { still: volume, rising: 0 });
        expect(Math.min(...found.map((one) => Math.abs(one - ratio)))).toBeLessThan(1e-6);
      }),
      { numRuns: 2000 },
    );
  });

  test('finds the ratio of wanted solids again', () => {
    fc.assert(
      fc.property(anyStrain, share(20), (strain, more) => {
        const reduced = reduce(strain);
        const ratio = Math.max(leastRatio(reduced), strain.own.mass) + 0.05 + more;
        const stages = stagesAt(reduced, ratio);
        fc.pre(stages !== null && stages.milkSolids > 1e-3);
        expect(ratioForSolids(reduced, stages.milkSolids)).toBeCloseTo(ratio, 6);
      }),
      { numRuns: 2000 },
    );
  });

  test('finds none for less milk than there can be, or richer than the source', () => {
    const reduced = reduce(plain);
    expect(ratiosFor(reduced, reduced.volume, { still: -5, rising: 0 })).toEqual([]);
    expect(ratioForSolids(reduced, 0)).toBeNull();
    const poured = reduce({ ...plain, passing: 1, uptake: 0 });
    expect(ratioForSolids(poured, 0.5)).toBeCloseTo(0.95 / 0.5 - 1, 9);
    expect(ratioForSolids(poured, 0.99) ?? 0).toBeLessThan(0);
  });
});
