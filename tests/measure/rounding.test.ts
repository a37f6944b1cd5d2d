import Big from 'big.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roundAndTrim, roundNumber, roundPast, roundRough, roundTo } from '../../src/measure/rounding';

describe('rounding to print', () => {
  test.each([
    [1.005, 2, '1.01'],
    [-1.005, 2, '-1.01'],
    [0.125, 2, '0.13'],
    [-0.001, 2, '0.00'],
    [2.5, 0, '3'],
    [1e21, 0, '1000000000000000000000'],
  ])('writes %d to %d decimals as %s', (value, places, written) => {
    expect(roundTo(value, places)).toBe(written);
  });

  test('trims only zeros behind the point', () => {
    expect(roundAndTrim(4.5, 2)).toBe('4.5');
    expect(roundAndTrim(3, 2)).toBe('3');
    expect(roundAndTrim(100, 0)).toBe('100');
  });

  test('goes past a bound, and past one that is round itself', () => {
    expect(roundPast(12.457, 1)).toBe(12.5);
    expect(roundPast(12.449, 1)).toBe(12.5);
    expect(roundPast(12.5, 1)).toBe(12.6);
    expect(roundPast(-0.25, 1)).toBe(-0.2);
  });

  test('is never further off than half of the last place', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.integer({ min: 0, max: 4 }), (value, places) => {
        const rounded = roundNumber(value, places);
        expect(
          Big(rounded)
            .minus(Big(value))
            .abs()
            .lte(Big(0.5).times(Big(10).pow(-places))),
        ).toBe(true);
        expect(Object.is(rounded, -0)).toBe(false);
      }),
    );
  });

  test('names a value that is not finite instead of throwing', () => {
    expect(roundTo(Number.NaN, 2)).toBe('NaN');
    expect(roundNumber(Number.POSITIVE_INFINITY, 2)).toBe(Number.POSITIVE_INFINITY);
  });

  test('agrees with a decimal library on any double', () => {
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, noDefaultInfinity: true }),
        fc.integer({ min: 0, max: 9 }),
        (value, places) => {
          const expected = Big(Big(value).round(places)).toFixed(places);
          expect(roundTo(value, places)).toBe(expected);
        },
      ),
    );
  });

  test('agrees with a decimal library at a half, and a bit beside it', () => {
    const decimals = fc.tuple(fc.integer({ min: -1e6, max: 1e6 }), fc.integer({ min: 0, max: 6 }));
    const beside = fc.constantFrom(1, 1 + 2 ** -52, 1 - 2 ** -53, 1 + 1e-7, 1 - 1e-7, 1 + 1e-12);
    fc.assert(
      fc.property(decimals, beside, fc.integer({ min: 0, max: 6 }), ([digits, point], factor, places) => {
        const value = (digits / 10 ** point) * factor;
        const expected = Big(Big(value).round(places)).toFixed(places);
        expect(roundTo(value, places)).toBe(expected);
        expect(roundNumber(value, places)).toBe(Number(expected));
      }),
      { numRuns: 2000 },
    );
  });
});

describe('rounding what doubles have left a little off', () => {
  test('says nothing near a half and beyond what doubles count, for the exact number to decide', () => {
    for (const rough of [2.5, 2.5 + 1e-9, 2.5 - 1e-9, 1e12, Number.NaN]) expect(roundRough(rough, 0)).toBeNull();
  });

  test('else says what it is rounded to, never as a negative zero', () => {
    expect(roundRough(1.006, 2)).toBe(1.01);
    expect(roundRough(-7.51, 0)).toBe(-8);
    expect(Object.is(roundRough(-0.2, 0), 0)).toBe(true);
  });
});
