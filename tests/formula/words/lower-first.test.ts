import { expect, test } from 'vitest';
import { lowerFirst } from '../../../src/formula/words/lower-first';

test('a text within a sentence begins small, and is otherwise as it was', () => {
  expect(lowerFirst('Start with only 10 g/L')).toBe('start with only 10 g/L');
  expect(lowerFirst('')).toBe('');
});
