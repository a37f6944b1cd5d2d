import fc from 'fast-check';
import quantities from 'js-quantities';
import { describe, expect, test } from 'vitest';
import { convertNumber, type UnitId, units } from '../../src/measure/units';

// js-quantities 1.8.0, an independent table of units. It keeps rounded factors where ours are exact: its psi is
// 6894.76 Pa, 3.9e-7 too large, and its kitchen volumes and ounces have nine digits or so. Hence 1e-6: above the
// worst of its roundings, and far below any mix-up of units that taste alike (US and imperial, cup and metric cup).
const tolerance = 1e-6;

const theirName = new Map<UnitId, string>([
  ['g', 'g'],
  ['kg', 'kg'],
  ['mg', 'mg'],
  ['lb', 'lb'],
  ['oz', 'oz'],
  ['mL', 'ml'],
  ['cL', 'cl'],
  ['dL', 'dl'],
  ['L', 'l'],
  ['in3', 'in^3'],
  ['gal', 'gal'],
  ['qt', 'qt'],
  ['pt', 'pint'],
  ['cup', 'cup'],
  ['flOz', 'floz'],
  ['tbsp', 'tbsp'],
  ['tsp', 'tsp'],
  ['cm', 'cm'],
  ['mm', 'mm'],
  ['in', 'in'],
  ['°C', 'tempC'],
  ['°F', 'tempF'],
  ['Δ°C', 'degC'],
  ['Δ°F', 'degF'],
  ['h', 'h'],
  ['min', 'min'],
  ['s', 's'],
  ['day', 'day'],
  ['bar', 'bar'],
  ['kPa', 'kPa'],
  ['Pa', 'Pa'],
  ['atm', 'atm'],
  ['psi', 'psi'],
]);

const shared = [...theirName.keys()];
const pairs = shared.flatMap((from) =>
  shared.filter((to) => to !== from && units[to].kind === units[from].kind).map((to) => ({ from, to })),
);

describe('an independent table of units', () => {
  test('agrees on 1,000 conversions picked at random', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(
        fc.constantFrom(...pairs),
        fc.double({ min: 0.001, max: 1e6, noNaN: true }),
        ({ from, to }, value) => {
          const theirs = quantities.swiftConverter(theirName.get(from) ?? '', theirName.get(to) ?? '')(value);
          const ours = convertNumber(value, from, to);
          seen.add(`${from} ${to}`);
          // Near the zero of a temperature scale the two are subtracted from hundreds of kelvin, so size counts from 300.
          const size = units[from].kind === 'temperature' ? Math.max(Math.abs(ours), 300) : Math.abs(ours);
          expect(Math.abs(theirs - ours)).toBeLessThanOrEqual(tolerance * size);
        },
      ),
      { numRuns: 1000 },
    );
    expect(seen.size).toBeGreaterThan(pairs.length / 2);
  });

  test('would notice an imperial quart in place of a US one', () => {
    const imperial = quantities.swiftConverter('pint-imp', 'ml')(2);
    expect(Math.abs(imperial - convertNumber(1, 'qt', 'mL')) / imperial).toBeGreaterThan(0.1);
  });
});
