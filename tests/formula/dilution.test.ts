// Dilution by mass balance: what is dissolved stays, so c₁m₁ = c₂m₂ (any textbook of unit operations).
// The classes of Codex Stan 240-2003 are in tests/published/references/milk.ts.
import { describe, expect, it } from 'vitest';
import { formulate } from '../../src/formula/engine/formulate';
import { sources } from '../../src/reference/sources';
import { recipeOf, typed } from '../batches';
import { numberIn } from '../results';

const can = sources.coconutMilk.composition;
const solids = 100 - can.water;

function letDown(ratio: number) {
  return formulate(recipeOf({ source: 'coconutMilk', given: [typed('sourceMass', 400), typed('waterRatio', ratio)] }));
}

describe('canned coconut milk', () => {
  it('as it is has the solids of its table: 27.12 %', () => {
    expect(solids).toBeCloseTo(27.12, 2);
    expect(numberIn(letDown(0), 'milkSolids')).toBeCloseTo(solids, 9);
  });

  it.each([0, 0.25, 0.85, 1, 1.5, 3])('let down by %s g/g keeps its solids: c₁m₁ = c₂m₂', (ratio) => {
    const formulation = letDown(ratio);
    const milk = numberIn(formulation, 'milkVolume') * formulation.of('milkDensity');
    expect(milk).toBeCloseTo(400 * (1 + ratio), 6);
    expect(numberIn(formulation, 'milkSolids') * milk).toBeCloseTo(solids * 400, 6);
  });

  it('let down to half its strength takes its own weight of water', () => {
    const half = formulate(
      recipeOf({ source: 'coconutMilk', given: [typed('sourceMass', 400), typed('milkSolids', solids / 2)] }),
    );
    expect(numberIn(half, 'waterRatio')).toBeCloseTo(1, 9);
    expect(numberIn(half, 'blendWater') * half.of('waterDensity')).toBeCloseTo(400, 6);
  });

  // Tolerance: the model of milk has its water 0.25 % lighter than plain water is (Choi and Okos against Kell).
  it('adds up in volume: the can and its water are the milk', () => {
    const formulation = letDown(0.85);
    const neat = numberIn(letDown(0), 'milkVolume');
    const water = numberIn(formulation, 'blendWater');
    expect(Math.abs(numberIn(formulation, 'milkVolume') - neat - water)).toBeLessThan(0.0026 * water);
  });
});
