import { bottles } from '../../reference/bottles';

/**
 * By how much a pressure worked out for a sealed bottle (bar, 0 or more) may be higher for what the sums leave out, bar:
 * the air warms, the liquid swells, vapour, and a real gas. Holds for a bottle filled cold and warmed to 30 °C.
 */
export function leftOutAt(pressure: number): number {
  return bottles.pressureLeftOut.value + bottles.realGas.value * pressure ** 2;
}

/**
 * The pressure by these sums that brings a bottle to a limit, both in bar, once what they leave out is counted: the p of
 * p + leftOutAt(p) = limit, in closed form. 0 where the limit leaves no room.
 */
export function countedUnder(limit: number): number {
  const room = limit - bottles.pressureLeftOut.value;
  if (room <= 0) return 0;
  return (2 * room) / (1 + Math.sqrt(1 + 4 * bottles.realGas.value * room)); // algebra
}
