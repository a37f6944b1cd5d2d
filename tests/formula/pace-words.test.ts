import { expect, test } from 'vitest';
import { describePace } from '../../src/formula/pace-words';

test('what the log taught is a sentence with its range', () => {
  expect(describePace({ pace: 1.2, low: 1, high: 1.44, count: 4 }, false)).toBe(
    'From 4 batches: this kitchen ripens 1.2 times as fast as the usual (likely 1.0–1.4).',
  );
});

test('one batch is one, a slow kitchen is told in hundredths, and the comma is the cook’s', () => {
  expect(describePace({ pace: 0.846, low: 0.7, high: 1.02, count: 1 }, true)).toBe(
    'From 1 batch: this kitchen ripens 0,85 times as fast as the usual (likely 0,70–1,0).',
  );
});
