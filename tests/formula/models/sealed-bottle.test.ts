// What carbonation charts and tables of solubility print is in tests/published/references/gas.ts; this is arithmetic.
// A sealed bottle worked by hand with the simple form of Henry's law (Sander 2023: 3.4 × 10⁻⁴ mol m⁻³ Pa⁻¹ at 25 °C,
// slope 2300 K): 950 mL of liquid and 50 mL of gas space, 5 g/L of hexose, 25 °C.
//   n = 2 × 5 × 0.950 ÷ 180.156 = 0.0527321 mol
//   p = 0.0527321 ÷ (3.4e-4 × 0.00095 + 0.00005 ÷ (8.314462618 × 298.15)) = 153 662 Pa = 1.537 bar
// The table below it was worked apart from the program, with the correlation of Carroll, Slupsky and Mather (1991),
// which the page uses: 0.5 % more soluble at 25 °C, so 0.5 % less pressure.
import { describe, expect, it, test } from 'vitest';
import { gasFromSugar, pressureOf, shareGas } from '../../../src/formula/models/fizz';
import { gasAtPressure, saturationAt, sugarFromGas } from './gas-by-hand';

function bottle(emptyShare: number) {
  return { water: 1, room: emptyShare / (1 - emptyShare) };
}

test('the bottle worked by hand: 0.0527321 mol, 1.537 bar', () => {
  expect(gasFromSugar(5) * 0.00095).toBeCloseTo(0.0527321, 7);
  const simple = 0.0527321 / (3.4e-4 * 0.00095 + 0.00005 / (8.314462618 * 298.15)) / 100000;
  expect(simple).toBeCloseTo(1.537, 3);
  expect(Math.abs(pressureOf(gasFromSugar(5), bottle(0.05), 25) / simple - 1)).toBeLessThan(0.006);
});

describe('gauge bar by empty share, temperature and hexose', () => {
  const sugars = [2, 5, 10, 20, 40];
  it.each([
    [0.05, 4, [0.331, 0.827, 1.654, 3.309, 6.617]],
    [0.05, 20, [0.537, 1.342, 2.684, 5.369, 10.738]],
    [0.05, 25, [0.612, 1.529, 3.059, 6.118, 12.235]],
    [0.05, 30, [0.691, 1.727, 3.454, 6.907, 13.815]],
    [0.1, 25, [0.574, 1.436, 2.872, 5.744, 11.489]],
    [0.2, 25, [0.502, 1.254, 2.509, 5.017, 10.034]],
    [0.5, 25, [0.298, 0.745, 1.49, 2.98, 5.96]],
  ] as const)('%s empty, %s °C: %s', (empty, celsius, pressures) => {
    sugars.forEach((sugar, at) => {
      expect(pressureOf(gasFromSugar(sugar), bottle(empty), celsius)).toBeCloseTo(pressures[at] ?? Number.NaN, 2);
    });
  });
});

test('a drink from a loosely lidded ferment at 22 °C holds 37.6 mol/m³, which adds 1.03 bar at 25 °C', () => {
  expect(saturationAt(22)).toBeCloseTo(37.6, 1);
  expect(pressureOf(saturationAt(22), bottle(0.05), 25)).toBeCloseTo(1.03, 2);
});

test('each bar at 25 °C and 5 % empty takes 3.25 g/L of hexose, within the 0.5 % between the two solubilities', () => {
  expect(Math.abs(sugarFromGas(gasAtPressure(1, bottle(0.05), 25)) / 3.25 - 1)).toBeLessThan(0.01);
});

describe('3 volumes dissolved, of 1.9635 g/L each', () => {
  it.each([
    [4, 2.08],
    [20, 3.44],
    [25, 3.94],
    [30, 4.48],
  ])('stand under %s °C: %s bar', (celsius, bar) => {
    const { dissolved } = shareGas(bar, bottle(0.05), celsius);
    expect((dissolved * 44.0095) / 1000 / 1.9635).toBeCloseTo(3, 1);
  });
});
