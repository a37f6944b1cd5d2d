import { expect, test } from 'vitest';
import { describeReadProblem } from '../../src/measure/read-problem-words';
import { withoutTurns } from '../../src/measure/without-turns';

test('what turns the words around it goes, and letters of any direction stay', () => {
  expect(withoutTurns('\u202Egnp\u2066.exe\u2069')).toBe('gnp.exe');
  expect(withoutTurns('כפיר שקדים, كفير')).toBe('כפיר שקדים, كفير');
});

test('a sentence about what was typed can’t be turned by it', () => {
  const said = describeReadProblem({ code: 'unknownUnit', at: 0, text: '', typed: '\u202E5 xg', wanted: 'mass' });
  expect(said).toBe('Can’t read “5 xg”. Write a number and a unit, such as 170 g.');
});
