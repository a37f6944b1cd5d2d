import { convertNumber } from '../../measure/units';

/** One pressure as a bar from the left, in % of the width. */
export interface DrawnPressure {
  readonly id: 'likely' | 'forgotten';
  readonly bar: number;
  readonly width: number;
}

export interface FizzPicture {
  /** What the scale is in. */
  readonly unit: 'bar' | 'psi';
  /** The end of the scale, in its unit. */
  readonly most: number;
  readonly ticks: readonly { readonly at: number; readonly left: number }[];
  readonly pressures: readonly DrawnPressure[];
  /** The limit as a line, in % from the left; null where there is none. */
  readonly limit: { readonly bar: number; readonly left: number } | null;
}

const wholes = [1, 2, 5]; // geometry

/**
 * Likely and forgotten pressure and the limit of a bottle on one scale from 0 in even steps of 1, 2 or 5 times a power
 * of ten: at most six of them. Pressures in bar, the scale in `unit`; a likely one that is not told is left out.
 */
export function drawFizz(
  likely: number | null,
  forgotten: number,
  limit: number | null,
  unit: FizzPicture['unit'],
): FizzPicture {
  const highest = convertNumber(Math.max(likely ?? 0, forgotten, limit ?? 0), 'bar', unit);
  const step = stepFor(highest);
  const steps = Math.max(Math.ceil(highest / step), 1);
  const most = steps * step;
  const place = (bar: number): number => (100 * convertNumber(bar, 'bar', unit)) / most;
  return {
    unit,
    most,
    ticks: Array.from({ length: steps + 1 }, (_, n) => ({ at: n * step, left: (100 * n) / steps })),
    pressures: [
      ...(likely === null ? [] : [{ id: 'likely', bar: likely, width: place(likely) } as const]),
      { id: 'forgotten', bar: forgotten, width: place(forgotten) },
    ],
    limit: limit === null ? null : { bar: limit, left: place(limit) },
  };
}

const mostSteps = 6; // geometry

const power = 10; // geometry

function stepFor(highest: number): number {
  for (let size = 1; ; size *= power) {
    const step = wholes.map((whole) => whole * size).find((one) => highest / one <= mostSteps);
    if (step !== undefined) return step;
  }
}
