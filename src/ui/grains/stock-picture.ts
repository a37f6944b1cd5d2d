import type { Ledger } from '../../formula/stock/ledger';
import type { Instant } from '../../formula/time/event';
import { dayMinutes } from '../../formula/time/span';
import { axisOver, placeOn } from '../page/axis';

/** A mark on an axis, in percent of its length from the left or the top. */
export interface Tick {
  readonly at: number;
  readonly value: number;
}

/** Weight against time as it is drawn: paths in a square of 100 by 100, weight upward, time to the right. */
export interface StockPicture {
  /** All there is, at rest and away. */
  readonly total: string;
  /** The room under what is at rest; what batches have lies between it and the line. */
  readonly resting: string;
  /** The room under the line. */
  readonly all: string;
  /** What was given away or thrown out, each a mark from where to where the weight fell. */
  readonly fell: string;
  readonly grid: string;
  readonly grams: readonly Tick[];
  readonly times: readonly Tick[];
  /** Whether it is of days so few that the hour has to be told. */
  readonly isShort: boolean;
}

/** Grams between two lines: 5, 10, 20, 50, and so on without end. */
function* roundSteps(): Generator<number> {
  for (let ten = 1; ; ten *= 10) yield* [ten * 5, ten * 10, ten * 20];
}

/** Dates that fit under a narrow drawing. */
const marks = 3;
/** A line of one minute is drawn over an hour, so that it has a breadth. */
const leastSpan = 60;
const shortSpan = 4 * dayMinutes;

/** The drawing of a stock up to the present; null where there are fewer than two weights to join. */
export function drawStock({ points }: Pick<Ledger, 'points'>, present: Instant): StockPicture | null {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || points.length < 2) return null;
  const to = Math.max(present, last.entry.at, first.entry.at + leastSpan);
  const from = first.entry.at;
  const highest = points.reduce((most, { total, change }) => Math.max(most, total, total - change), 1);
  const { most, lines } = axisOver(highest, roundSteps());
  const across = (at: Instant): string => short(placeOn({ from, to }, at));
  const down = (grams: number): string => short(100 - placeOn({ from: 0, to: most }, Math.max(grams, 0)));
  const line: string[] = [];
  const steps: string[] = [];
  const fell: string[] = [];
  let rest = 0;
  for (const { entry, total, rest: now, change } of points) {
    const x = across(entry.at);
    const isFall = entry.did === 'given' || entry.did === 'failed';
    // What comes or goes at once stands upright; growth is joined from weighing to weighing.
    if ((isFall || entry.did === 'got') && line.length > 0) line.push(`${x} ${down(total - change)}`);
    if (isFall) fell.push(`M${x} ${down(total - change)}V${down(total)}`);
    line.push(`${x} ${down(total)}`);
    steps.push(`${x} ${down(rest)}`, `${x} ${down(now)}`);
    rest = now;
  }
  line.push(`100 ${down(last.total)}`);
  steps.push(`100 ${down(last.rest)}`);
  const joined = line.join('L');
  return {
    total: `M${joined}`,
    all: `M0 100L${joined}L100 100Z`,
    resting: `M0 100L${steps.join('L')}L100 100Z`,
    fell: fell.join(''),
    grid: lines.map((grams) => `M0 ${down(grams)}H100`).join(''),
    grams: lines.map((value) => ({ at: Number(down(value)), value })),
    isShort: to - from < shortSpan,
    times: Array.from({ length: marks }, (_, mark) => {
      const value = Math.round(from + ((to - from) * mark) / (marks - 1));
      return { at: placeOn({ from, to }, value), value };
    }),
  };
}

function short(place: number): string {
  return place.toFixed(2);
}
