import { convertNumber } from '../../measure/units';
import type { GrainKind } from '../../reference/grains';
import { grains as kinds } from '../../reference/grains';
import type { Coefficient } from '../../reference/origins';
import { stockRest } from '../../reference/stock-rest';
import type { Instant } from '../time/event';
import type { WallClock } from '../time/span';
import type { Ledger, Place } from './ledger';

/** What grains rest in, and are fed with. */
export interface RestLiquid {
  readonly medium: 'sugarWater' | 'dairy';
  /** Water or milk, mL. */
  readonly volume: number;
  /** Cane sugar for it, g; 0 in milk. */
  readonly sugar: number;
}

/**
 * The liquid for so many grams of grains to rest in: water for as many litres as they would carry of milk, with sugar at
 * a strength in g/L; or dairy milk at 10 % of grains.
 */
export function restLiquid(grains: GrainKind, grams: number, strength = stockRest.sugarWater.value): RestLiquid {
  const held = Math.max(grams, 0);
  if (grains === 'milk') return { medium: 'dairy', volume: (1000 * held) / stockRest.dairy.value, sugar: 0 };
  const volume = (1000 * held) / kinds.water.dose.value;
  return { medium: 'sugarWater', volume, sugar: (strength * volume) / 1000 };
}

/** The liquid of each day of waking grains up: dairy, or sugar water at its own strength. */
export function reviveLiquid(grains: GrainKind, grams: number): RestLiquid {
  if (grains === 'water') return restLiquid(grains, grams, stockRest.reviveSugar.value);
  return { medium: 'dairy', volume: (1000 * Math.max(grams, 0)) / stockRest.reviveDairy.value, sugar: 0 };
}

/** When the liquid of a resting jar is renewed; null where nothing is at rest, or it is frozen or dried. */
export interface Refresh {
  readonly due: Instant;
  /** From when on it may be, where there is a range. */
  readonly from: Instant;
  readonly by: Instant;
  readonly rule: Coefficient;
}

/** Where grains rest that nobody said a place of: on the worktop, which asks for fresh liquid soonest. */
const unknownPlace: Place = 'room';

/** How long a liquid lasts where they rest; null where no liquid is renewed. */
export function refreshRule(grains: GrainKind, place: Place | null): Coefficient | null {
  const at = place ?? unknownPlace;
  if (at === 'freezer' || at === 'dried') return null;
  const isCold = at === 'fridge';
  if (grains === 'water') return isCold ? stockRest.waterCold : stockRest.waterRoom;
  return isCold ? stockRest.milkCold : stockRest.milkRoom;
}

/** The next renewal, at the same time of day as the last; null where nothing rests, or nobody said since when. */
export function refreshOf(grains: GrainKind, ledger: Ledger, clock: Pick<WallClock, 'later'>): Refresh | null {
  const { rest, place, freshSince } = ledger;
  const rule = refreshRule(grains, place);
  if (rule === null || freshSince === null || !(rest > 0)) return null;
  const later = (days: number): Instant => clock.later(freshSince, days);
  return { due: later(rule.value), from: later(rule.low ?? rule.value), by: later(rule.high ?? rule.value), rule };
}

/** Until when grains put by for long are good; null where they are not, or nobody said since when. */
export function keepsUntil({ place, points }: Ledger, clock: Pick<WallClock, 'later'>): Instant | null {
  if (place !== 'freezer' && place !== 'dried') return null;
  const put = points.findLast(({ entry }) => entry.place === place)?.entry;
  const days = place === 'freezer' ? stockRest.frozenKeeps.value : stockRest.driedKeeps.value;
  return put === undefined ? null : clock.later(put.at, days);
}

/** How many batches of plant milk are left before a round in dairy is due; 0 and below where it is. */
export function plantBatchesLeft({ plantBatches }: Pick<Ledger, 'plantBatches'>): number {
  return stockRest.dairyRoundAfter.value - plantBatches;
}

/** What a run of plant milks has made of each gram of milk grains that were weighed in it; null where none were. */
export function runGrowth({ rounds, runSince }: Pick<Ledger, 'rounds' | 'runSince'>): number | null {
  const inRun = rounds.filter(({ at, source }) => source !== null && at >= (runSince ?? at));
  return inRun.length === 0 ? null : inRun.reduce((factor, { before, after }) => factor * (after / before), 1);
}

/** How long the dairy round lasts, min. */
export const dairyRoundMinutes = convertNumber(stockRest.dairyRound.value, 'h', 'min');
