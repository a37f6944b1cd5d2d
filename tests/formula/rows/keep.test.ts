import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { anyRecipe, recipeOf, sourceIds, typed } from '../../batches';
import { codesAt, numberIn, worked } from '../../results';

describe('days in the fridge', () => {
  test('are 7 for almonds, 6 to 8', () => {
    const { keepDays } = formulate(recipeOf()).rows;
    expect(keepDays).toMatchObject({ value: 7, range: { low: 6, high: 8 }, status: 'workedOut' });
  });

  test('are 8.5 for coconut, 7 to 10', () => {
    const { keepDays } = formulate(recipeOf({ source: 'coconutFresh' })).rows;
    expect(keepDays.value).toBe(8.5);
    expect(keepDays.range?.low).toBeCloseTo(7, 9);
    expect(keepDays.range?.high).toBeCloseTo(10, 9);
  });

  test.each(sourceIds)('of %s lie inside their range', (source) => {
    const formulation = formulate(recipeOf({ source }));
    const { range } = formulation.rows.keepDays;
    expect(range?.low).toBeLessThanOrEqual(numberIn(formulation, 'keepDays'));
    expect(range?.high).toBeGreaterThanOrEqual(numberIn(formulation, 'keepDays'));
  });

  test('can’t be typed; a figure of one’s own of a day to sixty stands', () => {
    expect(codesAt(formulate(recipeOf({ given: [typed('keepDays', 5)] })), 'keepDays')).toEqual(['notTyped']);
    const own = (value: number) => recipeOf({ yours: { 'almond.keepUsual': { value, how: 'typed' } } });
    expect(worked(own(4), 'keepDays')).toBe(4);
    expect(worked(own(60), 'keepDays')).toBe(60);
    expect(worked(own(61), 'keepDays')).toBe(7);
    expect(codesAt(formulate(own(61)), 'source')).toContain('coefficientRefused');
  });

  test('hang on the source alone, whatever else is typed', () => {
    fc.assert(
      fc.property(anyRecipe, (recipe) => {
        const plain = { ...recipe, yours: {}, given: recipe.given.filter(({ row }) => row !== 'keepDays') };
        expect(worked(plain, 'keepDays')).toBe(worked(recipeOf({ source: recipe.source }), 'keepDays'));
      }),
    );
  });
});
