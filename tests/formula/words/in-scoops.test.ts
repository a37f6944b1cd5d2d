import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { doScoopsDo, inScoops, writeInScoops } from '../../../src/formula/words/in-scoops';
import { type Kitchen, writeValue } from '../../../src/formula/words/write-row';
import { readQuantity } from '../../../src/measure/read-quantity';
import { type ScoopSet, usualScoopSet } from '../../../src/measure/scoops';
import { cupStandards } from '../../../src/measure/units';

const kitchen: Kitchen = { leads: 'us', cups: 'us', scoops: usualScoopSet, decimalComma: false };
const cup = 236.5882365;
const tsp = cup / 48;
const plain = (text: string | null) => text?.replaceAll('\u00A0', ' ') ?? null;

describe('an amount in scoops', () => {
  test.each([
    [0.78 * cup, 'about ¾ cup, 4 % short'],
    [3.2 * tsp, 'about 1 tbsp, 6 % short'],
    [2.9 * tsp, 'about 1 tbsp, 3 % over'],
    [0.995 * cup, '1 cup'],
    [0, '0'],
  ])('%d mL is %s', (volume, written) => {
    expect(plain(writeValue(volume, 'volume', null, kitchen).us)).toBe(written);
  });

  const sets: fc.Arbitrary<ScoopSet> = fc.record({
    cups: fc.subarray([...usualScoopSet.cups]),
    tablespoon: fc.boolean(),
    teaspoons: fc.subarray([...usualScoopSet.teaspoons]),
  });
  const kitchens = fc
    .record({ scoops: sets, cups: fc.constantFrom(...Object.values(cupStandards).map(({ id }) => id)) })
    .map((own): Kitchen => ({ ...kitchen, ...own }));
  const anyVolume = fc.double({ min: -1, max: 4, noNaN: true }).map((power) => 10 ** power);

  test('says “about” and by how much just where it is more than 1 % off', () => {
    fc.assert(
      fc.property(anyVolume, kitchens, (volume, own) => {
        const scooped = inScoops(volume, own);
        fc.pre(scooped.parts.length > 0);
        const written = plain(writeValue(volume, 'volume', null, own).us) ?? '';
        const off = 100 * scooped.error;
        expect(written.startsWith('about ')).toBe(Math.abs(off) > 1);
        const said = /, (\d+) % (short|over)$/.exec(written);
        expect(said !== null).toBe(Math.abs(off) > 1);
        if (said !== null)
          expect(Math.abs(Number(said[1]) * (said[2] === 'short' ? -1 : 1) - off)).toBeLessThanOrEqual(0.5001);
      }),
      { numRuns: 1000 },
    );
  });

  test('is read back as what the scoops hold, as it is written in a cell', () => {
    fc.assert(
      fc.property(anyVolume, kitchens, (volume, own) => {
        const scooped = inScoops(volume, own);
        fc.pre(scooped.parts.length > 0);
        const options = { kind: 'volume', bareUnit: 'mL', cups: own.cups, decimalComma: false } as const;
        const read = readQuantity(writeValue(volume, 'volume', null, own).us ?? '', options);
        const amount = read.ok ? read.reading.amount : Number.NaN;
        expect(amount / scooped.volume).toBeCloseTo(1, 12);
        // Typed again it stays: what it holds is no longer “about”.
        expect(writeInScoops(inScoops(amount, own))).toBe(
          writeInScoops(scooped)
            .replace(/^about\u00A0/, '')
            .replace(/, \d.*$/, ''),
        );
      }),
      { numRuns: 1000 },
    );
  });
});

describe('a weight that no spoon comes near', () => {
  test('is to be weighed, and reads back as that weight', () => {
    const weighed = writeValue(0.4, 'mass', 0.85, kitchen);
    expect(doScoopsDo(inScoops(0.4 / 0.85, kitchen))).toBe(false);
    expect(weighed.spoons).toBeNull();
    expect(plain(weighed.us)).toBe('0.01 oz, weigh it');
    const options = { kind: 'mass', bareUnit: 'oz', cups: 'us', decimalComma: false } as const;
    const read = readQuantity(weighed.us ?? '', options);
    expect(read.ok ? read.reading.amount : read.problem).toBeCloseTo(0.01 * 28.349523125, 9);
  });

  test('is so too where no scoop is owned; nothing at all needs no scale', () => {
    const none = { ...kitchen, scoops: { cups: [], tablespoon: false, teaspoons: [] } };
    expect(plain(writeValue(26, 'mass', 0.85, none).us)).toBe('0.92 oz, weigh it');
    expect(plain(writeValue(0, 'mass', 0.85, kitchen).us)).toBe('0 · 0 oz');
  });

  test('what is poured is told as near as it comes', () => {
    const only = { ...kitchen, scoops: { cups: ['1' as const], tablespoon: false, teaspoons: [] } };
    expect(plain(writeValue(1.4 * cup, 'volume', null, only).us)).toBe('about 1 cup, 29 % short');
  });
});
