import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readQuantity } from '../../src/measure/read-quantity';
import { measureInScoops, type ScoopSet, usualScoopSet, writeScoops } from '../../src/measure/scoops';
import { type CupStandardId, cupStandards } from '../../src/measure/units';

const cup = 236.5882365;
const tsp = cup / 48;
const plain = (text: string) => text.replaceAll('\u00A0', ' ');
const scoop = (volume: number, cups: CupStandardId = 'us', set: ScoopSet = usualScoopSet) =>
  plain(writeScoops(measureInScoops(volume, set, cups)));

describe('measuring with the usual scoops', () => {
  test.each([
    [512, '2 cups + 2 tbsp + 2 tsp'],
    [769, '3 ¼ cups'],
    [cup, '1 cup'],
    [235, '1 cup'],
    [cup * (2 + 1 / 2 + 1 / 3), '2 ½ cups + ⅓ cup'],
    [cup / 2, '½ cup'],
    [2 * 3 * tsp, '2 tbsp'],
    [tsp / 4, '¼ tsp'],
    [tsp * 1.5, '1 ½ tsp'],
    [250, '1 cup + 1 tbsp'],
    [1_000_000, '4227 cups'],
    [0, '0'],
    [0.3, 'less than ⅛ tsp'],
    [0.31, '⅛ tsp'],
  ])('US: %d mL is %s', (volume, written) => {
    expect(scoop(volume)).toBe(written);
  });

  // By the US label 120 mL is half a cup; by the customary cup that is 1.4 % short, which a quarter teaspoon mends.
  test.each([
    [120, 'us-label', '½ cup'],
    [30, 'us-label', '2 tbsp'],
    [120, 'us', '½ cup + ¼ tsp'],
    [30, 'us', '2 tbsp + ⅛ tsp'],
    [60, 'metric', '4 tbsp'],
    [60, 'metric-20', '3 tbsp'],
    [1000, 'metric', '4 cups'],
  ] as const)('%d mL by the standard %s is %s', (volume, cups, written) => {
    expect(scoop(volume, cups)).toBe(written);
  });

  test('tells the error of what can only be approached', () => {
    const { error, volume } = measureInScoops(1, usualScoopSet, 'us');
    expect(volume).toBeCloseTo(tsp / 4, 12);
    expect(error).toBeCloseTo(tsp / 4 - 1, 12);
  });

  test('writes each part so that it does not break', () => {
    const written = writeScoops(measureInScoops(512, usualScoopSet, 'us'));
    expect(written).toBe('2\u00A0cups + 2\u00A0tbsp + 2\u00A0tsp');
  });

  test('gives a dash for a volume that is none', () => {
    for (const volume of [Number.NaN, Number.POSITIVE_INFINITY, -5]) expect(scoop(volume)).toBe('–');
  });
});

describe('measuring with other sets', () => {
  const only = (set: Partial<ScoopSet>): ScoopSet => ({ cups: [], tablespoon: false, teaspoons: [], ...set });

  test('fills the largest scoop as often as it fits where there is no whole cup', () => {
    expect(scoop(2 * cup, 'us', only({ cups: ['1/2'], teaspoons: ['1/2'] }))).toBe('4 × ½ cup');
    expect(scoop(12 * tsp, 'us', only({ tablespoon: true }))).toBe('4 tbsp');
  });

  test('takes more tablespoons where no smaller cup is owned', () => {
    expect(scoop(7 * 3 * tsp, 'us', only({ cups: ['1'], tablespoon: true }))).toBe('7 tbsp');
  });

  test('gives the nearest where nothing is near', () => {
    const scooped = measureInScoops(1.4 * cup, only({ cups: ['1'] }), 'us');
    expect(scooped.parts).toEqual([{ scoop: '1 cup', count: 1 }]);
    expect(scooped.error).toBeCloseTo(1 / 1.4 - 1, 12);
  });

  test('takes the fewer dips of two that are equally near', () => {
    const spoons = only({ tablespoon: true, teaspoons: ['1'] });
    expect(scoop(2.5 * tsp, 'us', spoons)).toBe('1 tbsp');
    expect(scoop(1.5 * tsp, 'us', spoons)).toBe('1 tsp');
  });

  test('names the smallest scoop owned, and a dash for an empty set', () => {
    expect(scoop(1, 'us', only({ cups: ['1/4'] }))).toBe('less than ¼ cup');
    expect(scoop(100, 'us', only({}))).toBe('–');
  });

  test('does not mind the order in which a set is listed', () => {
    const shuffled: ScoopSet = {
      cups: ['1/4', '1', '1/3', '1/2'],
      tablespoon: true,
      teaspoons: ['1/8', '1', '1/4', '1/2'],
    };
    expect(measureInScoops(512, shuffled, 'us')).toEqual(measureInScoops(512, usualScoopSet, 'us'));
  });
});

/** Every writing the rule allows with the usual US scoops, counted out plainly: its volume and its different scoops. */
function listWritings(wholes: number): readonly { readonly volume: number; readonly tools: number }[] {
  const writings = [{ volume: (wholes + 1) * cup, tools: 1 }];
  const once = [0, 1];
  for (const half of once)
    for (const third of once)
      for (const quarter of once)
        for (const tablespoons of [0, 1, 2, 3])
          for (const teaspoons of [0, 1, 2])
            for (const halfTsp of once)
              for (const quarterTsp of once)
                for (const eighthTsp of once) {
                  const counts = [wholes, half, third, quarter, tablespoons, teaspoons, halfTsp, quarterTsp, eighthTsp];
                  const inTsp = half * 24 + third * 16 + quarter * 12 + tablespoons * 3 + teaspoons;
                  const parts = halfTsp / 2 + quarterTsp / 4 + eighthTsp / 8;
                  const volume = wholes * cup + (inTsp + parts) * tsp;
                  writings.push({ volume, tools: counts.filter((count) => count > 0).length });
                }
  return writings.filter(({ tools }) => tools > 0);
}

describe('against counting out every writing', () => {
  test('is within 1 % whenever some writing is, with the fewest scoops that are; else it is the nearest', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.4, max: 2500, noNaN: true }), (volume) => {
        const writings = listWritings(Math.floor(volume / cup));
        const errors = writings.map((writing) => ({ ...writing, off: Math.abs(writing.volume / volume - 1) }));
        const near = errors.filter(({ off }) => off <= 0.01);
        const scooped = measureInScoops(volume, usualScoopSet, 'us');
        if (near.length > 0) {
          const fewest = Math.min(...near.map(({ tools }) => tools));
          const nearest = Math.min(...near.filter(({ tools }) => tools === fewest).map(({ off }) => off));
          expect(scooped.parts).toHaveLength(fewest);
          expect(Math.abs(scooped.error)).toBeCloseTo(nearest, 9);
        } else {
          expect(Math.abs(scooped.error)).toBeCloseTo(Math.min(...errors.map(({ off }) => off)), 9);
        }
      }),
      { numRuns: 500 },
    );
  });

  test('gives whole cups and their parts back as they were', () => {
    const parts = { '½': 1 / 2, '⅓': 1 / 3, '¼': 1 / 4 } as const;
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 20 }), fc.constantFrom('½', '⅓', '¼'), (wholes, part) => {
        expect(scoop(wholes * cup)).toBe(`${wholes} cups`);
        expect(scoop((wholes + parts[part]) * cup)).toBe(`${wholes} ${part} cups`);
      }),
    );
  });

  test('is written so that it reads back as the volume it holds, in every standard', () => {
    const standards = Object.values(cupStandards).map((standard) => standard.id);
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e6, noNaN: true }), fc.constantFrom(...standards), (wanted, cups) => {
        const scooped = measureInScoops(wanted, usualScoopSet, cups);
        const options = { kind: 'volume', bareUnit: 'mL', cups, decimalComma: false } as const;
        const result = readQuantity(writeScoops(scooped), options);
        expect(result.ok ? result.reading.amount / scooped.volume : result.problem).toBeCloseTo(1, 12);
      }),
      { numRuns: 1000 },
    );
  });
});
