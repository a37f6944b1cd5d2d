import { acidTime } from '../../reference/acid-time';
import { kitchen } from '../../reference/kitchen';
import type { Formulation } from '../engine/formulate';
import { hoursAsSafe, turnTimeAt } from '../models/turn-time';

/** Hours that a homemade milk has to turn sour. */
export interface TurnTime {
  readonly plain: number;
  /** Once its pH was seen to fall; more than `plain` but in the usual room. */
  readonly falling: number;
}

/**
 * In which time this batch must have turned sour, if it is a homemade milk. Once it was seen to fall it has as much
 * growth as in the usual room where it is colder, and half as long again where it is warmer.
 */
export function turnTimeOf({ rows }: Pick<Formulation, 'rows'>): TurnTime {
  const { value } = rows.roomTemperature;
  return turnTimesAt(typeof value === 'number' ? value : Number.NaN);
}

export function turnTimesAt(celsius: number): TurnTime {
  const hours = hoursAsSafe(celsius);
  const day = kitchen.acidityTime.value;
  const most = hours > day ? Math.min(hours, acidTime.longest.value) : Math.min(hours * acidTime.halfAgain.value, day);
  return { plain: turnTimeAt(celsius), falling: Math.round(most) };
}
