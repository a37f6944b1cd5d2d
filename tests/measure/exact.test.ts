import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countDecimals, doubleOf, exactly } from '../../src/measure/exact';

const double = fc.double({ noNaN: true, noDefaultInfinity: true });

describe('an exact number', () => {
  test.each([
    ['453.59237', 45_359_237n, 100_000n],
    ['-2', -2n, 1n],
    ['1.5e-7', 15n, 100_000_000n],
    ['2.5e+3', 2500n, 1n],
    ['0', 0n, 1n],
  ])('of %s is a ratio of whole numbers', (decimal, numerator, denominator) => {
    expect(exactly(decimal)).toEqual({ numerator, denominator });
  });

  test('comes back as the same double', () => {
    fc.assert(
      fc.property(double, (value) => {
        expect(doubleOf(exactly(value))).toBe(value === 0 ? 0 : value);
      }),
    );
    expect(Object.is(doubleOf(exactly(-0)), 0)).toBe(true);
    expect(doubleOf({ numerator: 1n, denominator: 10n ** 400n })).toBe(0);
    expect(doubleOf({ numerator: 10n ** 400n, denominator: 1n })).toBe(Number.POSITIVE_INFINITY);
  });

  test.each([
    ['2.5', 0, 3n],
    ['-2.5', 0, -3n],
    ['1.005', 2, 101n],
    ['-1.0049', 2, -100n],
    ['7', 3, 7000n],
  ])('%s is counted to %d decimals, a half away from zero', (decimal, places, count) => {
    expect(countDecimals(exactly(decimal), places)).toBe(count);
  });
});
