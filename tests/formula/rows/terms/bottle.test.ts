import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../../src/formula/engine/formulate';
import { pressureOf } from '../../../../src/formula/models/fizz';
import type { Recipe } from '../../../../src/formula/recipe/recipe';
import { tightBag as recipeOf, sensibleRecipe, typed } from '../../../batches';
import { rounding } from '../../../results';
import { gasAtPressure, saturationAt, sugarFromGas } from '../../models/gas-by-hand';

const of = (...given: Recipe['given']) => formulate(recipeOf({ given })).of;
const left = (amount: number): Recipe => recipeOf({ measured: { sugarLeft: { kind: 'concentration', amount } } });

// Almonds in a wide-mouth quart: fill 740.19 mL, milk 693.76 mL of 1.00361 g/mL with 9.621 % of solids, 37.463 g of
// grains of 1.05 g/mL, 34.312 g/L of sugar at the start.
describe('the liquid', () => {
  test('is the fill less the room of the grains: 740.19 − 37.463 ÷ 1.05 = 704.51 mL', () => {
    expect(of()('liquid')).toBeCloseTo(740.1907 - 37.46295 / 1.05, 3);
  });

  test('shares the sugar at the start: 34.312 × 693.76 ÷ 704.51 = 33.788 g/L', () => {
    expect(of()('drinkSugar')).toBeCloseTo((34.31203 * 693.7584) / 704.5117, 4);
  });

  test('is 0.8948 water by volume: 0.90379 × 1.00361 ÷ 0.99820 × 693.76 ÷ 704.51', () => {
    expect(of()('waterShare')).toBeCloseTo(0.89482, 4);
  });

  test('of a thicker milk is the water of that milk', () => {
    const thick = of(typed('waterRatio', 2));
    const water = (thick('milkMass') * (1 - thick('milkSolids') / 100)) / 0.9982;
    expect(thick('waterShare')).toBeCloseTo(water / thick('liquid'), 4);
  });

  test('holds no more water than itself, and no less than none', () => {
    fc.assert(
      fc.property(sensibleRecipe, (recipe) => {
        const share = formulate(recipe).of('waterShare');
        if (!Number.isFinite(share)) return;
        expect(share).toBeGreaterThan(0);
        expect(share).toBeLessThanOrEqual(1 + rounding);
      }),
    );
  });
});

describe('the bottle', () => {
  test('ripens by its own temperature, whatever the jar had', () => {
    const { readyTemperature } = formulate(recipeOf()).choices.grain;
    const inUsual = of(typed('roomTemperature', readyTemperature.value));
    const fromWarm = of(typed('roomTemperature', 26), typed('bottleTemperature', readyTemperature.value));
    expect(fromWarm('readyTime')).toBeLessThan(inUsual('readyTime'));
    expect(fromWarm('bottleReady')).toBeCloseTo(inUsual('readyTime'), 6);
  });

  test('has 25 ÷ 475 of gas space per mL of liquid', () => {
    expect(of()('bottleRoom')).toBeCloseTo(25 / 475, 12);
    expect(of(typed('bottleHeadspace', 250))('bottleRoom')).toBe(1);
  });

  test('begins with what water holds at the temperature of the first ferment', () => {
    expect(of()('dissolvedGas')).toBeCloseTo(38.61, 2);
    expect(of(typed('roomTemperature', 16))('dissolvedGas')).toBeGreaterThan(of()('dissolvedGas'));
    expect(of(typed('bottleTemperature', 16))('dissolvedGas')).toBe(of()('dissolvedGas'));
  });

  test('is ready as the jar would be at its temperature', () => {
    expect(of()('bottleReady')).toBe(of()('readyTime'));
    expect(of(typed('bottleTemperature', 26))('bottleReady')).toBeCloseTo(
      of(typed('roomTemperature', 26))('readyTime'),
      9,
    );
  });

  test('uses 1 − 0.65^(8 × 0.4 ÷ 12) = 10.85 % of its sugar in 8 h', () => {
    expect(of()('bottleUsed')).toBeCloseTo(1 - 0.65 ** (3.2 / 12), 9);
  });

  test('keeps half of the dissolved gas likely, and gains 0.4 of what is used: 19.306 + 10.584 mol/m³', () => {
    // 2 × 1000 × 0.4 × 0.108523 × 21.9624 ÷ 180.156 = 10.584
    expect(of()('gasLikely')).toBeCloseTo(29.89, 2);
  });
});

describe('a forgotten bottle', () => {
  test('counts all the sugar there was, or what was measured to be left, and all that is added', () => {
    expect(of(typed('bottleSugar', 5))('sugarForgotten')).toBeCloseTo(of()('drinkSugarMost') + 5, 9);
    expect(formulate(left(7)).of('sugarForgotten')).toBe(7);
    expect(formulate({ ...left(7), given: [typed('bottleSugar', 5)] }).of('sugarForgotten')).toBe(12);
  });

  // Corn syrup is 0.2677 to 0.8081 g of hexose per g, 0.5379 likely: 26.32 g/L added may be 26.32 × 0.8081 ÷ 0.5379.
  test('counts as much sugar as the tables leave open', () => {
    const { of: term } = formulate(recipeOf({ sweetener: [{ id: 'cornSyrup', share: 1 }] }));
    const open = 0.80810385 / 0.5379019;
    expect(term('sugarUnsure')).toBeCloseTo(term('sugarRate') * (open - 1), 2);
    expect(term('sugarForgotten')).toBeGreaterThan(1.3 * term('drinkSugar'));
    expect(of()('sugarUnsure')).toBeLessThan(0.001);
  });

  test('counts all that can be dissolved: 38.612 + 33.788 × 2000 ÷ 180.156 = 413.7 mol/m³', () => {
    expect(of()('gasForgotten')).toBeCloseTo(413.71, 1);
  });

  test('stands at 30 °C, or at its own temperature where that is warmer', () => {
    expect(of()('forgottenHeat')).toBe(30);
    expect(of(typed('bottleTemperature', 29.5))('forgottenHeat')).toBe(30);
    expect(of(typed('bottleTemperature', 33))('forgottenHeat')).toBe(33);
    expect(of(typed('roomTemperature', 34))('forgottenHeat')).toBe(34);
  });

  test('holds no less gas than is likely', () => {
    fc.assert(
      fc.property(sensibleRecipe, (recipe) => {
        const { of: term } = formulate(recipe);
        const [likely, forgotten] = [term('gasLikely'), term('gasForgotten')];
        if (Number.isFinite(likely)) expect(forgotten).toBeGreaterThanOrEqual(likely);
      }),
    );
  });
});

describe('any bottle', () => {
  const near = (got: number, wanted: number) =>
    expect(Math.abs(got - wanted)).toBeLessThanOrEqual(1e-9 * Math.abs(wanted));

  test('stands under the pressure of the models, likely and forgotten, and takes the sugar that its limit leaves', () => {
    fc.assert(
      fc.property(sensibleRecipe, (recipe) => {
        const { of, rows } = formulate(recipe);
        const { bottlePressureLikely, bottlePressureForgotten, bottleSugarMost } = rows;
        const sealed = { water: of('waterShare'), room: of('bottleRoom') };
        if (typeof bottlePressureLikely.value === 'number' && bottlePressureLikely.status === 'workedOut')
          near(bottlePressureLikely.value, pressureOf(of('gasLikely'), sealed, of('bottleTemperature')));
        if (typeof bottlePressureForgotten.value !== 'number') return;
        const hot = of('forgottenHeat');
        near(bottlePressureForgotten.value, pressureOf(of('gasForgotten'), sealed, hot));
        near(of('dissolvedGas'), saturationAt(of('roomTemperature')));
        if (typeof bottleSugarMost.value !== 'number' || bottleSugarMost.status !== 'workedOut') return;
        const room = gasAtPressure(of('limitCounted'), sealed, hot) - of('dissolvedGas');
        expect(Math.abs(bottleSugarMost.value - Math.max(sugarFromGas(room), 0))).toBeLessThanOrEqual(1e-6);
      }),
    );
  });
});
