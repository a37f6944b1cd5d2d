import { expect, test } from 'vitest';
import { type Look, makesOf, startOf } from '../../../src/formula/time/looks';

const look = (changes: Partial<Look>): Look => ({
  batch: 'b1',
  found: 'looked',
  at: 100,
  hours: 10,
  expected: null,
  acidity: null,
  ...changes,
});

const shape = (looks: readonly Look[], slack = 6) =>
  makesOf(looks, slack).map((make) => make.map(({ batch, hours }) => `${batch} ${hours}`));

test('looks whose grains went in together are at one make, in the order of their hours', () => {
  const looks = [look({ at: 114, hours: 24 }), look({ at: 100 }), look({ at: 106, hours: 14 })];
  expect(shape(looks)).toEqual([['b1 10', 'b1 14', 'b1 24']]);
  expect(shape([...looks].reverse())).toEqual(shape(looks));
});

test('the same column made again is another make, and so is another column at the same time', () => {
  expect(shape([look({}), look({ at: 124 }), look({ batch: 'b2' })])).toEqual([['b1 10'], ['b2 10'], ['b1 10']]);
});

test('starts are one up to the slack from the first, and two beyond it', () => {
  expect(shape([look({ at: 100 }), look({ at: 106 })])).toHaveLength(1);
  expect(shape([look({ at: 100 }), look({ at: 106.1 })])).toHaveLength(2);
  expect(shape([look({ at: 100 }), look({ at: 104 }), look({ at: 108 })])).toEqual([['b1 10', 'b1 10'], ['b1 10']]);
});

test('a look without hours has no start and belongs to none', () => {
  expect(shape([look({ hours: null })])).toEqual([]);
  const [[first] = []] = makesOf([look({ at: 30, hours: 4 })], 6);
  expect(first && startOf(first)).toBe(26);
});

test('looks written down in one sitting are of one make, whatever hours they tell', () => {
  const sitting = [look({ hours: 6 }), look({ hours: 12 }), look({ at: 100.2, hours: 20 })];
  expect(shape(sitting)).toEqual([['b1 6', 'b1 12', 'b1 20']]);
  expect(shape([...sitting].reverse())).toEqual(shape(sitting));
  expect(shape([look({ hours: 6 }), look({ at: 100.3, hours: 20 })])).toHaveLength(2);
  expect(shape([look({ hours: 6 }), look({ batch: 'b2', hours: 20 })])).toHaveLength(2);
});
