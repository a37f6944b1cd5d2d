import { describe, expect, test } from 'vitest';
import { blendMass } from '../../../src/formula/advice/blend-mass';
import { type Swap, swapsFor } from '../../../src/formula/advice/swap';
import { formulate } from '../../../src/formula/engine/formulate';
import type { SweetenerId } from '../../../src/reference/sweeteners';
import { recipeOf, typed } from '../../batches';

const cane = formulate(recipeOf({ grains: 'water', given: [typed('caneEquivalent', 18)] }));

function swapTo(id: SweetenerId): Swap {
  const found = swapsFor(cane)?.find((swap) => swap.id === id);
  if (found === undefined) throw new Error(`no swap to ${id}`);
  return found;
}

describe('swaps at equal fermentable sugar', () => {
  test('hold the same hexose as 18 g of granulated sugar', () => {
    // 18 × 0.998 × 1.05263 = 18.909 g of hexose.
    expect(swapTo('caneWhite').mass?.value).toBeCloseTo(18, 9);
    // Honey 19296: 35.75 + 40.94 + 3.10 + (0.89 + 1.44) × 1.05263 = 82.243 per 100 g.
    expect(swapTo('honey').mass?.value).toBeCloseTo(22.99, 2);
    // Maple syrup 19353: 1.60 + 0.52 + 58.32 × 1.05263 = 63.509 per 100 g.
    expect(swapTo('mapleSyrup').mass?.value).toBeCloseTo(29.77, 2);
  });

  test('say the water they bring', () => {
    // 22.99 g of honey at 17.1 % water.
    expect(swapTo('honey').water).toBeCloseTo(3.93, 2);
    expect(swapTo('caneWhite').water).toBeCloseTo(0.0036, 4);
  });

  test('say how wrong a spoon for a spoon is', () => {
    expect(swapTo('caneWhite').spoonForSpoon).toBeCloseTo(0, 9);
    // A cup of honey weighs 339 g and holds 278.79 g of hexose; of granulated sugar 200 g and 210.10 g.
    expect(swapTo('honey').spoonForSpoon).toBeCloseTo(278.79 / 210.1 - 1, 3);
  });

  test('give an estimate its range, and the kinds of sugar only where a table does', () => {
    const corn = swapTo('cornSyrup');
    expect(corn.mass?.low).toBeLessThan(corn.mass?.value ?? 0);
    expect(corn.mass?.high).toBeGreaterThan(corn.mass?.value ?? 0);
    expect(corn.kinds).toBeNull();
    const kinds = swapTo('agave').kinds;
    expect(kinds?.fructose).toBeCloseTo(55.6 / 68.03, 3);
    expect((kinds?.sucrose ?? 0) + (kinds?.glucose ?? 0) + (kinds?.fructose ?? 0)).toBeCloseTo(1, 9);
  });

  test('refuse what the grains can’t ferment, with the reason', () => {
    expect(swapTo('stevia')).toMatchObject({ mass: null, water: null, spoonForSpoon: null });
    expect(swapTo('stevia').refused).toMatch(/ferment/);
  });

  test('are none where nothing is added', () => {
    expect(swapsFor(formulate(recipeOf({ sweetener: [{ id: 'none', share: 1 }] })))).toBeNull();
  });
});

test('a blend of half honey and half cane lies between the two', () => {
  const half = blendMass(
    [
      { id: 'honey', share: 0.5 },
      { id: 'caneWhite', share: 0.5 },
    ],
    cane,
  );
  // 18.909 ÷ (0.5 × 0.82243 + 0.5 × 1.05053) = 20.19 g.
  expect(half).toBeCloseTo(20.19, 2);
});
