import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { baseUnits, type Kind } from '../../src/measure/units';
import { writeUnrounded } from '../../src/measure/write-unrounded';

const kinds = Object.keys(baseUnits).filter((key): key is Kind => key in baseUnits);

describe('an amount written unrounded', () => {
  test.each<[number, Kind, boolean, string]>([
    [152.738_461_538_461, 'mass', false, '152.7384615 g'],
    [152.738_461_538_461, 'mass', true, '152,7384615 g'],
    [12_345, 'volume', false, '12345 mL'],
    [0, 'share', false, '0 %'],
    [-0.5, 'temperature', true, '-0,5 °C'],
    [4.25, 'acidity', false, 'pH 4.25'],
    [2, 'count', false, '2'],
    [1 / 3, 'time', false, '0.3333333333 h'],
    [1e-12, 'ratio', false, '0.000000000001 g/g'],
  ])('%d as %s is plain: %s %s', (value, kind, decimalComma, text) => {
    expect(writeUnrounded(value, kind, decimalComma)).toBe(text);
  });

  test('has never three decimals, which some would read as thousands', () => {
    expect(writeUnrounded(1.234, 'mass', false)).toBe('1.2340 g');
    expect(writeUnrounded(1.234, 'mass', true)).toBe('1,2340 g');
  });

  test('of no number is empty', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY]) expect(writeUnrounded(value, 'mass', false)).toBe('');
  });

  test('is within a thousand-millionth of the amount', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e9, noNaN: true }), fc.constantFrom(...kinds), (value, kind) => {
        const number = Number(writeUnrounded(value, kind, false).replaceAll(/[^\d.]/g, ''));
        expect(Math.abs(number - value)).toBeLessThanOrEqual(1e-9 * value);
      }),
    );
  });
});
