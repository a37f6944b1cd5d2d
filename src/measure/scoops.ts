import { chooseRung, findDrawer } from './scoop-ladder';
import { type ScoopId, type ScoopPart, type ScoopSet, scoops } from './scoop-set';
import type { CupStandardId } from './units';
import { writeFraction } from './vulgar-fractions';

export { type ScoopId, type ScoopPart, type ScoopSet, scoops, usualScoopSet } from './scoop-set';

export type Scooped = {
  /** Largest scoop first. */
  readonly parts: readonly ScoopPart[];
  /** What the scoops hold, in mL. */
  readonly volume: number;
  /** (held − wanted) ÷ wanted: 0.01 is one per cent too much. */
  readonly error: number;
  /** The smallest scoop of the set; null where nothing can be scooped at all. */
  readonly smallest: ScoopId | null;
};

/** How near scoops have to come, as shares of the amount. */
export interface Nearness {
  /** One measure of cups this near is enough: a second scoop would mend less than a cup repeats to. */
  readonly enough: number;
  /** Further off than this, smaller spoons are taken. */
  readonly most: number;
}

/**
 * The scoops for a volume in mL, at most two of them, each as often as it does not fill a larger measure. Below the
 * smallest cup owned it is the nearest half teaspoon; from there on a single number of cups where that is near enough,
 * else the nearest of two scoops. Where that is off by more than `most`, also quarter and then eighth teaspoons are
 * used. What is held never falls as the volume grows.
 * Under half the smallest scoop no parts and error −1; so too, with `smallest` null, for an empty set and for a
 * volume that is below zero, not finite or beyond what doubles can count.
 */
export function measureInScoops(volume: number, set: ScoopSet, cups: CupStandardId, near: Nearness): Scooped {
  const drawer = findDrawer(set, cups);
  const ticks = drawer === null ? Number.NaN : volume / drawer.tickVolume;
  if (drawer === null || !Number.isFinite(ticks) || ticks < 0)
    return { parts: [], volume: 0, error: -1, smallest: null };
  const { tickVolume } = drawer;
  const smallest = drawer.smallest.id;
  let best: Scooped = { parts: [], volume: 0, error: volume === 0 ? 0 : -1, smallest };
  if (ticks < drawer.smallest.ticks / 2) return best;
  for (const ladder of drawer.ladders) {
    const rung = chooseRung(ladder, ticks, near.enough);
    const held = rung.ticks * tickVolume;
    best = { parts: rung.parts, volume: held, error: (held - volume) / volume, smallest };
    if (Math.abs(best.error) <= near.most) break;
  }
  return best;
}

const hardSpace = '\u00A0';

/**
 * The scoops in words: "2 ½ cups", "2 tbsp + 1 ½ tsp", no part broken across lines. Nothing scooped is "0", "less than
 * ⅛ tsp" by the smallest scoop owned, or a dash where there is no scoop or no volume. The error is not written.
 */
export function writeScoops({ parts, smallest, error }: Scooped): string {
  if (smallest === null) return '–';
  const [first, second] = parts;
  if (first === undefined)
    return error === 0 ? '0' : `less than${hardSpace}${writePart({ scoop: smallest, count: 1 })}`;
  if (second === undefined) return writePart(first);
  const whole = scoops[first.scoop];
  const { measure, part } = scoops[second.scoop];
  // Whole measures and parts of one are a single number: 3 cups and ¼ cup are "3 ¼ cups".
  if (whole.part === 1 && whole.measure === measure)
    return withMeasure(first.count * part + second.count, part, measure);
  return `${writePart(first)} + ${writePart(second)}`;
}

/** One scoop, so and so often: "2 tbsp", "¾ cup". */
export function writePart({ scoop, count }: ScoopPart): string {
  const { measure, part } = scoops[scoop];
  // Where a kitchen has none that holds it whole, it is so many dips: "4 × ½ cup".
  if (part > 1 && count % part === 0) return `${count}${hardSpace}×${hardSpace}${withMeasure(1, part, measure)}`;
  return withMeasure(count, part, measure);
}

function withMeasure(count: number, part: number, measure: string): string {
  return `${writeFraction(count, part)}${hardSpace}${measure}${measure === 'cup' && count > part ? 's' : ''}`;
}
