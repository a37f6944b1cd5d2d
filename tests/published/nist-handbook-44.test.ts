import { describe, expect, test } from 'vitest';
import type { UnitId } from '../../src/measure/units';
import { convert, toBase } from '../../src/measure/units';
import { big } from '../big';

// NIST Handbook 44, Appendix C, General Tables of Units of Measurement: the gallon is 231 cubic inches exactly; the
// cup is 8 fluid ounces and half a pint exactly. NIST Office of Weights and Measures, Metric Household: the cup is
// 16 tablespoons and 48 teaspoons exactly. Millilitres follow from those with the inch of 2.54 cm. The inch, the pound of
// 453.59237 g and the gravity of 9.80665 m/s² in the psi: NIST SP 811 (2008), not opened itself, its values as an
// independent table of units drawn from it has them.

describe('exact relations as the handbook prints them', () => {
  const printed: readonly (readonly [UnitId, UnitId, number])[] = [
    ['gal', 'in3', 231],
    ['gal', 'qt', 4],
    ['qt', 'pt', 2],
    ['pt', 'cup', 2],
    ['cup', 'flOz', 8],
    ['cup', 'tbsp', 16],
    ['cup', 'tsp', 48],
    ['qt', 'cup', 4],
    ['gal', 'tsp', 768],
  ];

  test.each(printed)('one %s is so many %s: %d', (larger, smaller, count) => {
    expect(big(convert(1, larger, smaller)).eq(count)).toBe(true);
  });
});

describe('what follows from them', () => {
  const derived: readonly (readonly [UnitId, string])[] = [
    ['gal', '3785.411784'],
    ['qt', '946.352946'],
    ['pt', '473.176473'],
    ['cup', '236.5882365'],
    ['flOz', '29.5735295625'],
    ['tbsp', '14.78676478125'],
    ['tsp', '4.92892159375'],
    ['lb', '453.59237'],
    ['oz', '28.349523125'],
  ];

  test.each(derived)('one %s is exactly %s in its base unit', (unit, base) => {
    expect(big(toBase(1, unit)).toFixed()).toBe(base);
  });

  test('a litre is 4.226752838 cups, and 512 mL two cups and 2.6256 tablespoons', () => {
    expect(big(convert(1, 'L', 'cup')).toFixed(9)).toBe('4.226752838');
    expect(big(convert(toBase(512, 'mL').minus(toBase(2, 'cup')), 'mL', 'tbsp')).toFixed(4)).toBe('2.6256');
  });

  test('a psi is 6894.757293168 Pa', () => {
    expect(big(convert(1, 'psi', 'Pa')).toFixed(9)).toBe('6894.757293168');
  });
});
