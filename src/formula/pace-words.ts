import { writeNumber } from '../measure/write-quantity';
import type { LearnedPace } from './learn-pace';

/** What the log has taught: `From 4 batches: this kitchen ripens 1.2 times as fast as the usual (likely 1.0–1.4).` */
export function describePace({ pace, low, high, count }: LearnedPace, decimalComma: boolean): string {
  const [k, from, to] = [pace, low, high].map((value) => writeNumber(value, places(value), decimalComma));
  const batches = count === 1 ? '1 batch' : `${count} batches`;
  return `From ${batches}: this kitchen ripens ${k} times as fast as the usual (likely ${from}–${to}).`;
}

/** Below 1 a tenth is too coarse to tell slow kitchens apart. */
function places(value: number): number {
  return value < 1 ? 2 : 1;
}
