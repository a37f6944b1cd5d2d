import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shareRange } from '../../../src/formula/models/share';

// R. G. Newcombe, Two-sided confidence intervals for the single proportion: comparison of seven methods, Statistics in
// Medicine 17 (1998), table I, the score method without continuity correction at 95 %. The figures are from memory, so
// the closed form is held against them and, below, against what defines it.
test.each([
  [81, 263, 0.2553, 0.3662],
  [15, 148, 0.0624, 0.1605],
  [0, 20, 0, 0.1611],
  [1, 29, 0.0061, 0.1718],
])('of %i in %i is what the worked example has', (count, of, low, high) => {
  const range = shareRange(count, of, 1.959964);
  expect(range.low).toBeCloseTo(low, 4);
  expect(range.high).toBeCloseTo(high, 4);
});

test('its ends are the shares of which the count is so many standard deviations off', () => {
  const counted = fc
    .integer({ min: 1, max: 60 })
    .chain((of) => fc.tuple(fc.integer({ min: 0, max: of }), fc.constant(of)));
  fc.assert(
    fc.property(counted, fc.double({ min: 0.5, max: 3, noNaN: true }), ([count, of], width) => {
      const { low, high } = shareRange(count, of, width);
      expect(low).toBeLessThanOrEqual(count / of + 1e-12);
      expect(high).toBeGreaterThanOrEqual(count / of - 1e-12);
      for (const end of [low, high]) {
        const off = Math.abs(count - of * end);
        expect(off).toBeCloseTo(width * Math.sqrt(of * end * (1 - end)), 6);
      }
    }),
  );
});

test('of no tries is anything', () => {
  expect(shareRange(0, 0, 1.28)).toEqual({ low: 0, high: 1 });
});
