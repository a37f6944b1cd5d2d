import { expect, test } from 'vitest';
import { formulate } from '../../../../src/formula/engine/formulate';
import type { Recipe } from '../../../../src/formula/recipe/recipe';
import { labelDaysOf } from '../../../../src/formula/steps/label-text';
import { recipeOf } from '../../../batches';

function ends(yours: Recipe['yours'] = {}): number[] {
  const { of } = formulate(recipeOf({ yours }));
  return [of('keepLeast'), of('keepMost')];
}

test('days in the fridge lie between the ends of what is usual', () => {
  expect(ends()).toEqual([6, 8]);
});

test('a figure of one’s own is both ends, on the label too', () => {
  const yours = { 'almond.keepUsual': { value: 14, how: 'typed' } } as const;
  expect(ends(yours)).toEqual([14, 14]);
  expect(labelDaysOf(formulate(recipeOf({ yours })))).toEqual({ best: 14, last: 14 });
});
