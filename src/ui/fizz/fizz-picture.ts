import { convertNumber } from '../../measure/units';
import { axisOver, placeOn } from '../page/axis';

/** One bottle as a bar from the left to its likely pressure, and on to the most, in % of the width. */
export interface DrawnPressure {
  readonly width: number;
  readonly reach: number;
}

export interface FizzPicture {
  /** What the scale is in. */
  readonly unit: 'bar' | 'psi';
  /** The end of the scale, in its unit. */
  readonly most: number;
  readonly ticks: readonly { readonly at: number; readonly left: number }[];
  readonly pressures: readonly DrawnPressure[];
  /** What they are held against, as a line, in % from the left. */
  readonly line: number;
}

function* roundSteps(): Generator<number> {
  for (let size = 1; ; size *= 10) yield* [size, 2 * size, 5 * size];
}

/**
 * The likely and the most pressure of bottles and what they are held against, on one scale from 0 in even steps of 1, 2
 * or 5 times a power of ten. Pressures in bar, the scale in `unit`.
 */
export function drawFizz(
  bottles: readonly { readonly likely: number; readonly most: number }[],
  line: number,
  unit: FizzPicture['unit'],
): FizzPicture {
  const inUnit = (bar: number): number => convertNumber(bar, 'bar', unit);
  const { most, lines } = axisOver(inUnit(Math.max(line, ...bottles.map((bottle) => bottle.most))), roundSteps());
  const place = (value: number): number => placeOn({ from: 0, to: most }, value);
  return {
    unit,
    most,
    ticks: lines.map((at) => ({ at, left: place(at) })),
    pressures: bottles.map((bottle) => ({ width: place(inUnit(bottle.likely)), reach: place(inUnit(bottle.most)) })),
    line: place(inUnit(line)),
  };
}
