import { writeNumber } from '../../measure/write-quantity';
import { coefficients } from '../recipe/coefficients';
import type { LearnedPace } from './learn-pace';

/** Why what was found at a carton says nothing of the kitchen. */
export const cartonTeachesNothing =
  'Teaches nothing about this kitchen: some cartons turn late or never, and that is the carton.';

/**
 * What the log has taught: `From 4 batches: this kitchen ripens 1.2 times as fast as the usual (likely 1.0–1.4).` Where
 * the sheet counts with another pace than that, as beyond what may be typed for it, that is said as well.
 */
export function describePace(
  { pace, low, high, count }: LearnedPace,
  counted: number | null,
  decimalComma: boolean,
): string {
  const write = (value: number): string => writeNumber(value, places(value), decimalComma);
  const batches = count === 1 ? '1 batch' : `${count} batches`;
  const taught = `From ${batches}: this kitchen ripens ${write(pace)} times as fast as the usual (likely ${write(low)}–${write(high)}).`;
  if (counted === null || write(counted) === write(pace)) return taught;
  const { least, most } = coefficients.pace;
  const why = counted === most ? ', the most that it takes' : counted === least ? ', the least that it takes' : '';
  return `${taught} The sheet counts with ${write(counted)}${why}.`;
}

/** Below 1 a tenth is too coarse to tell slow kitchens apart. */
function places(value: number): number {
  return value < 1 ? 2 : 1;
}
