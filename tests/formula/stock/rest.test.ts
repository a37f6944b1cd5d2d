import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { wallClock } from '../../../src/batch/reading/local-time';
import { growthFrom } from '../../../src/formula/stock/growth';
import { type Entry, ledgerOf } from '../../../src/formula/stock/ledger';
import {
  keepsUntil,
  plantBatchesLeft,
  refreshOf,
  restLiquid,
  reviveLiquid,
  runGrowth,
} from '../../../src/formula/stock/rest';
import { describeRun } from '../../../src/formula/stock/stock-words';
import { expectedGrowth } from '../../../src/reference/stock-growth';

const day = 24 * 60;
const clock = wallClock({ from: '22:00', to: '06:00' });

function ledger(...entries: readonly Entry[]) {
  return ledgerOf(entries);
}

const fed = (place: NonNullable<Entry['place']>, medium: NonNullable<Entry['medium']> = 'sugarWater'): Entry => ({
  ...{ at: 10 * day, did: 'fed', grams: 54, place, medium },
});

describe('the liquid of a resting jar', () => {
  test('is a litre with 52.8 g of sugar for 54 g of water grains', () => {
    const { volume, sugar } = restLiquid('water', 54);
    expect(volume).toBeCloseTo(1000, 9);
    expect(sugar).toBeCloseTo(52.8, 9);
    expect(restLiquid('water', 27, 80).sugar).toBeCloseTo(40, 9);
  });

  test('is ten times the weight of milk grains in dairy milk', () => {
    expect(restLiquid('milk', 62)).toEqual({ medium: 'dairy', volume: 620, sugar: 0 });
  });

  test('wakes them up in more milk, and in stronger water', () => {
    expect(reviveLiquid('milk', 40).volume).toBeCloseTo(1000, 9);
    expect(reviveLiquid('water', 54).sugar).toBeCloseTo(65.8, 9);
  });

  test('is none for nothing, and never below', () => {
    expect(restLiquid('water', -3)).toEqual({ medium: 'sugarWater', volume: 0, sugar: 0 });
  });
});

describe('the next fresh liquid', () => {
  test('of water grains in the cold is due after two weeks, between one and three', () => {
    const found = refreshOf('water', ledger(fed('fridge')), clock);
    expect([found?.from, found?.due, found?.by].map((at) => ((at ?? 0) - 10 * day) / day)).toEqual([7, 14, 21]);
  });

  test('comes sooner on the worktop, which is taken where nobody said the place', () => {
    const { place: _, ...unplaced } = fed('room');
    for (const entry of [fed('room'), unplaced]) expect(refreshOf('water', ledger(entry), clock)?.due).toBe(12 * day);
    expect(refreshOf('milk', ledger(fed('fridge', 'dairy')), clock)?.due).toBe(17 * day);
  });

  test('is none where nothing rests, is frozen or dried, or nobody said since when', () => {
    const out: Entry = { at: 11 * day, did: 'out', grams: 54, batch: 'a' };
    expect(refreshOf('water', ledger(fed('fridge'), out), clock)).toBeNull();
    expect(refreshOf('water', ledger(fed('freezer')), clock)).toBeNull();
    expect(refreshOf('water', ledger({ at: 0, did: 'weighed', grams: 54 }), clock)).toBeNull();
  });
});

test('frozen grains are good for 120 days, dried for 180, from when they were put there', () => {
  const put = (place: 'freezer' | 'dried'): Entry => ({ at: 10 * day, did: 'moved', grams: null, place });
  expect(keepsUntil(ledger(put('freezer')), clock)).toBe(130 * day);
  expect(keepsUntil(ledger(put('dried')), clock)).toBe(190 * day);
  expect(keepsUntil(ledger(fed('fridge')), clock)).toBeNull();
});

test('a round in dairy is due after six batches of plant milk, and what they cost is what was weighed', () => {
  const batches = Array.from({ length: 6 }, (_, place): readonly Entry[] => [
    { at: 11 * day + 10 * place, did: 'out', grams: 50, batch: 'a', source: 'hemp' },
    { at: 11 * day + 10 * place + 5, did: 'back', grams: 49, batch: 'a' },
  ]).flat();
  const all = ledger(fed('room', 'dairy'), ...batches);
  expect(plantBatchesLeft(all)).toBe(0);
  expect(runGrowth(all)).toBeCloseTo(0.98 ** 6, 12);
  expect(runGrowth(ledger(fed('room', 'dairy')))).toBeNull();
  const growth = growthFrom([], expectedGrowth.inPlantMilk);
  expect(describeRun(all, growth, demo.settings)).toBe(
    '6 batches of plant milk since the last day in dairy. A gram that went through all of them weighs 0.89 g, by your scale. A day in dairy milk on the worktop is due now.',
  );
  expect(describeRun(ledger(fed('room', 'dairy')), growth, demo.settings)).toMatch(/after 6 batches of plant milk\.$/);
  expect(describeRun(ledger(fed('room', 'dairy'), ...batches.slice(0, 6)), growth, demo.settings)).toMatch(
    /after 3 more\.$/,
  );
});
