/** An axis from 0 to a round end, with a line at each of its even steps. */
export interface Axis {
  readonly most: number;
  readonly lines: readonly number[];
}

/** More steps a small drawing has no room for. */
const mostSteps = 6;

/** An axis from 0 that holds what is highest, in the first of these steps that come to few; the steps grow without end. */
export function axisOver(highest: number, steps: Iterable<number>): Axis {
  for (const step of steps) {
    const count = Math.max(Math.ceil(highest / step), 1);
    if (count > mostSteps) continue;
    return { most: count * step, lines: Array.from({ length: count + 1 }, (_, line) => line * step) };
  }
  throw new RangeError('the steps of an axis come to an end');
}

/** Where a value stands on an axis between two ends, in percent of its length. */
export function placeOn(axis: { readonly from: number; readonly to: number }, value: number): number {
  return (100 * (value - axis.from)) / (axis.to - axis.from);
}
