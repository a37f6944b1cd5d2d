import { expectedAcidity, expectedOf, expectedRoom, expectedTimes } from '../../reference/expected-acidity';
import type { Origin } from '../../reference/origins';
import type { Formulation } from '../engine/formulate';
import { timesAsLong } from '../models/ripening';

export interface ExpectedPH {
  readonly low: number;
  readonly high: number;
  readonly origin: Origin;
}

/**
 * Which pH to expect of this batch after so many hours in its room, as a range: that of its kind of source, with the
 * hours stretched as its ready time is, so that room (outside those of the table), dose, sugar and kitchen count. Null where nothing is known of the
 * source, or no time can be told. After the last of the hours that are known it stays there.
 */
export function expectedAcidityOf({ recipe, rows, of, choices }: Formulation, hours: number): ExpectedPH | null {
  const kind = expectedOf[recipe.source];
  const ready = rows.readyTime.value;
  if (kind === undefined || typeof ready !== 'number' || !(hours >= 0)) return null;
  const { low, high, origin } = expectedAcidity[kind];
  const { value: middle, low: coolest = middle, high: warmest = middle } = expectedRoom;
  const room = Math.min(Math.max(of('roomTemperature'), coolest), warmest);
  const { readyTime, readyTemperature } = choices.grain;
  const usual = readyTime.value * timesAsLong(room, readyTemperature.value).likely;
  const there = (hours * usual) / ready;
  return { low: drawn(low, there), high: drawn(high, there), origin };
}

/** Read off the straight lines between points at the known hours. */
function drawn(points: readonly number[], hours: number): number {
  const { hours: known } = expectedTimes;
  const last = points.at(-1) ?? Number.NaN;
  const after = known.findIndex((hour) => hour > hours);
  const [from = 0, to = 0] = [known[after - 1], known[after]];
  const [one, other] = [points[after - 1], points[after]];
  return one === undefined || other === undefined ? last : one + ((other - one) * (hours - from)) / (to - from);
}

/** By when a homemade milk is first measured, h: half of the time it has. */
export function firstReading(turnBy: number): number {
  return Math.floor(turnBy / 2);
}
