import { expect, test } from 'vitest';
import { describePace } from '../../../src/formula/time/pace-words';

test('what the log taught is a sentence with its range', () => {
  expect(describePace({ pace: 1.2, low: 1, high: 1.44, count: 4 }, 1.2, false)).toBe(
    'From 4 batches: this kitchen ripens 1.2 times as fast as the usual (likely 1.0–1.4).',
  );
});

test('one batch is one, a slow kitchen is told in hundredths, and the comma is the cook’s', () => {
  expect(describePace({ pace: 0.846, low: 0.7, high: 1.02, count: 1 }, null, true)).toBe(
    'From 1 batch: this kitchen ripens 0,85 times as fast as the usual (likely 0,70–1,0).',
  );
});

test('a pace beyond what the sheet takes says with which it counts, and so does one that is another than the log’s', () => {
  const fast = { pace: 7.31, low: 5, high: 10, count: 9 };
  expect(describePace(fast, 5, false)).toMatch(
    /7\.3 times as fast.+ The sheet counts with 5\.0, the most that it takes\.$/,
  );
  const slow = { pace: 0.1, low: 0.05, high: 0.2, count: 9 };
  expect(describePace(slow, 0.2, true)).toMatch(/ The sheet counts with 0,20, the least that it takes\.$/);
  expect(describePace({ ...fast, pace: 1.5 }, 1.3, false)).toMatch(/ The sheet counts with 1\.3\.$/);
});
