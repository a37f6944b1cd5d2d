/** How far rounding on the way may leave two doubles of the same number apart, as a share of them. */
export const rounding = 1e-9;

/** Whether two finite numbers are one but for rounding, or but for a wider share of the larger. */
export function nearly(one: number, other: number, share = rounding): boolean {
  return Math.abs(one - other) <= share * Math.max(Math.abs(one), Math.abs(other));
}

/** The least whole number that holds a count; one a hair above a whole number, from rounding, is that number. */
export function wholeAbove(count: number): number {
  // Adding 0 turns a negative zero into a plain one.
  return Math.ceil(count - rounding) + 0;
}
