import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findSurplus, type StateKey } from '../../../src/batch/keeping/keep-states';

const minute = 60_000;
const day = 24 * 60 * minute;
const noon = new Date(2026, 4, 20, 12, 7).getTime();

/** Saves once at each of these times, oldest first, and gives what is kept in the end. */
function keepAll(times: readonly number[]): StateKey[] {
  let kept: StateKey[] = [];
  times.forEach((at, place) => {
    kept = [...kept, [place + 1, at] as const];
    const surplus = new Set(findSurplus(kept, at));
    kept = kept.filter((key) => !surplus.has(key));
  });
  return kept;
}

test('the newest four are kept', () => {
  expect(
    findSurplus(
      [1, 2, 3, 4].map((revision) => [revision, noon] as const),
      noon,
    ),
  ).toEqual([]);
  expect(
    findSurplus(
      [1, 2, 3, 4, 5].map((revision) => [revision, noon] as const),
      noon,
    ),
  ).toEqual([[1, noon]]);
});

test('an edit a minute for ten days leaves the last hour by quarters and the last of each of seven days', () => {
  const times = Array.from({ length: (10 * day) / minute }, (_, at) => noon - 10 * day + (at + 1) * minute);
  const ages = keepAll(times).map(([, at]) => Math.round((noon - at) / minute));
  // At 12:07 the quarters end at 12:00, 11:45, 11:30 and 11:15; the days end at midnight.
  const daysBack = [6, 5, 4, 3, 2, 1].map((days) => 12 * 60 + 8 + (days - 1) * 24 * 60);
  expect(ages).toEqual([...daysBack, 53, 38, 23, 8, 3, 2, 1, 0]);
});

const anyTimes = fc.array(fc.integer({ min: noon - 20 * day, max: noon + 2 * day }), { minLength: 1, maxLength: 200 });

test('whatever the clock does, the newest four stay and no more than sixteen do', () => {
  fc.assert(
    fc.property(anyTimes, (times) => {
      const kept = keepAll(times).map(([revision]) => revision);
      expect(kept.slice(-4)).toEqual(times.map((_, place) => place + 1).slice(-4));
      expect(kept.length).toBeLessThanOrEqual(16);
    }),
  );
});

test('a state of yesterday stays however many edits are made today', () => {
  const kept = keepAll([noon - day, ...Array.from({ length: 500 }, (_, at) => noon + at * 1000)]);
  expect(kept[0]).toEqual([1, noon - day]);
});
