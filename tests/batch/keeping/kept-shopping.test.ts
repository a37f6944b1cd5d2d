import { expect, test } from 'vitest';
import { readBasket, withFood } from '../../../src/batch/keeping/kept-shopping';

test('what is in the basket is kept, each food once', () => {
  const one = withFood(withFood([], 'source.almond', true), 'source.almond', true);
  expect(one).toEqual(['source.almond']);
  expect(readBasket(JSON.stringify(withFood(one, 'sweetener.honey', true)))).toEqual([
    'source.almond',
    'sweetener.honey',
  ]);
  expect(withFood(one, 'source.almond', false)).toEqual([]);
});

test.each([null, '', 'nonsense', '{}', 'null', '7'])('%s is an empty basket', (text) => {
  expect(readBasket(text)).toEqual([]);
});

test('what is no food is left out, and never more than a basket holds', () => {
  expect(readBasket('["source.almond",3,null,{}]')).toEqual(['source.almond']);
  const many = Array.from({ length: 1000 }, (_, at) => `carton.${at}`);
  expect(readBasket(JSON.stringify(many))).toHaveLength(500);
  expect(many.reduce((basket, food) => withFood(basket, food, true), readBasket(null))).toHaveLength(500);
});
