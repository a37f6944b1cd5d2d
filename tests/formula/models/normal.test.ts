import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { millsRatio, truncatedNormal } from '../../../src/formula/models/normal';

const { POSITIVE_INFINITY: up, NEGATIVE_INFINITY: down } = Number;

/** ∫ e^(−z²/2) from `from` to `to` over its value at `from`, by Simpson’s rule: another way to the same chance. */
function integrate(from: number, to: number, weigh: (z: number) => number): number {
  const pieces = 20000;
  const width = (to - from) / pieces;
  let sum = 0;
  for (let n = 0; n <= pieces; n += 1) {
    const z = from + n * width;
    const weight = n === 0 || n === pieces ? 1 : n % 2 === 1 ? 4 : 2;
    sum += weight * weigh(z) * Math.exp((from ** 2 - z ** 2) / 2);
  }
  return (sum * width) / 3;
}

describe('millsRatio', () => {
  test('is the tail of the normal distribution over its density', () => {
    for (const x of [0, 0.3, 1, 1.99, 2, 2.01, 3, 5, 8]) {
      expect(millsRatio(x) / integrate(x, x + 12, () => 1)).toBeCloseTo(1, 9);
    }
    expect(millsRatio(0)).toBeCloseTo(Math.sqrt(Math.PI / 2), 14);
  });

  test('goes on without a step from the series to the continued fraction', () => {
    // The slope of the ratio at 2 is 2 m − 1.
    const slope = (millsRatio(2.0001) - millsRatio(1.9999)) / 0.0002;
    expect(slope).toBeCloseTo(2 * millsRatio(2) - 1, 6);
  });

  test('falls as 1 over x far out, and is 0 at no end', () => {
    expect(1e8 * millsRatio(1e8)).toBeCloseTo(1, 12);
    expect(millsRatio(up)).toBe(0);
  });
});

describe('truncatedNormal', () => {
  test.each([
    [-1, 2],
    [0, 0.5],
    [3, 3.7],
    [-9, -8],
    [-0.5, 0.5],
    [6, 14],
    [-14, 1],
  ])('has mean and variance of what is left between %d and %d', (from, to) => {
    const whole = integrate(from, to, () => 1);
    const mean = integrate(from, to, (z) => z) / whole;
    const variance = integrate(from, to, (z) => (z - mean) ** 2) / whole;
    const found = truncatedNormal(from, to);
    expect(found.mean).toBeCloseTo(mean, 9);
    expect(found.variance).toBeCloseTo(variance, 8);
  });

  test('of a whole line is the normal distribution itself, of a point the point', () => {
    expect(truncatedNormal(down, up)).toEqual({ mean: 0, variance: 1 });
    expect(truncatedNormal(1.5, 1.5)).toEqual({ mean: 1.5, variance: 0 });
  });

  test('of a half line has Mills’ ratio upside down for its mean', () => {
    expect(truncatedNormal(0, up).mean).toBeCloseTo(Math.sqrt(2 / Math.PI), 14);
    expect(truncatedNormal(0, up).variance).toBeCloseTo(1 - 2 / Math.PI, 12);
    expect(truncatedNormal(down, 0).mean).toBeCloseTo(-Math.sqrt(2 / Math.PI), 14);
  });

  test('lies within its interval, is its own mirror image, and is never NaN', () => {
    const end = fc.oneof(
      fc.double({ min: -40, max: 40, noNaN: true }),
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.constantFrom(down, up),
    );
    fc.assert(
      fc.property(end, end, (one, other) => {
        const [from, to] = [Math.min(one, other), Math.max(one, other)];
        fc.pre(from !== to || Number.isFinite(from));
        const { mean, variance } = truncatedNormal(from, to);
        const slack = 1e-9 * Math.max(1, Math.abs(mean));
        expect(mean).toBeGreaterThanOrEqual(from - slack);
        expect(mean).toBeLessThanOrEqual(to + slack);
        expect(variance).toBeGreaterThanOrEqual(0);
        expect(variance).toBeLessThanOrEqual(1);
        const mirrored = truncatedNormal(-to, -from);
        expect(Math.abs(mirrored.mean + mean)).toBeLessThanOrEqual(slack);
      }),
    );
  });
});
