import { describe, expect, test } from 'vitest';
import { studentQuantile } from '../../../src/formula/models/student';

/** Γ(x) for halves and whole numbers. */
function gamma(x: number): number {
  if (x === 0.5) return Math.sqrt(Math.PI);
  return x === 1 ? 1 : (x - 1) * gamma(x - 1);
}

/** The share below t, from its density by Simpson’s rule. */
function below(t: number, degrees: number): number {
  const scale = gamma((degrees + 1) / 2) / (Math.sqrt(degrees * Math.PI) * gamma(degrees / 2));
  const density = (x: number) => scale * (1 + x ** 2 / degrees) ** (-(degrees + 1) / 2);
  const pieces = 2000;
  const step = t / pieces;
  let sum = density(0) + density(t);
  for (let at = 1; at < pieces; at += 1) sum += (at % 2 === 1 ? 4 : 2) * density(at * step);
  return 0.5 + (sum * step) / 3;
}

describe('a quantile of Student’s t', () => {
  test('has its share below it, by integrating the density', () => {
    for (const degrees of [1, 2, 3, 4, 5, 6, 7, 10, 11, 24]) {
      for (const share of [0.6, 0.9, 0.975]) {
        expect(below(studentQuantile(share, degrees), degrees), `${share}, ${degrees}`).toBeCloseTo(share, 8);
      }
    }
  });

  test('is what tables print', () => {
    expect(studentQuantile(0.9, 1)).toBeCloseTo(3.078, 3);
    expect(studentQuantile(0.9, 4)).toBeCloseTo(1.533, 3);
    expect(studentQuantile(0.975, 10)).toBeCloseTo(2.228, 3);
  });

  test('comes to that of the normal distribution with many', () => {
    expect(studentQuantile(0.9, 2000)).toBeCloseTo(1.2816, 3);
  });

  test('is the middle at one half', () => {
    expect(studentQuantile(0.5, 3)).toBeCloseTo(0, 12);
  });
});
