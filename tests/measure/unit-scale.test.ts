import { expect, test } from 'vitest';
import { exactly } from '../../src/measure/exact';
import { scaleOf } from '../../src/measure/unit-scale';

test.each([
  ['oz', '453.59237', 16],
  ['cup', '3785.411784', 16],
  ['in3', '16.387064', 1],
  ['°F', '5', 9],
])('a base unit goes into %s %s/%d times, exactly', (id, numerator, denominator) => {
  expect(scaleOf(id).factor.compare(exactly(numerator).div(denominator))).toBe(0);
});

test('only degrees Fahrenheit begin elsewhere', () => {
  expect([scaleOf('°F').zero, scaleOf('Δ°F').zero, scaleOf('lb').zero]).toEqual([32n, 0n, 0n]);
});

test('a unit that is in no table is refused', () => {
  expect(() => scaleOf('firkin')).toThrow('firkin');
});
