import fc from 'fast-check';
import { expect, test } from 'vitest';
import { countedUnder, leftOutAt } from '../../../src/formula/rows/pressure-left-out';

test('more is left out the higher the pressure', () => {
  expect(leftOutAt(0)).toBe(0.4);
  expect(leftOutAt(10)).toBeCloseTo(1, 12);
});

// By hand: p + 0.4 + 0.006 p² = 6 has p = 2 × 5.6 ÷ (1 + √(1 + 0.024 × 5.6)) = 11.2 ÷ 2.065082 = 5.42351.
test('a limit of 6 bar leaves room for 5.424 by these sums, one of 0.4 for none', () => {
  expect(countedUnder(6)).toBeCloseTo(5.42351, 4);
  expect(countedUnder(0.4)).toBe(0);
  expect(countedUnder(0.1)).toBe(0);
});

test('what is counted and what is left out come to the limit, and more room is left the higher it is', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.41, max: 100, noNaN: true }), (limit) => {
      const counted = countedUnder(limit);
      expect((counted + leftOutAt(counted)) / limit).toBeCloseTo(1, 9);
      expect(counted).toBeLessThan(limit);
      expect(countedUnder(limit + 1)).toBeGreaterThan(counted);
    }),
  );
});
