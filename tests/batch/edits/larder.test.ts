import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { longestName, mostOwnFoods } from '../../../src/batch/document/document-limits';
import { readDocument } from '../../../src/batch/document/read-document';
import { forgetOwnFood, keepOwnFood, type OwnFood } from '../../../src/batch/edits/larder';
import { typePrice } from '../../../src/batch/edits/package-edits';
import { createStore } from '../../../src/batch/store/store';
import { sweetenerIds } from '../../batches';

const oats: OwnFood = { name: 'Sprouted oats', grams: 90, millilitres: 250 };

describe('a food weighed once', () => {
  test('is kept, and weighed again takes the old figure’s place', () => {
    const kept = keepOwnFood(keepOwnFood(demo, { ...oats, name: 'Teff' }), oats);
    expect(kept.ownFoods?.map(({ name }) => name)).toEqual(['Teff', 'Sprouted oats']);
    const again = keepOwnFood(kept, { ...oats, grams: 95 });
    expect(again.ownFoods?.filter(({ name }) => name === oats.name)).toEqual([{ ...oats, grams: 95 }]);
    expect(again.ownFoods).toHaveLength(2);
  });

  test('with the same figure is no change, and so no step', () => {
    const kept = keepOwnFood(demo, oats);
    expect(keepOwnFood(kept, { ...oats })).toBe(kept);
  });

  test('is forgotten by its name; another name changes nothing', () => {
    const kept = keepOwnFood(demo, oats);
    expect(forgetOwnFood(kept, oats.name).ownFoods).toEqual([]);
    expect(forgetOwnFood(kept, 'Rye')).toBe(kept);
    expect(forgetOwnFood(demo, 'Rye')).toBe(demo);
  });

  test('is not kept beyond what can be saved, while those kept can still be weighed again', () => {
    const ownFoods = Array.from({ length: mostOwnFoods }, (_, at) => ({ ...oats, name: `Food ${at}` }));
    const full = { ...demo, ownFoods };
    expect(keepOwnFood(full, oats)).toBe(full);
    const again = keepOwnFood(full, { ...oats, name: 'Food 3', grams: 1 });
    expect(again.ownFoods).toHaveLength(mostOwnFoods);
    expect(readDocument(again).ok).toBe(true);
  });

  test('comes back by undo', () => {
    const store = createStore(keepOwnFood(demo, oats));
    store.takeEdit(forgetOwnFood(store.document.value, oats.name), 'Forget');
    expect(store.document.value.ownFoods).toEqual([]);
    store.undo();
    expect(store.document.value.ownFoods).toEqual([oats]);
  });
});

describe('a saved larder', () => {
  const positive = fc.double({ min: Number.MIN_VALUE, max: 1e12, noNaN: true });
  const anyFood = fc.record({
    name: fc.string({ minLength: 1, maxLength: longestName }),
    grams: positive,
    millilitres: positive,
  });
  const anyPrice = fc.tuple(fc.constantFrom(...sweetenerIds), fc.nat(1_000_000));

  test('is read again as it was', () => {
    fc.assert(
      fc.property(fc.array(anyFood, { maxLength: 8 }), fc.array(anyPrice), (foods, prices) => {
        const stocked = foods.reduce(keepOwnFood, demo);
        const document = prices.reduce((all, [id, cents]) => {
          const typed = typePrice(all, `sweetener.${id}`, '500 g', (cents / 100).toFixed(2));
          return typed.ok ? typed.document : expect.fail(typed.why);
        }, stocked);
        const text = JSON.stringify(document);
        const read = readDocument(JSON.parse(text));
        expect(read.ok && JSON.stringify(read.document)).toBe(text);
      }),
    );
  });

  test.each([
    ['a food that weighs nothing', { ownFoods: [{ ...oats, grams: 0 }] }, 'ownFoods.0.grams'],
    ['a food below zero', { ownFoods: [oats, { ...oats, millilitres: -250 }] }, 'ownFoods.1.millilitres'],
    ['a weight in words', { ownFoods: [{ ...oats, grams: '90' }] }, 'ownFoods.0.grams'],
    ['a missing weight', { ownFoods: [{ ...oats, grams: null }] }, 'ownFoods.0.grams'],
    ['a food without a name', { ownFoods: [{ ...oats, name: '' }] }, 'ownFoods.0.name'],
    ['an endless name', { ownFoods: [{ ...oats, name: 'x'.repeat(longestName + 1) }] }, 'ownFoods.0.name'],
    ['foods that are no list', { ownFoods: { 0: oats } }, 'ownFoods'],
    ['no foods as null', { ownFoods: null }, 'ownFoods'],
    ['a price below zero', { prices: { honey: -1 } }, 'prices.honey'],
    ['a price in words', { prices: { honey: '9.50' } }, 'prices.honey'],
    ['prices in a list', { prices: [9.5] }, 'prices'],
  ])('with %s is refused, with the place', (_, wrong, at) => {
    const read = readDocument(JSON.parse(JSON.stringify({ ...demo, ...wrong })));
    expect(read).toEqual({ ok: false, why: { code: 'wrongPart', at } });
  });

  test('with more foods than a larder holds is refused, with how many that is', () => {
    const ownFoods = Array.from({ length: mostOwnFoods + 1 }, () => oats);
    expect(readDocument(JSON.parse(JSON.stringify({ ...demo, ownFoods })))).toEqual({
      ok: false,
      why: { code: 'tooMany', at: 'ownFoods', most: mostOwnFoods },
    });
  });

  test('with a price of what is no sweetener is refused', () => {
    expect(readDocument({ ...demo, prices: { gold: 60000 } }).ok).toBe(false);
  });
});
