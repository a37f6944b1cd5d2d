import { describe, expect, test } from 'vitest';
import { isOver, type Timer, withoutTimer, withTimer, writeLeft } from '../../../src/batch/keeping/timers';

const noon = Date.UTC(2026, 10, 28, 12);
const soak = { batch: 'b1', step: 'soak' } as const;

function left(hours: number): string {
  const [timer] = withTimer([], soak, hours, noon);
  return timer === undefined ? '' : writeLeft(timer, noon).replaceAll('\u00A0', ' ');
}

describe('what is left', () => {
  test.each([
    [10, '10 h 00 min'],
    [9.0001, '9 h 01 min'],
    [1, '1 h 00 min'],
    [0.9997, '59:59'],
    [1 / 30, '2:00'],
    [1 / 3600, '0:01'],
    [1 / 36000, '0:01'],
    [0, '0:00'],
  ])('of %d hours reads as on a clock', (hours, text) => {
    expect(left(hours)).toBe(text);
  });

  test('is nothing, and never less, once it is over', () => {
    const timer: Timer = { ...soak, ends: noon };
    expect(writeLeft(timer, noon + 1e9)).toBe('0:00');
    expect(isOver(timer, noon)).toBe(true);
    expect(isOver(timer, noon - 1)).toBe(false);
  });
});

describe('timers', () => {
  test('stand in the order in which they ring, one for each step of a batch', () => {
    const both = withTimer(withTimer([], soak, 10, noon), { batch: 'b1', step: 'blend' }, 0.1, noon);
    expect(both.map(({ step }) => step)).toEqual(['blend', 'soak']);
    expect(withTimer(both, soak, 5, noon)).toHaveLength(2);
    expect(withTimer(both, { ...soak, batch: 'b2' }, 5, noon)).toHaveLength(3);
  });

  test('are stopped one by one', () => {
    const one = withTimer([], soak, 10, noon);
    expect(withoutTimer(one, { ...soak, batch: 'b2' })).toEqual(one);
    expect(withoutTimer(one, soak)).toEqual([]);
  });
});
