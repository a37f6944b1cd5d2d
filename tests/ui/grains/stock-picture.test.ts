import { describe, expect, test } from 'vitest';
import { type Entry, ledgerOf } from '../../../src/formula/stock/ledger';
import { drawStock } from '../../../src/ui/grains/stock-picture';

const day = 24 * 60;
const entries: readonly Entry[] = [
  { at: 0, did: 'got', grams: 60 },
  { at: 2 * day, did: 'out', grams: 40, batch: 'a' },
  { at: 4 * day, did: 'back', grams: 50, batch: 'a' },
  { at: 8 * day, did: 'given', grams: 30 },
];

describe('the drawing of a stock', () => {
  test('joins weighings, and drops upright where some were given away', () => {
    const picture = drawStock(ledgerOf(entries), 8 * day);
    // Up to 80 g in steps of 20: 60 g at 25 % from the top, 70 g at 12.5 %, 40 g at 50 %.
    expect(picture?.grams.map(({ value }) => value)).toEqual([0, 20, 40, 60, 80]);
    expect(picture?.total).toBe('M0.00 25.00L25.00 25.00L50.00 12.50L100.00 12.50L100.00 50.00L100 50.00');
    expect(picture?.fell).toBe('M100.00 12.50V50.00');
  });

  test('leaves room between what is at rest and the line for what batches have', () => {
    const picture = drawStock(ledgerOf(entries.slice(0, 2)), 4 * day);
    expect(picture?.total).toBe('M0.00 0.00L50.00 0.00L100 0.00');
    expect(picture?.resting).toBe('M0 100L0.00 100.00L0.00 0.00L50.00 0.00L50.00 66.67L100 66.67L100 100Z');
  });

  test('tells hours for a few days, days for more', () => {
    expect(drawStock(ledgerOf(entries.slice(0, 2)), 3 * day)?.isShort).toBe(true);
    expect(drawStock(ledgerOf(entries), 30 * day)?.isShort).toBe(false);
  });

  test('is none of a single weight, and has no place that is no number', () => {
    expect(drawStock(ledgerOf(entries.slice(0, 1)), day)).toBeNull();
    const nothing = ledgerOf([
      { at: 5, did: 'out', grams: null, batch: 'a' },
      { at: 5, did: 'weighed', grams: null },
    ]);
    expect(JSON.stringify(drawStock(nothing, 5))).not.toMatch(/NaN|Infinity|null/);
  });
});
