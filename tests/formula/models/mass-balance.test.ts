// Conservation of mass, worked apart from the program in double precision: almonds with the moisture of USDA Standard
// Reference record 12061 (4.41 %), and the uptake that follows from the 40 % moisture of soaked almonds in the Journal
// of Food Protection 83 (2020) 2122–2133, abstract: (1 − 0.0441)/(1 − 0.40) − 1 = 0.593. The check takes sugars as 0.
// Share passing, moisture of the pulp and handling loss are assumed for the check; no work is cited for them.
import { describe, expect, it } from 'vitest';
import { leastRatio, reduce, type Strain, stagesAt } from '../../../src/formula/models/milk';
import { sources } from '../../../src/reference/sources';

// Only the sum of the solids counts for masses, so the parts other than sugars may be any that add up to 0.9559.
const almond: Strain = {
  water: 0.0441,
  uptake: 0.593,
  sugars: 0,
  leached: 0,
  solids: { protein: 0.2115, fat: 0.4993, carbohydrate: 0.0904, fibre: 0.125, ash: 0.0297 },
  passing: 0.6,
  pulpMoisture: 0.7,
  handlingLoss: 0.02,
  own: { mass: 0, water: 0, sugars: 0, solids: 0 },
};

describe('150 g of almonds with five times their weight of water', () => {
  const grams = 150;
  const stages = stagesAt(reduce(almond), 5);
  const of = (figure: number | undefined): number => grams * (figure ?? Number.NaN);

  it('weigh 238.95 g soaked and 988.95 g as slurry', () => {
    expect(grams * (1 + almond.uptake)).toBeCloseTo(238.95, 9);
    expect(of(stages?.slurryMass)).toBeCloseTo(988.95, 9);
  });

  it('leave 191.18 g of pulp: 143.385 g dry, of which 0.4 stays, at 70 % moisture', () => {
    expect(of(stages?.pulpDry)).toBeCloseTo(0.4 * 143.385, 9);
    expect(of(stages?.pulpMass)).toBeCloseTo(191.18, 9);
  });

  it('give 781.8146 g of milk at 10.784 % solids', () => {
    expect(of(stages?.milkMass)).toBeCloseTo(781.8146, 6);
    expect(100 * (stages?.milkSolids ?? 0)).toBeCloseTo(10.784, 3);
  });

  it('lose the fiftieth that is left over', () => {
    expect(of(stages?.lost)).toBeCloseTo(988.95 - 191.18 - 781.8146, 6);
  });

  it('give no milk until the slurry is wetter than the pulp: 1.5933 g of water a gram', () => {
    // kN = 2.33333 × 0.9559 = 2.230433, less w + u = 0.6371.
    expect(leastRatio(reduce(almond))).toBeCloseTo(2.230433 - 0.6371, 5);
  });
});

describe('uptake from the moistures before and after soaking', () => {
  it.each([
    ['almond', 0.0441, 0.4],
    ['walnut', 0.04, 0.3],
    ['peanut', 0.0657, 0.3507],
  ] as const)('of %s is (1 − w₀)/(1 − w₁) − 1', (id, before, after) => {
    expect(sources[id].uptake.value).toBeCloseTo((1 - before) / (1 - after) - 1, 3);
  });
});
