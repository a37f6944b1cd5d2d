import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countDecimals, doubleOf, Exact, exactly } from '../../src/measure/exact';
import { big } from '../big';

const any = fc
  .tuple(fc.bigInt({ min: -(10n ** 24n), max: 10n ** 24n }), fc.integer({ min: -12, max: 12 }))
  .map(([digits, power]) => exactly(`${digits}e${power}`));
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
    expect(doubleOf(new Exact(1n, 10n ** 400n))).toBe(0);
    expect(doubleOf(new Exact(10n ** 400n, 1n))).toBe(Number.POSITIVE_INFINITY);
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

  test('adds, takes away, multiplies and compares as a decimal library does', () => {
    fc.assert(
      fc.property(any, any, (a, b) => {
        expect(big(a.plus(b)).eq(big(a).plus(big(b)))).toBe(true);
        expect(big(a.minus(b)).eq(big(a).minus(big(b)))).toBe(true);
        expect(big(a.times(b)).eq(big(a).times(big(b)))).toBe(true);
        expect(a.compare(b)).toBe(big(a).cmp(big(b)));
      }),
    );
  });

  test('divided and multiplied again is itself', () => {
    fc.assert(
      fc.property(any, any, (a, b) => {
        fc.pre(b.numerator !== 0n);
        expect(a.div(b).times(b).compare(a)).toBe(0);
        expect(a.div(b).denominator > 0n).toBe(true);
      }),
    );
  });

  test('adds tenths exactly', () => {
    expect(exactly('0.1').plus('0.2').compare('0.3')).toBe(0);
  });

  test('has no negative zero', () => {
    expect(Object.is(doubleOf(exactly(-0)), 0)).toBe(true);
    expect(Object.is(doubleOf(exactly('-0.0')), 0)).toBe(true);
  });

  test('throws on what is no number and on division by zero, which are faults of the caller', () => {
    expect(() => exactly('a cup')).toThrow();
    expect(() => exactly('')).toThrow();
    expect(() => exactly(Number.NaN)).toThrow();
    expect(() => exactly(Number.POSITIVE_INFINITY)).toThrow();
    expect(() => exactly(1).div(0)).toThrow();
  });
});
