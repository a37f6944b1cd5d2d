// Density of water free of air at 1 atm, on ITS-90, and what weighed water comes to on the sheet.
// 1. Tanaka M., Girard G., Davis R., Peuto A., Bignell N. (2001), Recommended table for the density of water between 0 °C
//    and 40 °C based on recent experimental reports, Metrologia 38: 301–309. Opening seen; the digits of its formula are
//    from memory, and are put in here apart from the program, which has another formula (Kell’s, on ITS-90).
// 2. ISO 8106: the brimful capacity of a glass container is the weight of the water it holds, turned into its volume at
//    20 °C. The weight is taken as the scale gives it: the lift of the air, 0.1 %, is under what a kitchen scale tells.
// Tolerance: 5 mg/L, by which the published formulas differ from each other.
import { describe, expect, it } from 'vitest';
import { formulate } from '../../src/formula/engine/formulate';
import { waterDensityAt } from '../../src/formula/models/density';
import type { NumericRowId } from '../../src/formula/recipe/order';
import { recipeOf } from '../batches';

function tanaka(celsius: number): number {
  const [a1, a2, a3, a4, a5] = [-3.983035, 301.797, 522528.9, 69.34881, 999.97495];
  return a5 * (1 - ((celsius + a1) ** 2 * (celsius + a2)) / (a3 * (celsius + a4)));
}

describe('the density of water, kg/m³', () => {
  it.each([
    [0, 999.8428],
    [4, 999.9749],
    [10, 999.7027],
    [15, 999.1026],
    [20, 998.2067],
    [22, 997.773],
    [25, 997.047],
    [30, 995.6488],
    [40, 992.2152],
  ])('at %d °C is %d, by the formula recommended in 2001', (celsius, density) => {
    expect(tanaka(celsius)).toBeCloseTo(density, 4);
    expect(Math.abs(waterDensityAt(celsius) - density)).toBeLessThan(0.005);
  });
});

describe('a kilogram of water', () => {
  const volume = (row: NumericRowId, grams: number): number => {
    const given = [{ row, kind: 'mass', amount: grams } as const];
    const { value } = formulate(recipeOf({ given })).rows[row];
    return typeof value === 'number' ? value : Number.NaN;
  };

  it.each(['brimful', 'soakWater', 'blendWater'] as const)('is 1001.8 mL at 20 °C, typed into %s', (row) => {
    expect(volume(row, 1000)).toBeCloseTo(1000 / 0.9982067, 1);
    expect(Math.round(volume(row, 1000))).toBe(1002);
  });

  it('weighed as 35.3 oz fills a jar of 1002.5 mL', () => {
    expect(volume('brimful', 35.3 * 28.349523125)).toBeCloseTo(1002.5, 1);
  });
});
