import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import {
  additionName,
  additionWeight,
  addToBottle,
  bottleSweeteners,
} from '../../../src/formula/fizz/bottle-additions';
import { bottledRecipe as recipeOf, typed } from '../../batches';

const plain = formulate(recipeOf());
const added = (...asked: readonly [Parameters<typeof addToBottle>[1], number, number | null]) =>
  addToBottle(plain, ...asked) ?? expect.fail('it comes to nothing');

describe('what is put in a bottle', () => {
  test('of white sugar, 5 g in 475 mL, is 5 × 1.05052 = 5.2526 g of hexose: 11.058 g/L', () => {
    const { hexose, perLitre, filled } = added('caneWhite', 5, null);
    expect(filled).toBe(475);
    expect(hexose.value).toBeCloseTo(5.2526, 3);
    expect(perLitre.value).toBeCloseTo(11.058, 2);
    expect(perLitre.high).toBe(perLitre.low);
  });

  test('by its label, 50 g with 10 g in 100 g, is 5 to 5.263 g: 10.526 to 11.080 g/L', () => {
    const { perLitre } = added('byLabel', 50, 10);
    expect(perLitre.low).toBeCloseTo(10.526, 3);
    expect(perLitre.high).toBeCloseTo(11.08, 2);
  });

  test('of a sugar no table tells is a range', () => {
    const { perLitre } = added('coconutSugar', 5, null);
    expect(perLitre.low).toBeLessThan(perLitre.value);
    expect(perLitre.high).toBeGreaterThan(perLitre.value);
  });

  test('is more per litre in a smaller bottle', () => {
    const small = formulate(recipeOf({ given: [typed('bottleVolume', 250)] }));
    expect(addToBottle(small, 'caneWhite', 5, null)?.perLitre.value).toBeCloseTo(2 * 11.058, 2);
  });

  test('is nothing for an amount below 0, a label that is none, and a bottle that has no size', () => {
    expect(addToBottle(plain, 'caneWhite', -1, null)).toBeNull();
    expect(addToBottle(plain, 'caneWhite', Number.NaN, null)).toBeNull();
    expect(addToBottle(plain, 'byLabel', 10, null)).toBeNull();
    expect(addToBottle(plain, 'byLabel', 10, 101)).toBeNull();
    const none = formulate(recipeOf({ given: [typed('bottleTime', 0)] }));
    expect(addToBottle(none, 'caneWhite', 5, null)).toBeNull();
  });

  test('is as much more as is put in, and its hexose over what is filled', () => {
    fc.assert(
      fc.property(fc.constantFrom(...bottleSweeteners), fc.integer({ min: 1, max: 100 }), (id, grams) => {
        const [one, many] = [added(id, 1, null), added(id, grams, null)];
        expect(many.hexose.value / one.hexose.value).toBeCloseTo(grams, 9);
        expect((many.perLitre.high * many.filled) / 1000 / many.hexose.high).toBeCloseTo(1, 12);
        // No sugar is more hexose than its own weight and the water that splits it.
        expect(one.hexose.high).toBeGreaterThan(0);
        expect(one.hexose.high).toBeLessThanOrEqual(1.0527);
      }),
    );
  });
});

test('what nothing can ferment is not offered, and what is has its name', () => {
  expect(bottleSweeteners).toContain('caneWhite');
  for (const id of ['none', 'stevia', 'erythritol'] as const) expect(bottleSweeteners).not.toContain(id);
  expect(additionName('dates')).toBe('Dates, medjool, chopped');
  expect(additionName('honey')).toBe('Honey');
});

test('a spoon weighs what is published for it, 200 g of sugar in a cup; of fruit as much as its juice', () => {
  expect(additionWeight('caneWhite')).toBeCloseTo(200 / 236.5882365, 9);
  expect(additionWeight('dates')).toBeNull();
  expect(additionWeight('byLabel')).toBe(1.05);
});
