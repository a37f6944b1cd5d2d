import type { Formulation } from '../engine/formulate';
import { severities } from '../recipe/problem';
import { bothUnits } from '../words/both-units';
import { describeProblem } from '../words/words';
import { type Kitchen, writeRow, writeValue } from '../words/write-row';
import type { RipeningPoint } from './ripening-chart';

/** A line of the table that says the chart: a temperature in both units and its hours. */
export interface RipeningLine {
  readonly room: string;
  readonly soonest: string;
  readonly likely: string;
  readonly latest: string;
}

/** The chart as a table, a line a degree. */
export function ripeningLines(points: readonly RipeningPoint[], kitchen: Kitchen): readonly RipeningLine[] {
  return points.map(({ celsius, soonest, likely, latest }) => ({
    room: degreesOf(celsius, kitchen),
    soonest: hoursOf(soonest, kitchen),
    likely: hoursOf(likely, kitchen),
    latest: hoursOf(latest, kitchen),
  }));
}

/** When this batch is ready in its room, or why that can’t be told. */
export function describeReady(formulation: Formulation, kitchen: Kitchen): string {
  const { readyTime, roomTemperature } = formulation.rows;
  const written = writeRow(formulation, 'readyTime', kitchen);
  if (written === null || typeof roomTemperature.value !== 'number') {
    const found = readyTime.problems.find(({ code }) => severities[code] === 'refusal');
    return found === undefined ? 'No time can be told yet.' : describeProblem(found, kitchen);
  }
  const range = written.range === null ? '' : `, somewhere in ${written.range}`;
  return `At ${degreesOf(roomTemperature.value, kitchen)} it is likely ready to taste after ${written.metric}${range}. An estimate: taste from the soonest on.`;
}

/** What the chart shows, in a sentence: the coolest and the warmest room it covers. */
export function describeChart(points: readonly RipeningPoint[], kitchen: Kitchen): string {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return '';
  const say = ({ celsius, likely }: RipeningPoint): string =>
    `${hoursOf(likely, kitchen)} at ${degreesOf(celsius, kitchen)}`;
  return `Hours until ready to taste against the temperature of the room: likely ${say(first)}, falling to ${say(last)}.`;
}

function hoursOf(value: number, kitchen: Kitchen): string {
  return writeValue(value, 'time', null, kitchen).metric;
}

function degreesOf(celsius: number, kitchen: Kitchen): string {
  return bothUnits(writeValue(celsius, 'temperature', null, kitchen), kitchen.leads);
}
