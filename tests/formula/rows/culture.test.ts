import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { onHand, tightBag as recipeOf, typed } from '../../batches';
import { codesAt, numberIn, problemAt, worked } from '../../results';

const litre = typed('milkVolume', 1000);

describe('sugar added', () => {
  test('is 26.26 g/L as hexose while native sugar is at most 10 g/L', () => {
    const formulation = formulate(recipeOf({ given: [litre] }));
    expect(formulation.of('nativeSugar')).toBeCloseTo(8.05, 2);
    expect(numberIn(formulation, 'sugarRate')).toBe(26.26);
    expect(codesAt(formulation, 'sugarRate')).toEqual([]);
  });

  test('is lowered by native sugar above 10 g/L: coconut water brings about 27', () => {
    const formulation = formulate(recipeOf({ source: 'coconutWater', given: [litre] }));
    const native = formulation.of('nativeSugar');
    expect(numberIn(formulation, 'sugarRate')).toBeCloseTo(26.26 - (native - 10), 9);
    expect(problemAt(formulation, 'sugarRate', 'nativeCounted')).toMatchObject({ native, lowered: native - 10 });
  });

  test('is never below 0: sweetened coconut needs none', () => {
    const formulation = formulate(recipeOf({ source: 'coconutDriedSweetened' }));
    expect(numberIn(formulation, 'sugarRate')).toBe(0);
    expect(numberIn(formulation, 'sweetenerMass')).toBe(0);
  });

  test('of 0 is taken and remarked on; below 0 is refused', () => {
    expect(codesAt(formulate(recipeOf({ given: [typed('sugarRate', 0)] })), 'sugarRate')).toEqual(['outsideUsual']);
    expect(worked(recipeOf({ given: [typed('sugarRate', 0)] }), 'sweetenerMass')).toBe(0);
    expect(codesAt(formulate(recipeOf({ given: [typed('sugarRate', -1)] })), 'sugarRate')).toEqual(['negative']);
  });

  test('is absent without a sweetener, or with one that the grains cannot ferment', () => {
    const none = formulate(recipeOf({ sweetener: [{ id: 'none', share: 1 }] }));
    expect(none.rows.sweetenerMass).toMatchObject({ absence: 'noSweetener', problems: [] });
    const stevia = formulate(recipeOf({ sweetener: [{ id: 'stevia', share: 1 }] }));
    expect(stevia.rows.sugarRate.absence).toBe('refusedSweetener');
    expect(problemAt(stevia, 'sweetener', 'nothingToFerment')).toMatchObject({ sweetener: 'Stevia' });
    expect(numberIn(stevia, 'startingSugar')).toBe(stevia.of('nativeSugar'));
  });

  test('typed for a sweetener without sugar says why it does not count', () => {
    const stevia = formulate(recipeOf({ sweetener: [{ id: 'stevia', share: 1 }], given: [typed('sweetenerMass', 5)] }));
    expect(codesAt(stevia, 'sweetenerMass')).toEqual(['nothingToFerment']);
    expect(numberIn(stevia, 'sweetenerMass')).toBe(0);
  });
});

describe('sweetener', () => {
  test('for a litre is 26.26 ÷ 1.05052 = 24.997 g of cane sugar', () => {
    expect(worked(recipeOf({ given: [litre] }), 'sweetenerMass')).toBeCloseTo(24.997, 3);
  });

  test('for a litre is 26.26 ÷ 0.82243 = 31.930 g of honey, the same as 24.997 g of cane sugar', () => {
    const honey = recipeOf({ sweetener: [{ id: 'honey', share: 1 }], given: [litre] });
    expect(worked(honey, 'sweetenerMass')).toBeCloseTo(31.93, 2);
    expect(worked(honey, 'caneEquivalent')).toBeCloseTo(24.997, 3);
  });

  test('typed by weight sets the rate: 30 g in a litre are 31.516 g/L', () => {
    const formulation = formulate(recipeOf({ given: [litre, typed('sweetenerMass', 30)] }));
    expect(numberIn(formulation, 'sugarRate')).toBeCloseTo(31.516, 3);
    expect(formulation.rows.sweetenerMass.status).toBe('given');
  });

  test('typed as cane sugar sets the rate and the mass at equal fermentable sugar', () => {
    const formulation = formulate(
      recipeOf({ sweetener: [{ id: 'mapleSyrup', share: 1 }], given: [litre, typed('caneEquivalent', 18)] }),
    );
    expect(numberIn(formulation, 'sugarRate')).toBeCloseTo(18 * 1.050524, 4);
    expect(numberIn(formulation, 'sweetenerMass')).toBeCloseTo((18 * 1.050524) / 0.635095, 3);
  });

  test('whose sugars no table has one by one is an estimate with its range', () => {
    // Coconut sugar: 75 to 92 g, as hexose 0.75 to 0.92 × 1.05263 = 0.96842, in the middle 0.85921.
    const formulation = formulate(recipeOf({ sweetener: [{ id: 'coconutSugar', share: 1 }], given: [litre] }));
    expect(numberIn(formulation, 'sweetenerMass')).toBeCloseTo(30.563, 2);
    expect(problemAt(formulation, 'sweetenerMass', 'sugarEstimated')).toMatchObject({
      low: expect.closeTo(26.26 / 0.96842, 2),
      high: expect.closeTo(26.26 / 0.75, 2),
    });
  });

  test('of nothing on hand sizes nothing', () => {
    expect(codesAt(formulate(recipeOf({ given: [onHand('sweetenerMass', 0)] })), 'sweetenerMass')).toEqual([
      'notPositive',
    ]);
    expect(worked(recipeOf({ given: [typed('sweetenerMass', 0)] }), 'sugarRate')).toBe(0);
  });

  test('whose shares do not add up counts in proportion, and says so', () => {
    const halves = recipeOf({
      sweetener: [
        { id: 'honey', share: 0.5 },
        { id: 'caneWhite', share: 0.5 },
      ],
    });
    const quarters = recipeOf({ sweetener: halves.sweetener.map(({ id }) => ({ id, share: 0.25 })) });
    expect(worked(quarters, 'sweetenerMass')).toBeCloseTo(worked(halves, 'sweetenerMass'), 9);
    expect(problemAt(formulate(quarters), 'sweetener', 'sharesOff')).toMatchObject({ sum: 0.5 });
    expect(codesAt(formulate(halves), 'sweetener')).toEqual([]);
  });
});

describe('sugar at the start', () => {
  test('is native and added together: 8.052 + 26.26 = 34.312 g/L', () => {
    expect(worked(recipeOf(), 'startingSugar')).toBeCloseTo(34.312, 3);
  });

  test('typed sets what is added, down to what is native', () => {
    const formulation = formulate(recipeOf({ given: [typed('startingSugar', 30)] }));
    expect(numberIn(formulation, 'sugarRate')).toBeCloseTo(30 - formulation.of('nativeSugar'), 9);
    const native = formulation.of('nativeSugar');
    expect(worked(recipeOf({ given: [typed('startingSugar', native)] }), 'sugarRate')).toBeCloseTo(0, 9);
  });

  test('below what is native is refused, and the sugar waits', () => {
    const formulation = formulate(recipeOf({ given: [typed('startingSugar', 5)] }));
    expect(problemAt(formulation, 'startingSugar', 'belowNative')).toMatchObject({ native: expect.closeTo(8.052, 3) });
    expect(problemAt(formulation, 'sweetenerMass', 'waits')).toMatchObject({ for: 'startingSugar' });
  });
});

describe('grains', () => {
  test('for a litre are 54 g of water grains, 31 g of milk grains', () => {
    expect(worked(recipeOf({ given: [litre] }), 'grainMass')).toBe(54);
    expect(worked(recipeOf({ grains: 'milk', given: [litre] }), 'grainMass')).toBe(31);
  });

  test('typed by weight set the dose, which is remarked on outside 45 to 65 g/L', () => {
    const formulation = formulate(recipeOf({ given: [litre, typed('grainMass', 40)] }));
    expect(numberIn(formulation, 'grainRate')).toBeCloseTo(40, 9);
    expect(problemAt(formulation, 'grainRate', 'outsideUsual')).toMatchObject({ low: 45, high: 65 });
  });

  test('typed by the spoon weigh 17.5 g a tablespoon', () => {
    expect(worked(recipeOf({ given: [typed('grainMass', 2 * 14.78676478125, 'volume')] }), 'grainMass')).toBeCloseTo(
      35,
    );
  });

  test('of none are refused, and so is a dose of none', () => {
    expect(codesAt(formulate(recipeOf({ given: [typed('grainMass', 0)] })), 'grainMass')).toEqual(['notPositive']);
    expect(codesAt(formulate(recipeOf({ given: [typed('grainRate', 0)] })), 'grainRate')).toEqual(['notPositive']);
    expect(codesAt(formulate(recipeOf({ given: [typed('grainRate', 1001)] })), 'grainRate')).toEqual(['tooLarge']);
  });
});
