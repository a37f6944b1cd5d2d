import { convertNumber } from '../../measure/units';
import { axisOver, placeOn } from '../page/axis';

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

function* roundSteps(): Generator<number> {
  for (let size = 1; ; size *= 10) yield* [size, 2 * size, 5 * size];
}

/**
 * Likely and forgotten pressure and the limit of a bottle on one scale from 0 in even steps of 1, 2 or 5 times a power
 * of ten. Pressures in bar, the scale in `unit`; a likely one that is not told is left out.
 */
export function drawFizz(
  likely: number | null,
  forgotten: number,
  limit: number | null,
  unit: FizzPicture['unit'],
): FizzPicture {
  const inUnit = (bar: number): number => convertNumber(bar, 'bar', unit);
  const { most, lines } = axisOver(inUnit(Math.max(likely ?? 0, forgotten, limit ?? 0)), roundSteps());
  const place = (value: number): number => placeOn({ from: 0, to: most }, value);
  return {
    unit,
    most,
    ticks: lines.map((at) => ({ at, left: place(at) })),
    pressures: [
      ...(likely === null ? [] : [{ id: 'likely', bar: likely, width: place(inUnit(likely)) } as const]),
      { id: 'forgotten', bar: forgotten, width: place(inUnit(forgotten)) },
    ],
    limit: limit === null ? null : { bar: limit, left: place(inUnit(limit)) },
  };
}
