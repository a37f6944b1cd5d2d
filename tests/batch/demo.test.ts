import { expect, test } from 'vitest';
import { demo } from '../../src/batch/demo';
import { recipeOf } from '../../src/batch/document';
import { formulate } from '../../src/formula/formulate';
import { severities } from '../../src/formula/problem';
import { first } from './any-edit';

test('the demo fills its jar, and nothing in it is refused', () => {
  const { rows, sizedFrom } = formulate(recipeOf(demo, first(demo)));
  expect(sizedFrom).toBe('jar');
  const refused = Object.values(rows).flatMap(({ problems }) =>
    problems.filter(({ code }) => severities[code] === 'refusal'),
  );
  expect(refused).toEqual([]);
});
