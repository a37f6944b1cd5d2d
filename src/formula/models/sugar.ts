import type { Sugars } from '../../reference/foods';
import { molarMasses } from '../../reference/physics';

export interface Appetite {
  readonly lactose: boolean;
  readonly galactose: boolean;
}

/** A worked figure with the range it may lie in; low = high when it is known. */
export interface Ranged {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Grams of hexose from 1 g of a disaccharide once water has split it: 2 × hexose ÷ disaccharide.
 * Source: molar masses in `reference/physics`; C₁₂H₂₂O₁₁ + H₂O → 2 C₆H₁₂O₆.
 */
export const hexosePerDisaccharide = (2 * molarMasses.hexose.value) / molarMasses.disaccharide.value;

/** Sum of the printed sugars, g per 100 g; a sugar with no figure adds nothing, so this is a least value. */
export function sumOfSugars(sugars: Sugars): number {
  return (
    (sugars.sucrose ?? 0) +
    (sugars.glucose ?? 0) +
    (sugars.fructose ?? 0) +
    (sugars.maltose ?? 0) +
    (sugars.lactose ?? 0) +
    (sugars.galactose ?? 0)
  );
}

/**
 * Fermentable sugar of 100 g, in g of hexose: glucose + fructose + (sucrose + maltose) × 1.05263, with galactose and
 * lactose only where the grains take them. A sugar with no figure adds nothing.
 */
export function hexoseOf(sugars: Sugars, takes: Appetite): number {
  const single = (sugars.glucose ?? 0) + (sugars.fructose ?? 0) + (takes.galactose ? (sugars.galactose ?? 0) : 0);
  const double = (sugars.sucrose ?? 0) + (sugars.maltose ?? 0) + (takes.lactose ? (sugars.lactose ?? 0) : 0);
  return single + double * hexosePerDisaccharide;
}

/**
 * Fermentable sugar, as hexose, of a total whose kinds are unknown: between all single sugars (× 1) and all double
 * (× 1.05263). The value is the midpoint, shown as an estimate.
 */
export function hexoseOfUnknown(low: number, high: number): Ranged {
  const top = high * hexosePerDisaccharide;
  return { low, high: top, value: (low + top) / 2 };
}
