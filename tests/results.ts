import { expect } from 'vitest';
import { type Formulation, formulate } from '../src/formula/engine/formulate';
import { type RowId, rowOrder } from '../src/formula/recipe/order';
import type { Problem, ProblemCode } from '../src/formula/recipe/problem';
import type { Recipe } from '../src/formula/recipe/recipe';

/** How near is equal where the same number is reached by another path, as a share of it. */
export const rounding = 1e-9;

/** Whether two numbers agree to rounding; below a thousandth, to rounding of that. */
export function agrees(one: number, other: number): boolean {
  return Math.abs(one - other) <= rounding * Math.max(Math.abs(one), Math.abs(other), 1e-3);
}

/** The value of a numeric cell; fails the test where it has none. */
export function numberIn(formulation: Formulation, id: RowId): number {
  const { value, problems } = formulation.rows[id];
  if (typeof value !== 'number') expect.fail(`${id} has no number: ${JSON.stringify(problems)}`);
  return value;
}

/** The value of one cell of a recipe. */
export function worked(recipe: Recipe, id: RowId): number {
  return numberIn(formulate(recipe), id);
}

/** The codes of what is said at a cell. */
export function codesAt(formulation: Formulation, id: RowId): readonly ProblemCode[] {
  return formulation.rows[id].problems.map(({ code }) => code);
}

/** The first problem of that code at a cell; fails the test where there is none. */
export function problemAt(formulation: Formulation, id: RowId, code: ProblemCode): Problem {
  const found = formulation.rows[id].problems.find((problem) => problem.code === code);
  if (found === undefined) expect.fail(`${id} does not say ${code}, but ${codesAt(formulation, id).join(', ')}`);
  return found;
}

/** Every row whose value differs, written as `row: before → after`. */
export function differences(before: Formulation, after: Formulation): string[] {
  return rowOrder.flatMap((id) => {
    const [one, other] = [before.rows[id].value, after.rows[id].value];
    const same = typeof one === 'number' && typeof other === 'number' ? agrees(one, other) : one === other;
    return same ? [] : [`${id}: ${one} → ${other}`];
  });
}
