import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayAfter, dayHere, writeCalendarDay } from '../../../src/batch/document/calendar-day';

describe('a day later', () => {
  test.each([
    ['2026-11-25', 7, '2026-12-02'],
    ['2026-12-30', 8, '2027-01-07'],
    ['2028-02-25', 6, '2028-03-02'],
    ['2100-02-25', 6, '2100-03-03'],
    // Clocks change on these days in Europe and in America.
    ['2026-03-28', 1, '2026-03-29'],
    ['2026-03-07', 2, '2026-03-09'],
    ['2026-10-24', 8, '2026-11-01'],
    ['0099-12-31', 1, '0100-01-01'],
  ])('%s and %d days is %s', (day, days, later) => {
    expect(dayAfter(day, days)).toBe(later);
  });

  test.each(['', '2026-02-30', '2026-13-01', '26-01-01', '0000-01-01', '2026-1-1', 'today'])('%s is no day', (day) => {
    expect(dayAfter(day, 1)).toBeNull();
    expect(writeCalendarDay(day)).toBeNull();
  });

  test.each([
    ['9999-12-31', 1],
    ['2026-01-01', 0.5],
    ['2026-01-01', NaN],
    ['2026-01-01', 1e300],
  ])('%s and %d days is none', (day, days) => {
    expect(dayAfter(day, days)).toBeNull();
  });

  test('and as many back is the day again', () => {
    const anyDay = fc
      .date({ min: new Date('1900-01-01'), max: new Date('2200-01-01'), noInvalidDate: true })
      .map((date) => date.toISOString().slice(0, 10));
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 0, max: 400 }), (day, days) => {
        const later = dayAfter(day, days);
        expect(dayAfter(later ?? '', -days)).toBe(day);
        expect((Date.parse(later ?? '') - Date.parse(day)) / 86_400_000).toBe(days);
      }),
    );
  });
});

test('a day is written with its month in letters', () => {
  expect(writeCalendarDay('2026-10-05')).toBe('5 Oct 2026');
});

test('today is the day on the clock here, up to its last minute', () => {
  expect(dayHere(new Date(2026, 2, 29, 23, 59))).toBe('2026-03-29');
  expect(dayHere(new Date(2026, 0, 1, 0, 0))).toBe('2026-01-01');
});
