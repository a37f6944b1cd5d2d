import type { Sweetener } from '../../reference/sweeteners';
import { type Appetite, hexoseOf, hexoseOfUnknown, type Ranged } from './sugar';

/** Sweeteners with their shares of the mass, which add up to 1. */
export type Blend = readonly { readonly entry: Sweetener; readonly share: number }[];

/** Fermentable sugar of 1 g of one sweetener, g of hexose; 0 for one the grains cannot ferment. */
export function fermentableOfOne(entry: Sweetener, takes: Appetite): Ranged {
  if (entry.total) {
    const range = hexoseOfUnknown(entry.total.low / 100, entry.total.high / 100);
    return range;
  }
  const value = hexoseOf(entry.sugars, takes) / 100;
  return { value, low: value, high: value };
}

/** Fermentable sugar of 1 g of a blend, g of hexose: the weighted sum. */
export function fermentableOf(blend: Blend, takes: Appetite): Ranged {
  let [value, low, high] = [0, 0, 0];
  for (const { entry, share } of blend) {
    const one = fermentableOfOne(entry, takes);
    value += share * one.value;
    low += share * one.low;
    high += share * one.high;
  }
  return { value, low, high };
}

/** Weight of 1 mL of a blend, g, from published level spoons or cups; null where one of its parts has none. */
export function weightOf(blend: Blend): number | null {
  let volume = 0;
  for (const { entry, share } of blend) {
    if (!entry.spoon) return null;
    volume += (share * entry.spoon.millilitres) / entry.spoon.grams;
  }
  return volume > 0 ? 1 / volume : null;
}
