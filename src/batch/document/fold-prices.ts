import { longestPrice, mostPackages } from './document-limits';
import type { SheetDocument } from './document-schema';
import { writeDecimal } from './write-decimal';

/**
 * A sheet of an earlier page, which kept what a kilogram of a sweetener costs, with a package of a kilogram for each
 * price; one that has a package already keeps that. A price with more digits than a package takes is no price of anything.
 */
export function foldPrices(document: SheetDocument): SheetDocument {
  const { prices, ...rest } = document;
  if (prices === undefined) return document;
  const packages = [...(document.packages ?? [])];
  for (const [id, perKilogram] of Object.entries(prices)) {
    const food = `sweetener.${id}`;
    const price = writeDecimal(perKilogram ?? 0);
    const isKnown = packages.some((one) => one.food === food);
    if (isKnown || price.length > longestPrice || packages.length >= mostPackages) continue;
    packages.push({ food, amount: { text: '1 kg', amount: 1000, kind: 'mass' }, price });
  }
  return packages.length > 0 ? { ...rest, packages } : rest;
}
