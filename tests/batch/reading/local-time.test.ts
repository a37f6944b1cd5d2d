import fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import { instantOf, wallClock, wallOf } from '../../../src/batch/reading/local-time';

const home = process.env.TZ;

function liveIn(zone: string): void {
  process.env.TZ = zone;
}

afterEach(() => {
  if (home === undefined) delete process.env.TZ;
  else process.env.TZ = home;
});

const zones = ['Europe/Berlin', 'America/New_York', 'Australia/Lord_Howe', 'Asia/Kolkata', 'Pacific/Apia', 'UTC'];

function at(wall: string): number {
  return instantOf(wall) ?? expect.fail(`${wall} is no time`);
}

describe('a time on the wall', () => {
  // UTC offsets by the IANA time zone database.
  test.each([
    ['Europe/Berlin', '2026-11-28T08:00', '2026-11-28T07:00Z'],
    ['America/New_York', '2026-11-28T08:00', '2026-11-28T13:00Z'],
    ['Asia/Kolkata', '2026-11-28T08:00', '2026-11-28T02:30Z'],
    ['UTC', '0050-02-28T08:00', '0050-02-28T08:00Z'],
  ])('in %s %s is %s', (zone, wall, utc) => {
    liveIn(zone);
    expect(at(wall)).toBe(Date.parse(utc) / 60_000);
  });

  test.each([
    ['Europe/Berlin', '2026-03-29T02:00', '2026-03-29T03:00'],
    ['Europe/Berlin', '2026-03-29T02:59', '2026-03-29T03:00'],
    ['America/New_York', '2026-03-08T02:30', '2026-03-08T03:00'],
    ['Australia/Lord_Howe', '2026-10-04T02:10', '2026-10-04T02:30'],
    ['Pacific/Apia', '2011-12-30T08:00', '2011-12-31T00:00'],
  ])('in %s that no clock shows, %s, is the next that one does, %s', (zone, wall, next) => {
    liveIn(zone);
    expect(wallOf(at(wall))).toBe(next);
  });

  test.each([
    ['Europe/Berlin', '2026-10-25T02:30', '2026-10-25T00:30Z'],
    ['America/New_York', '2026-11-01T01:30', '2026-11-01T05:30Z'],
    ['Australia/Lord_Howe', '2026-04-05T01:45', '2026-04-04T14:45Z'],
  ])('in %s that clocks show twice, %s, is the first of the two', (zone, wall, first) => {
    liveIn(zone);
    expect(at(wall)).toBe(Date.parse(first) / 60_000);
  });

  test('is read back from its instant in every zone', () => {
    const minutes = fc.integer({ min: Date.parse('1980-01-01') / 60_000, max: Date.parse('2080-01-01') / 60_000 });
    fc.assert(
      fc.property(fc.constantFrom(...zones), minutes, (zone, minute) => {
        liveIn(zone);
        const wall = wallOf(minute);
        expect(wallOf(at(wall))).toBe(wall);
        // The other of two hours that show the same is at most an hour away.
        expect(minute - at(wall)).toBeGreaterThanOrEqual(0);
        expect(minute - at(wall)).toBeLessThanOrEqual(60);
      }),
    );
  });

  test.each(['', 'Saturday', '2026-11-28', '2026-11-28T08:00:00', '26-11-28T08:00'])('“%s” is none', (text) => {
    expect(instantOf(text)).toBeNull();
  });

  test.each([
    ...['2026-13-01T08:00', '2026-00-10T08:00', '2026-11-00T08:00', '2026-11-31T08:00', '2026-02-29T08:00'],
    ...['2026-11-28T24:00', '2026-11-28T25:99', '2026-11-28T08:60'],
  ])('“%s”, which no calendar or clock has, is none', (text) => {
    for (const zone of zones) {
      liveIn(zone);
      expect(instantOf(text)).toBeNull();
    }
  });

  test('is one for every date and hour there is, and for no other', () => {
    const part = (max: number) => fc.integer({ min: 0, max }).map((number) => String(number).padStart(2, '0'));
    const parts = fc.tuple(fc.integer({ min: 1970, max: 2100 }), part(20), part(40), part(30), part(70));
    fc.assert(
      fc.property(fc.constantFrom(...zones), parts, (zone, [year, month, day, hour, minute]) => {
        liveIn(zone);
        const wall = `${year}-${month}-${day}T${hour}:${minute}`;
        const read = Date.parse(`${wall}Z`);
        const isTime = !Number.isNaN(read) && new Date(read).toISOString().startsWith(wall);
        expect(instantOf(wall) !== null).toBe(isTime);
      }),
    );
  });

  test('over a change of clocks the hours between are those that pass', () => {
    liveIn('Europe/Berlin');
    expect(at('2026-03-29T08:00') - at('2026-03-28T20:00')).toBe(11 * 60);
    expect(at('2026-10-25T08:00') - at('2026-10-24T20:00')).toBe(13 * 60);
    liveIn('America/New_York');
    expect(at('2026-03-08T08:00') - at('2026-03-07T20:00')).toBe(11 * 60);
    expect(at('2026-11-01T08:00') - at('2026-10-31T20:00')).toBe(13 * 60);
  });
});

describe('the clock of a kitchen', () => {
  const quiet = { from: '22:00', to: '07:00' };

  test('has quiet hours over midnight, an hour shorter or longer when clocks change', () => {
    liveIn('Europe/Berlin');
    const nights = wallClock(quiet).nights(at('2026-03-28T12:00'), at('2026-03-30T12:00'));
    expect(nights.map(({ from, to }) => [wallOf(from), wallOf(to), (to - from) / 60])).toEqual([
      ['2026-03-28T22:00', '2026-03-29T07:00', 8],
      ['2026-03-29T22:00', '2026-03-30T07:00', 9],
    ]);
    const autumn = wallClock(quiet).nights(at('2026-10-24T12:00'), at('2026-10-25T12:00'));
    expect(autumn.map(({ from, to }) => (to - from) / 60)).toEqual([10]);
  });

  test.each([
    [0, Number.POSITIVE_INFINITY],
    [Number.NEGATIVE_INFINITY, 0],
    [Number.NaN, 0],
    [0, 1e300],
    [-1e300, 1e300],
    [0, 1e11],
  ])('has neither nights nor midnights from %d to %d, and says so at once', (from, to) => {
    expect(wallClock(quiet).nights(from, to)).toEqual([]);
    expect(wallClock(quiet).midnights(from, to)).toEqual([]);
  });

  test('goes on by elapsed days where the date can’t be written any more', () => {
    liveIn('UTC');
    const last = at('9999-12-30T08:00');
    expect(wallClock(quiet).later(last, 5)).toBe(last + 5 * 24 * 60);
    expect(
      wallClock(quiet)
        .nights(last, last + 5 * 24 * 60)
        .map(({ from }) => wallOf(from)),
    ).toEqual(['9999-12-30T22:00']);
  });

  test('knows the night that a stretch begins in', () => {
    liveIn('America/New_York');
    const nights = wallClock(quiet).nights(at('2026-11-28T03:00'), at('2026-11-28T09:00'));
    expect(nights.map(({ from }) => wallOf(from))).toEqual(['2026-11-27T22:00']);
  });

  test('has quiet hours within a day, and none from a time to the same time', () => {
    liveIn('UTC');
    const [from, to] = [at('2026-11-28T00:00'), at('2026-11-29T00:00')];
    const siesta = wallClock({ from: '13:00', to: '15:30' }).nights(from, to);
    expect(siesta.map((night) => [wallOf(night.from), wallOf(night.to)])).toEqual([
      ['2026-11-28T13:00', '2026-11-28T15:30'],
    ]);
    expect(wallClock({ from: '07:00', to: '07:00' }).nights(from, to)).toEqual([]);
  });

  test('begins each day once, also where no clock shows midnight', () => {
    liveIn('America/Santiago');
    // Clocks there went from 24:00 to 01:00 on 8 September 2024.
    const midnights = wallClock(quiet).midnights(at('2024-09-07T00:00'), at('2024-09-10T00:00'));
    expect(midnights.map(wallOf)).toEqual(['2024-09-07T00:00', '2024-09-08T01:00', '2024-09-09T00:00']);
  });

  test('has nights apart from each other, in order, each touching the stretch, in every zone', () => {
    const time = fc.integer({ min: 0, max: 23 }).map((hour) => `${String(hour).padStart(2, '0')}:30`);
    const minutes = fc.integer({ min: Date.parse('2000-01-01') / 60_000, max: Date.parse('2050-01-01') / 60_000 });
    fc.assert(
      fc.property(fc.constantFrom(...zones), time, time, minutes, (zone, from, to, start) => {
        liveIn(zone);
        const end = start + 5 * 24 * 60;
        const nights = wallClock({ from, to }).nights(start, end);
        if (from !== to) expect(nights.length).toBeGreaterThanOrEqual(4);
        nights.forEach((night, place) => {
          expect(night.from).toBeLessThan(night.to);
          expect(night.from < end && night.to > start).toBe(true);
          expect(night.from).toBeGreaterThanOrEqual(nights[place - 1]?.to ?? night.from);
        });
      }),
    );
  });
});
