import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Entry, ledgerOf } from '../../../src/formula/stock/ledger';

const day = 24 * 60;

function entry(at: number, did: Entry['did'], grams: number | null, more: Partial<Entry> = {}): Entry {
  return { at, did, grams, ...more };
}

describe('a ledger of grains', () => {
  test('follows three batches out and back', () => {
    const ledger = ledgerOf([
      entry(0, 'got', 60, { place: 'fridge', medium: 'sugarWater' }),
      entry(10, 'out', 54, { batch: 'a', name: 'Almond', source: 'almond' }),
      entry(10 + day, 'back', 56, { batch: 'a' }),
      entry(20 + day, 'out', 54, { batch: 'b', name: 'Soy', source: 'soy' }),
      entry(20 + 2 * day, 'back', 63, { batch: 'b', medium: 'sugarWater' }),
      entry(30 + 2 * day, 'out', 54, { batch: 'c', name: 'Hemp', source: 'hemp' }),
    ]);
    expect(ledger.rest).toBe(17);
    expect(ledger.total).toBe(71);
    expect(ledger.away.map(({ out }) => out.name)).toEqual(['Hemp']);
    expect(ledger.rounds.map(({ before, after, source }) => [before, after, source])).toEqual([
      [54, 56, 'almond'],
      [54, 63, 'soy'],
    ]);
    expect(ledger.freshSince).toBe(20 + 2 * day);
    expect(ledger.place).toBe('fridge');
    expect(ledger.plantBatches).toBe(2);
  });

  test('takes a weighing for all that is at rest, not for what is away', () => {
    const ledger = ledgerOf([entry(0, 'weighed', 60), entry(1, 'out', 50, { batch: 'a' }), entry(2, 'weighed', 12)]);
    expect([ledger.rest, ledger.total]).toEqual([12, 62]);
    expect(ledger.points.map(({ change }) => change)).toEqual([60, 0, 2]);
  });

  test('counts what comes back unweighed as it went out, and learns nothing from it', () => {
    const ledger = ledgerOf([
      entry(0, 'got', 60),
      entry(1, 'out', 54, { batch: 'a' }),
      entry(2, 'back', null, { batch: 'a' }),
    ]);
    expect([ledger.rest, ledger.rounds.length]).toEqual([60, 0]);
  });

  test('loses the grains of a batch that failed, or those at rest, and no others', () => {
    const out = [entry(0, 'got', 60), entry(1, 'out', 54, { batch: 'a' })];
    expect(ledgerOf([...out, entry(2, 'failed', null, { batch: 'a' })])).toMatchObject({ rest: 6, total: 6, away: [] });
    expect(ledgerOf([...out, entry(2, 'failed', 50, { batch: 'a' })])).toMatchObject({ rest: 10, total: 10, away: [] });
    expect(ledgerOf([...out, entry(2, 'failed', null)])).toMatchObject({ rest: 0, total: 54 });
  });

  test('has a round of rest between two weighings in one liquid, in the warm alone', () => {
    const fed = (place: 'room' | 'fridge') => [
      entry(0, 'fed', 50, { medium: 'sugarWater', place }),
      entry(2 * day, 'weighed', 60),
    ];
    expect(ledgerOf(fed('room')).rounds).toMatchObject([{ before: 50, after: 60, medium: 'sugarWater' }]);
    expect(ledgerOf(fed('fridge')).rounds).toEqual([]);
    const [first, last] = fed('room');
    if (first === undefined || last === undefined) throw new Error('two entries');
    expect(ledgerOf([first, entry(day, 'given', 5), last]).rounds).toEqual([]);
  });

  test('counts plant milks anew after a round in dairy on the worktop, not in the fridge', () => {
    const run = (place: 'room' | 'fridge') =>
      ledgerOf([
        entry(0, 'got', 40),
        entry(1, 'out', 30, { batch: 'a', source: 'soy' }),
        entry(2, 'back', 33, { batch: 'a' }),
        entry(3, 'fed', null, { medium: 'dairy', place }),
      ]).plantBatches;
    expect([run('room'), run('fridge')]).toEqual([0, 1]);
  });

  test('of a stock without entries is empty', () => {
    expect(ledgerOf([])).toMatchObject({ rest: 0, total: 0, away: [], points: [], isWeighed: false, runSince: null });
  });
});

const grams = fc.integer({ min: 0, max: 500 });
const came = fc.record({ at: fc.integer({ min: 0, max: 5 }), did: fc.constantFrom('got', 'given'), grams });

describe('the mass of a stock', () => {
  test('is what came less what went, in whatever order it was written down', () => {
    fc.assert(
      fc.property(
        fc
          .array(came, { maxLength: 30 })
          .chain((lines) => fc.tuple(fc.constant(lines), fc.shuffledSubarray(lines, { minLength: lines.length }))),
        ([lines, shuffled]) => {
          const sum = lines.reduce((all, line) => all + (line.did === 'got' ? line.grams : -line.grams), 0);
          expect(ledgerOf(lines).total).toBe(sum);
          expect(ledgerOf(shuffled).total).toBe(sum);
        },
      ),
    );
  });

  const any = fc.record({
    at: fc.integer({ min: 0, max: 4 }),
    did: fc.constantFrom('weighed', 'out', 'back', 'given', 'got', 'fed', 'moved', 'failed'),
    grams: fc.option(grams),
    batch: fc.constantFrom('a', 'b'),
  });

  test('is the sum of what each entry changed, and of what is at rest and away', () => {
    fc.assert(
      fc.property(fc.array(any, { maxLength: 40 }), (lines) => {
        const { total, rest, away, points } = ledgerOf(lines);
        expect(points.length).toBe(lines.length);
        expect(points.reduce((sum, { change }) => sum + change, 0)).toBeCloseTo(total, 9);
        expect(rest + away.reduce((sum, one) => sum + (one.grams ?? 0), 0)).toBeCloseTo(total, 9);
      }),
    );
  });

  test('stays as it is while grains go out and come back as they were', () => {
    fc.assert(
      fc.property(fc.array(fc.record({ grams, batch: fc.constantFrom('a', 'b', 'c') }), { maxLength: 20 }), (trips) => {
        // All in one minute: out of the order they came in, no gram is lost.
        const outs = trips.map((trip) => entry(1, 'out', trip.grams, { batch: trip.batch }));
        const backs = trips.map((trip) => entry(1, 'back', trip.grams, { batch: trip.batch }));
        const { total, away } = ledgerOf([entry(0, 'got', 1000), ...outs, ...backs]);
        expect([total, away]).toEqual([1000, []]);
      }),
    );
  });

  test('of a thousand lines is worked out at once', () => {
    const lines = Array.from({ length: 1000 }, (_, place) =>
      entry(1000 - place, place % 2 ? 'out' : 'back', 10, { batch: 'a' }),
    );
    expect(ledgerOf(lines).points.length).toBe(1000);
  });
});
