import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { instantOf, wallClock, wallOf } from '../../../src/batch/reading/local-time';
import { type Entry, ledgerOf } from '../../../src/formula/stock/ledger';
import { stockEvents } from '../../../src/formula/stock/stock-events';

const day = 24 * 60;
const clock = wallClock({ from: '22:00', to: '06:00' });
const water = { key: 's1', name: 'Blue jar', grains: 'water' } as const;
const milk = { key: 's2', name: 'Milk jar', grains: 'milk' } as const;

function at(present: number) {
  return { clock, present, kitchen: demo.settings };
}

const noon = 12 * 60;
const fed: Entry = { at: 10 * day + noon, did: 'fed', grams: 54, place: 'fridge', medium: 'sugarWater' };

describe('what is to be done for a stock', () => {
  test('is fresh liquid, with amounts, when it is due', () => {
    const [event, ...more] = stockEvents(water, ledgerOf([fed]), at(12 * day));
    expect(more).toEqual([]);
    expect(event).toMatchObject({ id: 'feed', batch: 'grains-s1', batchName: 'Blue jar', plannedFor: 10 * day + noon });
    expect(event?.at).toBe(24 * day + noon);
    expect(event?.title).toBe('Give the grains fresh sugar water');
    expect(event?.text.replaceAll('\u00A0', ' ')).toContain('1 L of water with 53 g');
  });

  test('waits on the same time of a day to come where it is late, under the same name', () => {
    const [event] = stockEvents(water, ledgerOf([fed]), at(30 * day + noon + 1));
    expect(event?.at).toBe(31 * day + noon);
    expect(event?.plannedFor).toBe(10 * day + noon);
  });

  test.each([
    ['done before the night, on the same day', '23:09', '21:50'],
    ['done when the night is over, on the same day', '03:00', '06:00'],
    ['left where it is by day', '21:30', '21:30'],
  ])('is %s', (_, last, planned) => {
    const feeding = instantOf(`2026-11-29T${last}`) ?? 0;
    const [event] = stockEvents(water, ledgerOf([{ ...fed, at: feeding }]), at(feeding + day));
    expect(wallOf(event?.at ?? 0)).toBe(`2026-12-13T${planned}`);
  });

  test('is a round in dairy for milk grains after six batches of plant milk', () => {
    const batches = Array.from({ length: 6 }, (_, place): readonly Entry[] => [
      { at: 11 * day + 10 * place, did: 'out', grams: 30, batch: 'a', source: 'hemp' },
      { at: 11 * day + 10 * place + 5, did: 'back', grams: 30, batch: 'a' },
    ]).flat();
    const entries: readonly Entry[] = [{ ...fed, medium: 'dairy' }, ...batches];
    const found = stockEvents(milk, ledgerOf(entries), at(12 * day));
    expect(found.map(({ id }) => id)).toEqual(['feed', 'dairy']);
    expect(found[1]?.text).toMatch(/^6 batches of plant milk/);
    expect(stockEvents(water, ledgerOf(entries), at(12 * day)).map(({ id }) => id)).toEqual(['feed']);
  });

  test('is nothing while all of them are away', () => {
    const out: Entry = { at: 11 * day, did: 'out', grams: 54, batch: 'a' };
    expect(stockEvents(water, ledgerOf([fed, out]), at(12 * day))).toEqual([]);
  });
});
