import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { growthFrom } from '../../../src/formula/stock/growth';
import { describeEntry, writeGrains } from '../../../src/formula/stock/line-words';
import { restLiquid } from '../../../src/formula/stock/rest';
import {
  describeCarries,
  describeDoubling,
  describeGrowth,
  describeLiquid,
  describePaceOf,
  describeUntil,
  nameOf,
  writeGrowth,
} from '../../../src/formula/stock/stock-words';
import { expectedGrowth } from '../../../src/reference/stock-growth';

const kitchen = { ...demo.settings, leads: 'metric', decimalComma: false } as const;
const plain = (text: string) => text.replaceAll('\u00A0', ' ');

test('says what grains carry, and by which dose', () => {
  expect(plain(describeCarries(62, { rate: 54, isBatch: false }, kitchen))).toBe(
    '1.15 L of milk at 54 g to a litre, the usual',
  );
  expect(plain(describeCarries(62, { rate: 40, isBatch: true }, kitchen))).toMatch(/as in this batch$/);
  const us = { ...kitchen, leads: 'us' } as const;
  expect(plain(describeCarries(62, { rate: 54, isBatch: false }, us))).toMatch(
    /cups.* at 51.1 g to a quart, the usual$/,
  );
  expect(plain(writeGrains(62, us))).toBe('62 g');
});

describe('growth in words', () => {
  test('has its range, and how it came about', () => {
    const growth = growthFrom([{ before: 50, after: 55 }], expectedGrowth.inPlantMilk);
    expect(writeGrowth(growth, false)).toMatch(/^×1\.0\d \(0\.\d\d to 1\.\d\d\)$/);
    expect(writeGrowth(growth, true)).toContain(',');
    expect(describeGrowth(growth, false)).toMatch(/^1\.10 is the geometric mean of back ÷ out over one batch\./);
    expect(describeGrowth(growthFrom([], expectedGrowth.inPlantMilk), false)).toMatch(/^None weighed yet: ×1\.00/);
    expect(nameOf({ source: 'soy' })).toBe('soybeans');
    expect(nameOf({ medium: 'sugarWater' })).toBe('sugar water');
  });

  test('tells of doubling only where they surely grow', () => {
    expect(describeDoubling(growthFrom([], expectedGrowth.milkInSoy))).toBe('likely twice the weight after 4 batches');
    expect(describeDoubling(growthFrom([], expectedGrowth.inPlantMilk))).toBeNull();
  });
});

test('never says for certain when there is enough', () => {
  const say = (soonest: number | null, likely: number | null, latest: number | null) =>
    describeUntil({ soonest, likely, latest });
  expect(say(0, 0, 0)).toBe('There is enough now.');
  expect(say(5, 7, 11)).toBe('Likely after 7 batches: 5 at best, 11 at worst.');
  expect(say(5, 7, null)).toBe('Likely after 7 batches, at best 5; it may also never be.');
  expect(say(15, null, null)).toBe('Not in sight, at best after 15 batches.');
  expect(say(null, null, null)).toMatch(/^Not in sight/);
  expect(say(1, 1, 1)).toBe('Likely after 1 batch.');
  expect(describeUntil({ soonest: 1, likely: 2, latest: 3 }, 'round')).toBe(
    'Likely after 2 rounds: 1 at best, 3 at worst.',
  );
  expect(describePaceOf(7, 3 * 24 * 60)).toBe('about 21 days');
  expect(describePaceOf(1, 60)).toBe('about a day');
});

test('writes a resting jar with spoons beside grams', () => {
  expect(plain(describeLiquid(restLiquid('water', 54), kitchen))).toMatch(
    /^1 L of water with 53 g \(.*cup.*\) of sugar$/,
  );
  expect(plain(describeLiquid(restLiquid('milk', 62), kitchen))).toBe('620 mL of dairy milk');
  const us = plain(describeLiquid(restLiquid('water', 54), { ...kitchen, leads: 'us' }));
  expect(us).toMatch(/cups.* of water with .*cup.* \(53 g\) of sugar$/);
});

test('says each line in a few words', () => {
  const say = (entry: Parameters<typeof describeEntry>[0]) => plain(describeEntry(entry, kitchen));
  expect(say({ did: 'out', grams: 54, batch: 'a', name: 'Almond kefir' })).toBe('Out 54 g for Almond kefir');
  expect(say({ did: 'back', grams: 56, name: 'Almond kefir', medium: 'sugarWater', place: 'fridge' })).toBe(
    'Back 56 g from Almond kefir, into sugar water, in the fridge',
  );
  expect(say({ did: 'out', grams: null })).toBe('Out');
  expect(say({ did: 'given', grams: 27 })).toBe('Gave away 27 g');
  expect(say({ did: 'failed', grams: null, name: 'Almond kefir' })).toBe('Threw out them all with Almond kefir');
  expect(say({ did: 'weighed', grams: 62 })).toBe('Weighed 62 g');
  expect(say({ did: 'moved', grams: null, place: 'freezer' })).toBe('Moved, in the freezer');
});
