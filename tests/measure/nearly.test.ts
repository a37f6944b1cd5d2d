import { expect, test } from 'vitest';
import { nearly, wholeAbove } from '../../src/measure/nearly';

test('what doubles leave off is no difference, for any size and sign', () => {
  expect(nearly(0.1 + 0.2, 0.3)).toBe(true);
  expect(nearly((0.1 + 0.2) * 1e12, 0.3e12)).toBe(true);
  expect(nearly(-(0.1 + 0.2) * 1e-12, -0.3e-12)).toBe(true);
  expect(nearly(0, 0)).toBe(true);
});

test('what is further off is another number', () => {
  expect(nearly(1, 1 + 2e-9)).toBe(false);
  expect(nearly(0, 1e-30)).toBe(false);
  expect(nearly(1e-12, 2e-12)).toBe(false);
  expect(nearly(1, -1)).toBe(false);
  expect(nearly(Number.NaN, 1)).toBe(false);
});

test('a wider share may be asked for, which is one of the larger', () => {
  expect(nearly(99, 100, 0.01)).toBe(true);
  expect(nearly(100, 98.9, 0.01)).toBe(false);
});

test('a count goes up to a whole number, but not for a hair', () => {
  expect([wholeAbove(2), wholeAbove(3 * (0.1 + 0.2) * 10 - 7), wholeAbove(2.001), wholeAbove(-0.5)]).toEqual([
    2, 2, 3, 0,
  ]);
  expect(Object.is(wholeAbove(0), 0)).toBe(true);
});
