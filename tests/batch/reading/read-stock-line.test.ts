import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { readDone, readGrains, readRestSugar } from '../../../src/batch/reading/read-stock-line';

const settings = { ...demo.settings, leads: 'metric', decimalComma: false } as const;

describe('a weight of grains', () => {
  test('is grams where nothing else is said, for every cook', () => {
    expect(readGrains('54', true, settings)).toEqual({ ok: true, grams: 54 });
    expect(readGrains('54 g', true, settings)).toEqual({ ok: true, grams: 54 });
    expect(readGrains('1,5', true, { ...settings, decimalComma: true })).toEqual({ ok: true, grams: 1.5 });
    expect(readGrains('54', true, { ...settings, leads: 'us' })).toEqual({ ok: true, grams: 54 });
    const ounces = readGrains('2 oz', true, { ...settings, leads: 'us' });
    expect(ounces.ok && ounces.grams).toBeCloseTo(56.699, 3);
  });

  test('may be left out only where that will do', () => {
    expect(readGrains(' ', false, settings)).toEqual({ ok: true, grams: null });
    expect(readGrains('', true, settings)).toMatchObject({ ok: false, why: expect.stringContaining('such as 54 g') });
  });

  test('that can’t be is refused with a sentence', () => {
    for (const text of ['some', '0', '-5 g', '200 kg', '1 cup'])
      expect(readGrains(text, true, settings), text).toMatchObject({ ok: false, why: expect.stringMatching(/\.$/) });
  });
});

test('a time is now where nothing is said, and never to come', () => {
  const now = '2026-11-29T21:00';
  expect(readDone('', now)).toEqual({ ok: true, at: now });
  expect(readDone('2026-11-28T08:00:00', now)).toEqual({ ok: true, at: '2026-11-28T08:00' });
  expect(readDone('2026-11-30T08:00', now)).toMatchObject({ ok: false });
  expect(readDone('yesterday', now)).toMatchObject({ ok: false });
});

test('the sugar of a resting jar lies between what feeds nothing and a syrup', () => {
  expect(readRestSugar('80', settings)).toEqual({ ok: true, grams: 80 });
  expect(readRestSugar('', settings)).toEqual({ ok: true, grams: null });
  for (const text of ['5', '400 g/L', 'much']) expect(readRestSugar(text, settings), text).toMatchObject({ ok: false });
});
