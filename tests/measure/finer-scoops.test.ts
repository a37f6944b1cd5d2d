import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { writeFinely } from '../../src/measure/finer-scoops';
import { readQuantity } from '../../src/measure/read-quantity';
import { usualScoopSet } from '../../src/measure/scoops';

const plain = (text: string | null) => text?.replaceAll('\u00A0', ' ') ?? null;
const finely = (volume: number) => plain(writeFinely(volume, usualScoopSet, 'us', 0.01));

describe('a volume by as many scoops as it takes', () => {
  test.each([
    [512, '2 cups + 2 tbsp + 2 tsp'],
    [471, '2 cups'],
    [100, '⅓ cup + 1 tbsp + 1 tsp + ¼ tsp'],
    [1.24, '¼ tsp'],
  ])('%d mL is %s', (volume, written) => {
    expect(finely(volume)).toBe(written);
  });

  test('is null where no scoop is small enough, and for no volume', () => {
    for (const volume of [0.2, 0, -3, Number.NaN, Number.POSITIVE_INFINITY]) expect(finely(volume)).toBeNull();
    expect(writeFinely(100, { cups: [], tablespoon: false, teaspoons: [] }, 'us', 0.01)).toBeNull();
  });

  test('reads back within 1 %', () => {
    fc.assert(
      fc.property(fc.double({ min: 40, max: 9000, noNaN: true }), (volume) => {
        const options = { kind: 'volume', bareUnit: 'mL', cups: 'us', decimalComma: false } as const;
        const read = readQuantity(finely(volume) ?? '', options);
        expect(read.ok ? Math.abs(read.reading.amount / volume - 1) : read.problem).toBeLessThanOrEqual(0.0100001);
      }),
      { numRuns: 500 },
    );
  });
});
