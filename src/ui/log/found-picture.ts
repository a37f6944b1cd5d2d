import type { Look } from '../../formula/time/looks';
import { writeNumber } from '../../measure/write-quantity';
import { axisOver, placeOn } from '../page/axis';

/** A mark on an axis, in percent of its length from the left or the top. */
export interface Tick {
  readonly at: number;
  readonly text: string;
}

/** What was found against what was expected as it is drawn: paths in a square of 100 by 100, both in hours. */
export interface FoundDrawing {
  /** One path for all marks of a kind, so that a thousand of them are as few pieces as ten. */
  readonly flat: string;
  readonly ready: string;
  readonly sour: string;
  /** Where what is found is what was expected, and where what was ready at that time stops being so. */
  readonly expected: string;
  readonly grid: string;
  readonly across: readonly Tick[];
  readonly upward: readonly Tick[];
  /** How many marks stand at the edge, as they lie beyond it. */
  readonly beyond: number;
}

function* dayParts(): Generator<number> {
  yield* [1, 2, 6];
  for (let hours = 12; ; hours *= 2) yield hours;
}

/** A slip of the pen would leave the rest no room. */
const highest = 2.5;

/** The drawing of all looks that teach; null where there are none. */
export function drawFound(looks: readonly Look[], decimalComma: boolean): FoundDrawing | null {
  const points = looks.flatMap(({ found, hours, expected }) =>
    hours === null || expected === null || found === 'looked' ? [] : [{ found, hours, expected }],
  );
  if (points.length === 0) return null;
  const mostExpected = points.reduce((most, { expected }) => Math.max(most, expected), 0);
  const mostFound = points.reduce((most, { hours }) => Math.max(most, hours), 0);
  const right = axisOver(mostExpected, dayParts());
  const up = axisOver(Math.min(mostFound, highest * mostExpected), dayParts());
  const x = (hours: number): number => placeOn({ from: 0, to: right.most }, hours);
  const y = (hours: number): number => 100 - placeOn({ from: 0, to: up.most }, Math.min(hours, up.most));
  const place = (expected: number, hours: number): string => `${short(x(expected))} ${short(y(hours))}`;
  const marks = (kind: Look['found']): string =>
    points
      .filter(({ found }) => found === kind)
      .map(({ expected, hours }) => `M${place(expected, hours)}h0`)
      .join('');
  const end = Math.min(right.most, up.most);
  const ticks = (lines: readonly number[], at: (hours: number) => number): readonly Tick[] =>
    lines.map((hours) => ({ at: at(hours), text: writeNumber(hours, 0, decimalComma) }));
  return {
    flat: marks('flat'),
    ready: marks('ready'),
    sour: marks('sour'),
    expected: `M${place(0, 0)}L${place(end, end)}`,
    grid: up.lines.map((hours) => `M0 ${short(y(hours))}H100`).join(''),
    across: ticks(right.lines, x),
    upward: ticks(up.lines, y),
    beyond: points.filter(({ hours }) => hours > up.most).length,
  };
}

function short(place: number): string {
  return place.toFixed(2);
}
