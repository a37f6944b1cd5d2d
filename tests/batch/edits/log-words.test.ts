import { expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import type { Logged } from '../../../src/batch/document/document';
import {
  describeEntry,
  describeRecipeThen,
  logSteps,
  whyNotAcid,
  whyUnlearned,
  writeWhen,
} from '../../../src/batch/edits/log-words';

const entry: Logged = {
  ...{ batch: 'b1', name: 'Saturday almond', at: '2026-11-24T08:05', found: 'ready', hours: 9, expected: 12 },
  ...{ temperature: 21, acidity: 4.4, note: '' },
};
const plain = (text: string) => text.replaceAll('\u00A0', ' ');

test('an entry says what was found, after how long, in which room and how acid', () => {
  expect(plain(describeEntry(entry, demo.settings))).toBe('Ready after 9 h · room 21 °C (70 °F) · pH 4.40');
  const us = { ...demo.settings, leads: 'us' } as const;
  expect(plain(describeEntry(entry, us))).toBe('Ready after 9 h · room 70 °F (21 °C) · pH 4.40');
  const bare = { ...entry, hours: null, temperature: null, acidity: null, found: 'looked' } as const;
  expect(describeEntry(bare, demo.settings)).toBe('Just looked');
});

test('an entry says of what it was then, of a carton without a name by its source', () => {
  const was: NonNullable<Logged['was']> = {
    ...{ source: 'almond', grains: 'water', sweetener: [{ id: 'caneWhite', share: 100 }] },
    ...{ sugarRate: 30, startingSugar: 30, grainRate: 54 },
  };
  const then = (of: Logged['was']) =>
    plain(describeRecipeThen(of === undefined ? {} : { was: of }, demo.settings) ?? '');
  expect(then(was)).toBe('almonds · water kefir grains, 54 g/L · 30 g/L sugar at the start');
  expect(then({ ...was, carton: 'Oat, blue', grainRate: null, startingSugar: null })).toBe(
    '“Oat, blue” · water kefir grains',
  );
  expect(then({ ...was, carton: ' ', startingSugar: null })).toBe('almonds · water kefir grains, 54 g/L');
  expect(then(undefined)).toBe('');
});

test('its time is written as a day and an hour', () => {
  expect(writeWhen(entry)).toBe('24 Nov 2026, 08:05');
});

test('an entry that teaches nothing says why, a mere look need not', () => {
  expect(whyUnlearned(entry)).toBeNull();
  expect(whyUnlearned({ ...entry, found: 'looked', hours: null })).toBeNull();
  expect(whyUnlearned({ ...entry, expected: null })).toMatch(/16–30 °C \(61–86 °F\)/);
  expect(whyUnlearned({ ...entry, hours: 0.01 })).toMatch(/hours/);
});

test('an entry that tastes done above the usual pH says that taste is no test', () => {
  expect(whyNotAcid({ ...entry, acidity: 4.6 }, demo.settings)).toBeNull();
  expect(whyNotAcid({ ...entry, acidity: null }, demo.settings)).toBeNull();
  expect(whyNotAcid({ ...entry, acidity: 5.2, found: 'flat' }, demo.settings)).toBeNull();
  expect(whyNotAcid({ ...entry, acidity: 5.2 }, { ...demo.settings, decimalComma: true })).toBe(
    'Taste is no test: this pH is above 4,6, so it is not acid enough yet.',
  );
});

test('the steps name themselves for undo', () => {
  expect(plain(logSteps.add(entry, demo.settings))).toBe('Log “Ready after 9 h · room 21 °C (70 °F) · pH 4.40”');
  expect([logSteps.open(1), logSteps.open(3)]).toEqual(['Open a carton for 1 day', 'Open a carton for 3 days']);
});
