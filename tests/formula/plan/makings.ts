import fc from 'fast-check';
import type { Making, Wait } from '../../../src/formula/plan/making';
import type { Span, WallClock } from '../../../src/formula/time/span';

export const day = 24 * 60;

/** Minutes of hours and minutes on a day counted from 0: `at(1, 7, 30)` is half past seven on the day after. */
export function at(days: number, hours: number, minutes = 0): number {
  return days * day + hours * 60 + minutes;
}

/** A clock that never changes, with quiet hours at these minutes of each day; none where both are the same. */
export function steadyClock(from: number, to: number): WallClock {
  const daysOf = (start: number, end: number): number[] => {
    const first = Math.floor(start / day) - 1;
    return Array.from({ length: Math.ceil((end - start) / day) + 3 }, (_, place) => first + place);
  };
  return {
    nights: (start, end) =>
      from === to
        ? []
        : daysOf(start, end)
            .map((number): Span => ({ from: number * day + from, to: number * day + to + (to < from ? day : 0) }))
            .filter((night) => night.from < end && night.to > start),
    midnights: (start, end) =>
      daysOf(start, end).flatMap((number) => (number * day >= start && number * day < end ? [number * day] : [])),
    later: (moment, days) => moment + days * day,
  };
}

/** Quiet from 22:00 to 07:00. */
export const usualClock = steadyClock(22 * 60, 7 * 60);

export function wait(low: number, likely: number, high: number): Wait {
  return { low: low * 60, likely: likely * 60, high: high * 60 };
}

/** Soaked almonds without a second ferment, unless told otherwise. */
export function makingWith(changes: Partial<Making> = {}): Making {
  return {
    batch: 'b1',
    name: 'Almond',
    soak: { minutes: 10, wait: wait(8, 10, 12) },
    make: 40,
    ferment: { wait: wait(8, 12, 16) },
    taste: 5,
    strain: 15,
    second: null,
    chill: wait(4, 4, 5 * 24),
    keep: { best: 6, last: 8 },
    checks: null,
    turnsBy: null,
    grains: { kind: 'water', name: 'Water kefir grains', need: 40, have: null },
    jars: { kind: 'quartWide', name: 'Quart, wide mouth', need: 1, have: null },
    ...changes,
  };
}

const handwork = fc.integer({ min: 0, max: 18 }).map((steps) => steps * 5);

function anyWait(most: number): fc.Arbitrary<Wait> {
  return fc.array(fc.integer({ min: 0, max: most * 12 }), { minLength: 3, maxLength: 3 }).map((times) => {
    const [low = 0, likely = 0, high = 0] = times.sort((one, other) => one - other).map((steps) => steps * 5);
    return { low, likely, high };
  });
}

/** Batches with waits and work of any sensible length, with a first ferment. */
export const makings: fc.Arbitrary<Making> = fc
  .record({
    soak: fc.option(fc.record({ minutes: handwork, wait: anyWait(16) })),
    make: handwork,
    ferment: fc.record({ wait: anyWait(72) }),
    strain: handwork,
    second: fc.option(fc.record({ bottle: handwork, wait: anyWait(24), fridge: handwork })),
    checks: fc.option(fc.integer({ min: 1, max: 5 })),
  })
  .map((parts) => makingWith({ ...parts, keep: { best: 12, last: 14 }, chill: wait(4, 4, 9 * 24) }));

/** A clock with any quiet hours of less than a day, or none. */
export const clocks: fc.Arbitrary<WallClock> = fc
  .tuple(fc.integer({ min: 0, max: 95 }), fc.integer({ min: 0, max: 95 }))
  .map(([from, to]) => steadyClock(from * 15, to * 15));

export const starts = fc.integer({ min: at(20_000, 0), max: at(20_010, 0) });
