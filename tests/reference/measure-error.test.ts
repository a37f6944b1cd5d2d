import { expect, test } from 'vitest';
import { foodMeasures } from '../../src/reference/food-measures';
import { doubtfulMeasures, loosely, measureErrors, measureKinds } from '../../src/reference/measure-error';

test('the errors of kitchen measures are remembered or judged, never published', () => {
  for (const { unit } of Object.values(measureErrors)) expect(unit).toBe('share');
  for (const { unit } of Object.values(loosely)) expect(unit).toBe('times');
  for (const { origin } of [...Object.values(measureErrors), ...Object.values(loosely)]) {
    expect(['from memory', 'judgement']).toContain(origin.kind);
  }
});

test('every record has a kind, and every doubtful measure is in its record', () => {
  expect(Object.keys(measureKinds).sort()).toEqual(Object.keys(foodMeasures).sort());
  for (const { food, unit } of doubtfulMeasures)
    expect(foodMeasures[food].measures.map((each) => each.unit)).toContain(unit);
});
