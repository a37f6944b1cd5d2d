import { chooseRung, findLadder } from './scoop-ladder';
import { type ScoopId, type ScoopPart, type ScoopSet, scoops } from './scoop-set';
import type { CupStandardId } from './units';
import { writeNumber } from './write-quantity';

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

/**
 * The scoops for a volume in mL: as many of the largest as fit, then parts of a cup and of a teaspoon once each,
 * whole spoons while they do not fill the next scoop up. Among the ways within 1 % the fewest different scoops
 * (ties: nearest, then fewest dips); if none is within 1 %, the nearest, with its error.
 * Under half the smallest scoop no parts and error −1; so too, with `smallest` null, for an empty set and for a
 * volume that is below zero, not finite or beyond what doubles can count.
 */
export function measureInScoops(volume: number, set: ScoopSet, cups: CupStandardId): Scooped {
  const ladder = findLadder(set, cups);
  const ticks = ladder === null ? Number.NaN : volume / ladder.tickVolume;
  if (ladder === null || !Number.isFinite(ticks) || ticks < 0)
    return { parts: [], volume: 0, error: -1, smallest: null };
  const { smallest } = ladder;
  if (volume === 0) return { parts: [], volume: 0, error: 0, smallest };
  if (ticks < ladder.smallestTicks / 2) return { parts: [], volume: 0, error: -1, smallest };
  const rung = chooseRung(ladder, ticks);
  const held = rung.ticks * ladder.tickVolume;
  return { parts: rung.parts, volume: held, error: (held - volume) / volume, smallest };
}

const hardSpace = '\u00A0';

/**
 * The scoops in words: "2 ½ cups + ⅓ cup + 2 tbsp", no part broken across lines. Nothing scooped is "0",
 * "less than ⅛ tsp" by the smallest scoop owned, or a dash where there is no scoop or no volume.
 * An error above 1 % is not written; it stands in `error`.
 */
export function writeScoops(scooped: Scooped, decimalComma = false): string {
  const { parts, smallest, error } = scooped;
  if (smallest === null) return '–';
  if (parts.length === 0) {
    return error === 0
      ? '0'
      : `less than${hardSpace}${writePart({ scoop: smallest, count: 1 }, undefined, decimalComma)}`;
  }
  const written: string[] = [];
  for (let index = 0; index < parts.length; index += 1) {
    const part = parts[index];
    if (part === undefined) break;
    const fraction = findFraction(part, parts[index + 1]);
    written.push(writePart(part, fraction, decimalComma));
    if (fraction !== undefined) index += 1;
  }
  return written.join(' + ');
}

/** Whole measures and the largest part of the same measure are said together: 3 cups and ¼ cup are "3 ¼ cups". */
function findFraction(part: ScoopPart, next: ScoopPart | undefined): ScoopPart | undefined {
  if (next === undefined || scoops[part.scoop].part !== 1) return undefined;
  const sameMeasure = scoops[part.scoop].measure === scoops[next.scoop].measure;
  return sameMeasure ? next : undefined;
}

function writePart(part: ScoopPart, fraction: ScoopPart | undefined, decimalComma: boolean): string {
  const { measure, part: share, written } = scoops[part.scoop];
  const count = writeNumber(part.count, 0, decimalComma);
  if (share !== 1) {
    const times = part.count === 1 ? '' : `${count}${hardSpace}×${hardSpace}`;
    return `${times}${written}${hardSpace}${measure}`;
  }
  const plural = measure === 'cup' && (part.count > 1 || fraction !== undefined) ? 's' : '';
  const tail = fraction === undefined ? '' : `${hardSpace}${scoops[fraction.scoop].written}`;
  return `${count}${tail}${hardSpace}${measure}${plural}`;
}
