import type { Formulation } from '../../formula/engine/formulate';
import type { RipeningPoint } from '../../formula/time/ripening-chart';
import { convertNumber } from '../../measure/units';
import { writeMetric, writeNumber } from '../../measure/write-quantity';
import { axisOver, placeOn } from '../page/axis';

/** A mark on an axis, in percent of its length from the left or the top. */
export interface Tick {
  readonly at: number;
  readonly text: string;
}

/** Hours against room temperature as it is drawn: paths in a square of 100 by 100, hours upward, warmth to the right. */
export interface RipeningPicture {
  readonly band: string;
  readonly soonest: string;
  readonly likely: string;
  readonly latest: string;
  /** A line across for each hour on the axis. */
  readonly grid: string;
  readonly hours: readonly Tick[];
  readonly celsius: readonly Tick[];
  readonly fahrenheit: readonly Tick[];
  /** This batch; null where its room is outside the drawing. */
  readonly point: DrawnPoint | null;
}

export interface DrawnPoint {
  readonly left: number;
  readonly top: number;
  readonly dot: string;
  /** From the soonest to the latest. */
  readonly reach: string;
  readonly text: string;
  /** On which side of the dot there is room for its text. */
  readonly side: 'left' | 'right';
}

/** Hours between two lines: parts of a day, and days beyond. */
function* dayParts(): Generator<number> {
  yield* [1, 2, 6];
  for (let hours = 12; ; hours *= 2) yield hours;
}

/** The drawing of a batch’s ready time; null where there are fewer than two temperatures to draw. */
export function drawRipening(
  points: readonly RipeningPoint[],
  formulation: Formulation,
  decimalComma: boolean,
): RipeningPicture | null {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || first === last) return null;
  const { most, lines } = axisOver(Math.max(...points.map(({ latest }) => latest)), dayParts());
  const across = (celsius: number): number => placeOn({ from: first.celsius, to: last.celsius }, celsius);
  const down = (hours: number): number => 100 - placeOn({ from: 0, to: most }, hours);
  const place = (celsius: number, hours: number): string => `${short(across(celsius))} ${short(down(hours))}`;
  const curve = (end: 'soonest' | 'likely' | 'latest'): readonly string[] =>
    points.map((point) => place(point.celsius, point[end]));
  const marked = points.filter((_, at) => at % 2 === 0);
  const marks = marked.map(({ celsius }) => ({ celsius, at: across(celsius) }));
  return {
    band: `M${[...curve('latest'), ...[...curve('soonest')].reverse()].join('L')}Z`,
    soonest: pathOf(curve('soonest')),
    likely: pathOf(curve('likely')),
    latest: pathOf(curve('latest')),
    grid: lines.map((hour) => `M0 ${short(down(hour))}H100`).join(''),
    hours: lines.map((hour) => ({ at: down(hour), text: writeNumber(hour, 0, decimalComma) })),
    celsius: marks.map(({ celsius, at }) => ({ at, text: writeNumber(celsius, 0, decimalComma) })),
    fahrenheit: marks.map(({ celsius, at }) => {
      return { at, text: writeNumber(convertNumber(celsius, '°C', '°F'), 0, decimalComma) };
    }),
    point: drawPoint(formulation, { across, down, place }, decimalComma),
  };
}

interface Axes {
  readonly across: (celsius: number) => number;
  readonly down: (hours: number) => number;
  readonly place: (celsius: number, hours: number) => string;
}

function drawPoint({ rows }: Formulation, axes: Axes, decimalComma: boolean): DrawnPoint | null {
  const { value, range } = rows.readyTime;
  const celsius = rows.roomTemperature.value;
  if (typeof value !== 'number' || typeof celsius !== 'number' || range === null) return null;
  const left = axes.across(celsius);
  return {
    left,
    top: axes.down(value),
    dot: `M${axes.place(celsius, value)}h0`,
    reach: `M${axes.place(celsius, range.low)}L${axes.place(celsius, range.high)}`,
    text: writeMetric(value, 'time', decimalComma),
    side: 2 * left > 100 ? 'left' : 'right',
  };
}

function pathOf(places: readonly string[]): string {
  return `M${places.join('L')}`;
}

function short(place: number): string {
  return place.toFixed(2);
}
