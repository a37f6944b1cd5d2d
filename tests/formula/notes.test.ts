import { describe, expect, test } from 'vitest';
import { coefficientIds, coefficients } from '../../src/formula/coefficients';
import { formulate } from '../../src/formula/formulate';
import { recipeOf, typed } from '../batches';
import { codesAt, numberIn, problemAt } from '../results';

describe('what is worth knowing', () => {
  test('is little, of a plain batch', () => {
    const { rows } = formulate(recipeOf());
    expect(Object.values(rows).flatMap(({ problems }) => problems)).toEqual([]);
  });

  test('is that sugars no table gives are an estimate: canned coconut milk has 0 to all of its carbohydrate', () => {
    const formulation = formulate(recipeOf({ source: 'coconutMilk' }));
    const added = numberIn(formulation, 'sugarRate');
    const problem = problemAt(formulation, 'startingSugar', 'sugarEstimated');
    const [low, high] = problem.code === 'sugarEstimated' ? [problem.low, problem.high] : [0, 0];
    expect(low).toBeCloseTo(added, 9);
    expect((low + high) / 2).toBeCloseTo(numberIn(formulation, 'startingSugar'), 9);
  });

  test('is a headspace under 2.5 cm, but not one of 2.5', () => {
    expect(codesAt(formulate(recipeOf({ given: [typed('headspaceDepth', 2.4)] })), 'headspaceDepth')).toEqual([
      'headspaceUnderWise',
    ]);
    expect(codesAt(formulate(recipeOf({ given: [typed('headspaceDepth', 2.5)] })), 'headspaceDepth')).toEqual([]);
  });

  test('is a figure of the cook’s own that can’t be, told where it belongs', () => {
    const formulation = formulate(
      recipeOf({
        yours: {
          'almond.uptake': { value: -1, how: 'typed' },
          'kitchen.servingUsual': { value: 1e9, how: 'typed' },
          'hemp.uptake': { value: -1, how: 'typed' },
        },
      }),
    );
    expect(problemAt(formulation, 'source', 'coefficientRefused')).toMatchObject({ coefficient: 'uptake', typed: -1 });
    expect(codesAt(formulation, 'source')).toEqual(['coefficientRefused']);
    expect(codesAt(formulation, 'servingSize')).toEqual(['coefficientRefused']);
    expect(numberIn(formulation, 'servingSize')).toBe(250);
  });

  test('of a refused figure finds a row for every coefficient', () => {
    for (const id of coefficientIds) {
      const { owner, least } = coefficients[id];
      const key = { kitchen: 'kitchen', vessel: 'quartWide', source: 'almond', grains: 'water' }[owner];
      const formulation = formulate(recipeOf({ yours: { [`${key}.${id}`]: { value: least - 1, how: 'typed' } } }));
      const told = Object.values(formulation.rows).filter(({ problems }) =>
        problems.some(({ code }) => code === 'coefficientRefused'),
      );
      expect(told.length, id).toBe(1);
    }
  });

  test('is every sweetener of a blend that feeds nothing', () => {
    const blend = recipeOf({
      sweetener: [
        { id: 'caneWhite', share: 0.5 },
        { id: 'stevia', share: 0.25 },
        { id: 'xylitol', share: 0.25 },
      ],
    });
    const formulation = formulate(blend);
    expect(codesAt(formulation, 'sweetener')).toEqual(['nothingToFerment', 'nothingToFerment']);
    expect(numberIn(formulation, 'sweetenerMass')).toBeGreaterThan(0);
  });
});
