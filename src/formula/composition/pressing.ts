import { coefficientInEffect, type Fixed } from '../recipe/coefficients';

/** What differs from bag to bag and hand to hand, as shares. */
export type PressedId = 'passing' | 'pulpMoisture' | 'handlingLoss';
export type Pressing = Readonly<Record<PressedId, number>>;

export type RangeEnd = 'low' | 'high';

/** Which ends of the three give the least and the most milk, and the thinnest and the richest. */
export const extremes = {
  leastMilk: { passing: 'low', pulpMoisture: 'high', handlingLoss: 'high' },
  mostMilk: { passing: 'high', pulpMoisture: 'low', handlingLoss: 'low' },
  leastSolids: { passing: 'low', pulpMoisture: 'low', handlingLoss: 'high' },
  mostSolids: { passing: 'high', pulpMoisture: 'high', handlingLoss: 'low' },
} as const satisfies Record<string, Readonly<Record<PressedId, RangeEnd>>>;
export type Extreme = keyof typeof extremes;

/** An end of the range of a share; the cook's own, and one that was measured, has no other than itself. */
export function endOfShare(x: Fixed, id: PressedId, end: RangeEnd): number {
  const value = x.c(id);
  const found = coefficientInEffect(id, x.recipe, x.choices);
  return found.value === value ? (found[end] ?? value) : value;
}

/** The three shares at an extreme. */
export function pressingAt(x: Fixed, extreme: Extreme): Pressing {
  const ends = extremes[extreme];
  return {
    passing: endOfShare(x, 'passing', ends.passing),
    pulpMoisture: endOfShare(x, 'pulpMoisture', ends.pulpMoisture),
    handlingLoss: endOfShare(x, 'handlingLoss', ends.handlingLoss),
  };
}
