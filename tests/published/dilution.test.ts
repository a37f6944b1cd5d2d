// Dilution by mass balance: what is dissolved stays, so c₁m₁ = c₂m₂ (any textbook of unit operations).
// Sanity bounds: Codex Stan 240-2003, Codex Standard for Aqueous Coconut Products: Coconut Milk and Coconut Cream, § 2 and
// table 3.1, total solids and fat by mass: light coconut milk 6.6–12.6 and at least 5 %, coconut milk 12.7–25.3 and at
// least 10 %, coconut cream 25.4–37.3 and at least 20 %.
import { describe, expect, it } from 'vitest';
import { formulate } from '../../src/formula/formulate';
import { sources } from '../../src/reference/sources';
import { recipeOf, typed } from '../batches';
import { numberIn } from '../results';

const can = sources.coconutMilk.composition;
const solids = 100 - can.water;

function letDown(ratio: number) {
  return formulate(recipeOf({ source: 'coconutMilk', given: [typed('sourceMass', 400), typed('waterRatio', ratio)] }));
}

describe('canned coconut milk', () => {
  it('as it is lies just above the class of coconut milk: 27.1 % solids, 21.3 % fat', () => {
    expect(solids).toBeCloseTo(27.12, 2);
    expect(numberIn(letDown(0), 'milkSolids')).toBeCloseTo(solids, 9);
    expect(can.fat).toBeGreaterThanOrEqual(20);
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

  it('let down as usual is coconut milk of the drinking kind, by solids and by fat', () => {
    const usual = formulate(recipeOf({ source: 'coconutMilk' }));
    const thinned = numberIn(usual, 'milkSolids');
    const fat = can.fat / (1 + numberIn(usual, 'waterRatio'));
    expect(thinned).toBeGreaterThanOrEqual(12.7);
    expect(thinned).toBeLessThanOrEqual(25.3);
    expect(fat).toBeGreaterThanOrEqual(10);
  });

  it('let down three times over is light coconut milk', () => {
    const thin = numberIn(letDown(2.5), 'milkSolids');
    expect(thin).toBeGreaterThanOrEqual(6.6);
    expect(thin).toBeLessThanOrEqual(12.6);
    expect(can.fat / 3.5).toBeGreaterThanOrEqual(5);
  });

  it('adds up in volume: the can and its water are the milk', () => {
    const formulation = letDown(0.85);
    const neat = numberIn(letDown(0), 'milkVolume');
    expect(numberIn(formulation, 'milkVolume')).toBeCloseTo(neat + numberIn(formulation, 'blendWater'), 6);
  });
});
