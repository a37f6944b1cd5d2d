import { expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { atThisDoseAndSugar } from '../../../src/formula/rows/dose-and-sugar';
import { recipeOf, typed } from '../../batches';

const timesAsLong = (...given: ReturnType<typeof typed>[]): number =>
  atThisDoseAndSugar(formulate(recipeOf({ given })).evaluation);

test('the usual dose and sugar take as long as usual', () => {
  expect(timesAsLong()).toBeCloseTo(1, 12);
});

test('half the dose takes 2^0.75 times as long, twice the dose as much less', () => {
  expect(timesAsLong(typed('grainRate', 27))).toBeCloseTo(2 ** 0.75, 9);
  expect(timesAsLong(typed('grainRate', 108))).toBeCloseTo(2 ** -0.75, 9);
});

test('more than twice the dose counts as twice', () => {
  expect(timesAsLong(typed('grainRate', 200))).toBeCloseTo(2 ** -0.75, 9);
  expect(timesAsLong(typed('grainRate', 107))).toBeGreaterThan(2 ** -0.75);
});

test('half the sugar takes 2^0.15 times as long', () => {
  const usual = formulate(recipeOf()).of('usualStart');
  expect(timesAsLong(typed('startingSugar', usual / 2))).toBeCloseTo(2 ** 0.15, 9);
});

test('a kitchen whose usual is no sugar at all has nothing to compare with, and counts the dose alone', () => {
  const yours = { 'kitchen.sugarUsual': { value: 0, how: 'typed' } } as const;
  const given = [typed('sugarRate', 20), typed('grainRate', 27)];
  const { evaluation } = formulate(recipeOf({ source: 'cartonPlain', yours, given }));
  expect(evaluation.of('usualStart')).toBe(0);
  expect(atThisDoseAndSugar(evaluation)).toBeCloseTo(2 ** 0.75, 9);
});

test('where the milk can’t be worked out there is no figure', () => {
  expect(timesAsLong(typed('waterRatio', 0.2))).toBeNaN();
});

test('what can’t be worked out is no figure to the power of 0 either', () => {
  for (const key of ['kitchen.sugarExponent', 'kitchen.doseExponent']) {
    const yours = { [key]: { value: 0, how: 'typed' } } as const;
    const given = [typed('blendWater', null), typed('sourceMass', null)];
    expect(atThisDoseAndSugar(formulate(recipeOf({ yours, given })).evaluation)).toBeNaN();
  }
});
