import { expect, test } from 'vitest';
import { demo } from '../../src/batch/demo';
import { measureCell, typeCell } from '../../src/batch/edits';
import { changeSettings } from '../../src/batch/settings';
import { first } from './any-edit';

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
  const typed = measureCell(typeCell(demo, 'b1', 'waterRatio', '4,5'), 'b1', 'pulpMass', '99,5 g');
  expect(first(typed)).toMatchObject({ given: [{ amount: null }], measured: { pulpMass: { amount: null } } });
  expect(first(changeSettings(typed, { decimalComma: true }))).toMatchObject({
    given: [{ row: 'waterRatio', text: '4,5', amount: 4.5 }],
    measured: { pulpMass: { text: '99,5 g', amount: 99.5 } },
  });
});
