import { expect, test } from 'vitest';
import { convert, toBase, type UnitId, unitList } from '../../src/measure/units';
import { big } from '../big';

// What so much of each unit is in the base unit of its kind, typed apart from the table.
const exact: Readonly<Record<UnitId, readonly [amount: number, base: string]>> = {
  // NIST SP 811 (2008): prefixes and units of the SI and those used with it, the pound, inch, degree Fahrenheit, bar and
  // standard atmosphere; not opened itself, its values as an independent table of units drawn from it has them.
  ...{ g: [1, '1'], kg: [1, '1000'], mg: [1, '0.001'], lb: [1, '453.59237'], oz: [16, '453.59237'] },
  ...{ mL: [1, '1'], cL: [1, '10'], dL: [1, '100'], L: [1, '1000'], in3: [1, '16.387064'] },
  ...{ cm: [1, '1'], mm: [10, '1'], in: [1, '2.54'] },
  ...{ '°C': [1, '1'], '°F': [212, '100'], 'Δ°C': [1, '1'], 'Δ°F': [9, '5'] },
  ...{ h: [1, '1'], min: [60, '1'], s: [3600, '1'], day: [1, '24'] },
  ...{ bar: [1, '1'], kPa: [100, '1'], Pa: [100_000, '1'], atm: [1, '1.01325'] },
  // 453.59237 g × 9.80665 m/s² over the square of 2.54 cm; the exact number has no end.
  psi: [1, '0.068947572931683613'],
  // NIST Handbook 44, Appendix C, and the kitchen card of the Office of Weights and Measures: a gallon is 231 cubic
  // inches, 4 quarts, 8 pints, 16 cups, 128 fluid ounces, 256 tablespoons, 768 teaspoons.
  ...{ gal: [1, '3785.411784'], qt: [4, '3785.411784'], pt: [8, '3785.411784'], cup: [16, '3785.411784'] },
  ...{ flOz: [128, '3785.411784'], tbsp: [256, '3785.411784'], tsp: [768, '3785.411784'] },
  // 21 CFR 101.9(b)(5)(viii).
  ...{ labelCup: [1, '240'], labelFlOz: [1, '30'], labelTbsp: [1, '15'], labelTsp: [1, '5'] },
  // Common practice; the Australian tablespoon by the conversion chart of New South Wales, Healthy Kids.
  ...{ metricCup: [1, '250'], metricTbsp: [1, '15'], metricTsp: [1, '5'], australianTbsp: [1, '20'] },
  ...{ 'g/g': [1, '1'], 'g/L': [1, '1'], '%': [1, '1'], '': [1, '1'], pH: [1, '1'] },
};

// Below the last digit of any of them.
const rounding = 1e-17;

test.each(unitList.map(({ id }) => id))('%s is as much of the base unit as its source has it', (id) => {
  const [amount, base] = exact[id];
  expect(big(toBase(amount, id)).minus(base).abs().lt(rounding)).toBe(true);
});

test('the zero of the Fahrenheit scale is 32 °F, and both scales meet at −40', () => {
  expect(big(toBase(32, '°F')).eq(0)).toBe(true);
  expect(big(convert(-40, '°C', '°F')).eq(-40)).toBe(true);
});
