import fc from 'fast-check';
import { expect, test } from 'vitest';
import { solver } from '../../../src/formula/models/positive-definite';

test('solves by hand: 4x + 2y = 2, 2x + 3y = 5 is x = −½, y = 2', () => {
  const [x, y] = solver([[4], [2, 3]])([2, 5]);
  expect(x).toBeCloseTo(-0.5, 12);
  expect(y).toBeCloseTo(2, 12);
  expect(solver([])([])).toEqual([]);
});

test('what it finds, put in, gives the right side', () => {
  const entry = fc.double({ min: -3, max: 3, noNaN: true });
  const square = fc
    .integer({ min: 1, max: 8 })
    .chain((size) =>
      fc.tuple(
        fc.array(fc.array(entry, { minLength: size, maxLength: size }), { minLength: size, maxLength: size }),
        fc.array(entry, { minLength: size, maxLength: size }),
      ),
    );
  fc.assert(
    fc.property(square, ([rows, right]) => {
      // B·Bᵀ + 1 is positive definite, whatever B is.
      const of = (row: number, column: number): number =>
        (rows[row] ?? []).reduce((sum, value, k) => sum + value * (rows[column]?.[k] ?? 0), row === column ? 1 : 0);
      const lower = rows.map((_, row) => Array.from({ length: row + 1 }, (__, column) => of(row, column)));
      const x = solver(lower)(right);
      for (const [row, value] of right.entries()) {
        const sum = x.reduce((all, one, column) => all + of(row, column) * one, 0);
        expect(Math.abs(sum - value)).toBeLessThan(1e-6);
      }
    }),
  );
});
