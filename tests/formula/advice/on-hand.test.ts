import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { largestBatch, makeFrom, stockProblem } from '../../../src/formula/advice/on-hand';
import { changeRecipe } from '../../../src/formula/advice/typed-change';
import { formulate } from '../../../src/formula/engine/formulate';
import { type StockId, stockIds, stockRows } from '../../../src/formula/recipe/order';
import type { Problem } from '../../../src/formula/recipe/problem';
import type { Recipe, Stock } from '../../../src/formula/recipe/recipe';
import { recipeOf, sensibleRecipe, typed } from '../../batches';
import { agrees, numberIn } from '../../results';
import { anyOnHand } from '../../stocked';

const stocked = fc.tuple(sensibleRecipe, anyOnHand).map(([recipe, onHand]): Recipe => ({ ...recipe, onHand }));

function grams(amount: number): Stock {
  return { text: `${amount} g`, kind: 'mass', amount };
}

function largest(recipe: Recipe) {
  return largestBatch(formulate(recipe), recipe.onHand ?? {});
}

describe('the largest batch, when it is made', () => {
  test('takes all of what limits it, and never more of anything than there is', () => {
    fc.assert(
      fc.property(stocked, (recipe) => {
        const formulation = formulate(recipe);
        const found = largestBatch(formulation, recipe.onHand ?? {});
        fc.pre(found !== null);
        if (found === null) return;
        const made = formulate(changeRecipe(recipe, makeFrom(found.limitedBy, formulation)));
        expect(agrees(numberIn(made, 'milkVolume'), found.milk), `${made.rows.milkVolume.value}, ${found.milk}`).toBe(
          true,
        );
        for (const stock of stockIds) {
          const have = recipe.onHand?.[stock]?.amount;
          const { value, status } = made.rows[stockRows[stock]];
          if (typeof have !== 'number' || status === 'absent') continue;
          expect(value, stock).toBeLessThanOrEqual(have * (1 + 1e-9));
          if (stock === found.limitedBy) expect(agrees(Number(value), have), stock).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });

  test('is limited by the first of its limits, which go from the scarcest on', () => {
    fc.assert(
      fc.property(stocked, (recipe) => {
        const found = largest(recipe);
        if (found === null) return;
        const milks = found.limits.map(({ milk }) => milk);
        expect(milks).toEqual(milks.toSorted((a, b) => a - b));
        expect(found).toMatchObject({ limitedBy: found.limits[0].stock, milk: milks[0] });
      }),
    );
  });

  test('leaves a typed headspace and every typed rate as they are', () => {
    const recipe = recipeOf({
      given: [typed('headspaceDepth', 6), typed('sugarRate', 30), typed('grainRate', 40), typed('sourceMass', 90)],
      onHand: { source: grams(300) },
    });
    const made = formulate(changeRecipe(recipe, makeFrom('source', formulate(recipe))));
    expect(numberIn(made, 'sourceMass')).toBe(300);
    expect(numberIn(made, 'headspaceDepth')).toBeGreaterThanOrEqual(6);
    expect([numberIn(made, 'sugarRate'), numberIn(made, 'grainRate')]).toEqual([30, 40]);
    expect(numberIn(made, 'waterRatio')).toBe(numberIn(formulate(recipeOf()), 'waterRatio'));
  });
});

describe('what limits', () => {
  const rates = [typed('grainRate', 50), typed('sugarRate', 25)];
  const recipe = recipeOf({ given: rates });

  test('is named: grains for a litre of milk, beside plenty of all else', () => {
    // 50 g for a litre, so 45 g are enough for 900 mL.
    const onHand = { source: grams(5000), sweetener: grams(500), grains: grams(45) };
    const found = largestBatch(formulate(recipe), onHand);
    expect(found?.limitedBy).toBe('grains');
    expect(found?.milk).toBeCloseTo(900, 9);
    expect(found?.limits.map(({ stock }) => stock)).toEqual(['grains', 'sweetener', 'source']);
  });

  test('is named: jars, with the room that sweetener and grains take in them', () => {
    const found = largestBatch(formulate(recipe), { jars: { kind: 'count', amount: 2 }, grains: grams(500) });
    expect(found?.limitedBy).toBe('jars');
    const two = formulate(recipeOf({ given: [...rates, typed('vesselCount', 2)] }));
    expect(found?.milk).toBeCloseTo(numberIn(two, 'milkVolume'), 9);
  });

  test('is not the sweetener where none is taken', () => {
    const bare = recipeOf({ sweetener: [{ id: 'stevia', share: 1 }] });
    expect(largestBatch(formulate(bare), { sweetener: grams(10) })).toBeNull();
  });
});

describe('what is on hand', () => {
  test.each<[string, StockId, Stock, Problem['code'] | undefined]>([
    ['none', 'source', grams(0), 'notPositive'],
    ['less than none', 'grains', grams(-5), 'negative'],
    ['more than any kitchen holds', 'source', grams(1e9), 'tooLarge'],
    ['half a jar', 'jars', { text: '1.5', kind: 'count', amount: 1.5 }, 'notWhole'],
    [
      'a cup of what no cup weight is published for',
      'sweetener',
      { text: '1 c', kind: 'volume', amount: 240 },
      'noCupWeight',
    ],
    ['some', 'source', grams(300), undefined],
  ])('of %s says so', (_, stock, have, code) => {
    const recipe = recipeOf({ sweetener: [{ id: 'dates', share: 1 }], onHand: { [stock]: have } });
    expect(stockProblem(stock, formulate(recipe))?.code).toBe(code);
  });

  test('of nothing has nothing to say', () => {
    expect(stockProblem('source', formulate(recipeOf()))).toBeNull();
  });
});

describe('there is no largest batch', () => {
  test.each<[string, Recipe['onHand']]>([
    ['with nothing on hand', {}],
    ['from what can’t be read', { source: { text: 'a bag', kind: 'mass', amount: null } }],
    ['from what measures something else', { source: { text: '3 h', kind: 'time', amount: 3 } }],
    ['from half a jar', { jars: { text: '½', kind: 'count', amount: 0.5 } }],
    ['from less than nothing', { grains: grams(-5) }],
  ])('%s', (_, onHand = {}) => {
    expect(largestBatch(formulate(recipeOf()), onHand)).toBeNull();
  });

  test('while the rates need mending', () => {
    expect(largest(recipeOf({ given: [typed('waterRatio', 0.1)], onHand: { grains: grams(50) } }))).toBeNull();
  });
});

test('there is nothing to make from what is not on hand', () => {
  expect(makeFrom('source', formulate(recipeOf({ given: [typed('sourceMass', 90)] })))).toEqual([]);
});
