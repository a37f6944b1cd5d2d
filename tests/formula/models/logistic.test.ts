import fc from 'fast-check';
import { expect, test } from 'vitest';
import { deviationOfScale, leanOf } from '../../../src/formula/models/logistic';

const below = (x: number): number => 1 / (1 + Math.exp(-x));

test('agrees with differences of ln of the chance', () => {
  const place = fc.double({ min: -12, max: 12, noNaN: true });
  fc.assert(
    fc.property(place, fc.double({ min: 0.05, max: 8, noNaN: true }), (from, width) => {
      const step = 1e-3;
      const ln = (u: number): number => Math.log(below(from + width - u) - below(from - u));
      const [before, here, after] = [ln(-step), ln(0), ln(step)];
      const lean = leanOf(from, from + width);
      expect(lean.slope).toBeCloseTo((after - before) / (2 * step), 4);
      expect(lean.curvature).toBeCloseTo(-(after - 2 * here + before) / step ** 2, 3);
    }),
  );
});

test('never pulls harder than 1, however far out, and bends down', () => {
  const far = fc.double({ min: -1e6, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(far, fc.double({ min: 0, max: 1e6, noNaN: true }), (from, width) => {
      const { slope, curvature } = leanOf(from, from + width);
      expect(Math.abs(slope)).toBeLessThanOrEqual(1);
      expect(curvature).toBeGreaterThanOrEqual(0);
      expect(curvature).toBeLessThanOrEqual(0.5);
    }),
  );
  expect(leanOf(Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY)).toEqual({ slope: 0, curvature: 0 });
});

test('has the standard deviation π ÷ √3 times its scale', () => {
  let variance = 0;
  const step = 0.01;
  for (let x = -40; x <= 40; x += step) variance += x ** 2 * (below(x + step / 2) - below(x - step / 2));
  expect(Math.sqrt(variance)).toBeCloseTo(deviationOfScale, 4);
});
