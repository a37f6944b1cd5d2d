import fc from 'fast-check';
import { expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { hottestHeat, longestHeat } from '../../../src/batch/document/document-limits';
import { readDocument } from '../../../src/batch/document/read-document';
import { setHeat } from '../../../src/batch/edits/edits';
import { readHeat } from '../../../src/batch/reading/read-heat';

const habits = { leads: 'metric', decimalComma: false } as const;
const read = (temperature: string, time: string) => readHeat('milk', temperature, time, habits);

test('takes a temperature and a time up to the limits', () => {
  expect(read(`${hottestHeat} °C`, `${longestHeat} min`)).toEqual({
    ok: true,
    heat: { what: 'milk', temperature: hottestHeat, minutes: longestHeat },
  });
  expect(read('212 °F', '1')).toMatchObject({ ok: true });
});

test.each([
  ['101', '5', 'Type a temperature between 0 °C and 100 °C (32 °F and 212 °F).'],
  ['0', '5', 'Type a temperature between 0 °C and 100 °C (32 °F and 212 °F).'],
  ['80', '1001', 'Type a time of more than 0 minutes and at most 1000.'],
  ['80', '0', 'Type a time of more than 0 minutes and at most 1000.'],
])('refuses %s for %s, with what to type', (temperature, time, why) => {
  expect(read(temperature, time)).toEqual({ ok: false, why });
});

test('whatever it takes can be saved and opened again', () => {
  const typed = fc.double({ min: 0, max: 2000, noNaN: true }).map((value) => value.toFixed(3));
  fc.assert(
    fc.property(typed, typed, (temperature, time) => {
      const found = read(temperature, time);
      if (!found.ok) return;
      expect(readDocument(setHeat(demo, 'b1', found.heat)).ok).toBe(true);
    }),
  );
});
