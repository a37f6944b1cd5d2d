import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decimal } from '../../src/measure/decimal';
import { doubleOf } from '../../src/measure/exact';
import { big } from '../big';

const any = fc
  .tuple(fc.bigInt({ min: -(10n ** 24n), max: 10n ** 24n }), fc.integer({ min: -12, max: 12 }))
  .map(([digits, power]) => decimal(`${digits}e${power}`));

describe('an exact number', () => {
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
    expect(decimal('0.1').plus('0.2').compare('0.3')).toBe(0);
  });

  test('has no negative zero', () => {
    expect(Object.is(doubleOf(decimal(-0)), 0)).toBe(true);
    expect(Object.is(doubleOf(decimal('-0.0')), 0)).toBe(true);
  });

  test('throws on what is no number and on division by zero, which are faults of the caller', () => {
    expect(() => decimal('a cup')).toThrow();
    expect(() => decimal('')).toThrow();
    expect(() => decimal(Number.NaN)).toThrow();
    expect(() => decimal(Number.POSITIVE_INFINITY)).toThrow();
    expect(() => decimal(1).div(0)).toThrow();
  });
});
