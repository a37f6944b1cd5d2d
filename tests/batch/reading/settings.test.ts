import { expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { measureCell, typeCell } from '../../../src/batch/edits/edits';
import { changeSettings } from '../../../src/batch/reading/settings';
import { first } from '../any-edit';

test('the same settings are no change', () => {
  expect(changeSettings(demo, { leads: 'metric', scoops: { ...demo.settings.scoops } })).toBe(demo);
});

test('an amount that was read stays as it was, whichever cup or unit comes to lead', () => {
  const typed = typeCell(typeCell(demo, 'b1', 'milkVolume', '2 cups'), 'b1', 'sourceMass', '300');
  const changed = changeSettings(typed, { leads: 'us', cups: 'metric' });
  expect(changed.settings).toEqual({ ...demo.settings, leads: 'us', cups: 'metric' });
  expect(first(changed)).toBe(first(typed));
});

test('a text that could not be read is tried again', () => {
  const typed = measureCell(typeCell(demo, 'b1', 'sourceMass', '1,250 kg'), 'b1', 'pulpMass', '1,125 kg');
  expect(first(typed)).toMatchObject({ given: [{ amount: null }], measured: { pulpMass: { amount: null } } });
  expect(first(changeSettings(typed, { decimalComma: true }))).toMatchObject({
    given: [{ row: 'sourceMass', text: '1,250 kg', amount: 1250 }],
    measured: { pulpMass: { text: '1,125 kg', amount: 1125 } },
  });
});
