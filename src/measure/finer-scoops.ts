import { findDrawer } from './scoop-ladder';
import { type ScoopPart, type ScoopSet, writePart } from './scoops';
import type { CupStandardId } from './units';

/**
 * A volume in mL by as many scoops as it takes to be within `near` of it, a share, largest first: finer than a cup or a
 * spoon repeats, for those who want it all the same. Null where the smallest scoop is still too coarse, and for no volume.
 */
export function writeFinely(volume: number, set: ScoopSet, cups: CupStandardId, near: number): string | null {
  const drawer = findDrawer(set, cups);
  if (drawer === null || !(volume > 0) || !Number.isFinite(volume)) return null;
  const wanted = volume / drawer.tickVolume;
  let left = wanted;
  const parts: ScoopPart[] = [];
  for (const scoop of drawer.owned) {
    const dips = left / scoop.ticks;
    // More of it where that is near: 1.99 cups are two.
    const count = Math.abs(Math.ceil(dips) * scoop.ticks - left) <= near * wanted ? Math.ceil(dips) : Math.floor(dips);
    if (count > 0) parts.push({ scoop: scoop.id, count });
    left -= count * scoop.ticks;
    if (Math.abs(left) <= near * wanted) return parts.map(writePart).join(' + ');
  }
  return null;
}
