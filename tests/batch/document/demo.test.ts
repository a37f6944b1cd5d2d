import { expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { recipeOf } from '../../../src/batch/document/document';
import { formulate } from '../../../src/formula/engine/formulate';
import { severities } from '../../../src/formula/recipe/problem';
import { first } from '../any-edit';

test('the demo fills its jar, and nothing in it is refused', () => {
  const { rows, sizedFrom } = formulate(recipeOf(demo, first(demo)));
  expect(sizedFrom).toBe('jar');
  const refused = Object.values(rows).flatMap(({ problems }) =>
    problems.filter(({ code }) => severities[code] === 'refusal'),
  );
  expect(refused).toEqual([]);
});
