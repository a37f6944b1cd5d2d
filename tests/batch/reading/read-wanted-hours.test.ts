import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { readWantedHours } from '../../../src/batch/reading/read-wanted-hours';

const read = (text: string, decimalComma = false) => readWantedHours(text, { ...demo.settings, decimalComma });

describe('the hours a batch is wanted in', () => {
  test.each([
    ['10', 10],
    ['10 h', 10],
    ['about 9 hours', 9],
    ['1 day', 24],
    ['1 1/2 days', 36],
    ['90 min', 1.5],
    ['1000', 1000],
  ])('%s: %s h', (text, hours) => {
    expect(read(text)).toEqual({ ok: true, hours });
  });

  test('take the cook’s decimal mark', () => {
    expect(read('9,5', true)).toEqual({ ok: true, hours: 9.5 });
  });

  test.each(['', 'soon', '10 g', '=9', '0', '-3', '1001', '1e9 days', '9'.repeat(400)])(
    '%s is refused with what to do',
    (text) => {
      const found = read(text);
      expect(found.ok).toBe(false);
      expect(found.ok ? '' : found.why).toMatch(/[A-Z].{15,}/);
    },
  );
});
