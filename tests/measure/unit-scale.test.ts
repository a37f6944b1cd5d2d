import { expect, test } from 'vitest';
import { exactly } from '../../src/measure/exact';
import { scaleOf } from '../../src/measure/unit-scale';

test.each([
  ['oz', '453.59237', 16n],
  ['cup', '3785.411784', 16n],
  ['in3', '16.387064', 1n],
  ['°F', '5', 9n],
])('a base unit goes into %s %s/%d times, exactly', (id, numerator, denominator) => {
  const scale = scaleOf(id);
  const expected = exactly(numerator);
  const [a, b] = [scale.numerator * expected.denominator * denominator, scale.denominator * expected.numerator];
  expect(a).toBe(b);
});

test('only degrees Fahrenheit begin elsewhere', () => {
  expect([scaleOf('°F').zero, scaleOf('Δ°F').zero, scaleOf('lb').zero]).toEqual([32n, 0n, 0n]);
});

test('a unit that is in no table is refused', () => {
  expect(() => scaleOf('firkin')).toThrow('firkin');
});
