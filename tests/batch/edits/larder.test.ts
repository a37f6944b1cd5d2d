import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { longestName, mostOwnFoods } from '../../../src/batch/document/document-limits';
import { readDocument } from '../../../src/batch/document/read-document';
import { forgetOwnFood, keepOwnFood, type OwnFood, setPrice, sweetenerPrices } from '../../../src/batch/edits/larder';
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

describe('a price', () => {
  test('is kept by sweetener, changed, and forgotten', () => {
    const both = setPrice(setPrice(demo, 'honey', 9.5), 'caneWhite', 1.2);
    expect(sweetenerPrices(both)).toEqual({ honey: 9.5, caneWhite: 1.2 });
    expect(sweetenerPrices(setPrice(both, 'honey', 0))).toEqual({ honey: 0, caneWhite: 1.2 });
    expect(sweetenerPrices(setPrice(both, 'honey', null))).toEqual({ caneWhite: 1.2 });
  });

  test('of a package of another weight is that of its kilogram', () => {
    const amount = { text: '340 g', amount: 340, kind: 'mass' as const };
    const honey = { food: 'sweetener.honey', amount, price: '5.10' };
    expect(sweetenerPrices({ ...demo, packages: [honey] })).toEqual({ honey: 15 });
    const unread = { ...honey, amount: { ...amount, amount: null } };
    expect(sweetenerPrices({ ...demo, packages: [unread] })).toEqual({});
  });

  test('that is there already, or forgotten already, is no change', () => {
    const priced = setPrice(demo, 'honey', 9.5);
    expect(setPrice(priced, 'honey', 9.5)).toBe(priced);
    expect(setPrice(priced, 'caneWhite', null)).toBe(priced);
    expect(setPrice(demo, 'honey', null)).toBe(demo);
  });
});

describe('a saved larder', () => {
  const positive = fc.double({ min: Number.MIN_VALUE, max: 1e12, noNaN: true });
  const anyFood = fc.record({
    name: fc.string({ minLength: 1, maxLength: longestName }),
    grams: positive,
    millilitres: positive,
  });
  const anyPrices = fc.dictionary(fc.constantFrom(...sweetenerIds), fc.double({ min: 0, max: 1e9, noNaN: true }));

  test('is read again as it was', () => {
    fc.assert(
      fc.property(fc.array(anyFood, { maxLength: 8 }), anyPrices, (foods, prices) => {
        const stocked = foods.reduce(keepOwnFood, demo);
        const document = sweetenerIds.reduce((all, id) => setPrice(all, id, prices[id] ?? null), stocked);
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
