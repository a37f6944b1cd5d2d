// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/preact';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import type { Batch } from '../../../src/batch/document/document';
import { setPackage } from '../../../src/batch/edits/package-edits';
import { createStore, type Store } from '../../../src/batch/store/store';
import type { Given } from '../../../src/formula/recipe/recipe';
import { Swap } from '../../../src/ui/recipe/Swap';
import { onHand, recipeOf, typed } from '../../batches';
import { documentOf } from '../../stocked';
import { textOf } from '../open-sheet';

afterEach(cleanup);

function Swapping({ store }: { readonly store: Store }) {
  const [batch] = store.document.value.batches;
  return batch === undefined ? null : <Swap batch={batch} store={store} />;
}

function openSwap(given: readonly Given[], edit: (store: Store) => void = () => {}) {
  const store = createStore(documentOf(recipeOf({ given })));
  edit(store);
  const user = userEvent.setup();
  render(<Swapping store={store} />);
  const batch = (): Batch => {
    const [first] = store.document.value.batches;
    if (first === undefined) throw new Error('there is no batch');
    return first;
  };
  const row = (name: string) => textOf(screen.getByRole('row', { name: (all) => all.startsWith(name) }));
  /** Hexose that the batch adds, g. */
  const sugar = () => {
    const { of } = store.formulationOf(batch());
    return of('sweetenerMass') * of('fermentable');
  };
  const price = (name: string) => screen.getByRole<HTMLInputElement>('textbox', { name: `Price of 1 kg: ${name}` });
  return { store, user, batch, row, sugar, price };
}

describe('the sweeteners at equal fermentable sugar', () => {
  test('are a row each: amount, spoons, water, kinds of sugar, spoon for spoon, taste', () => {
    const { row } = openSwap([typed('caneEquivalent', 18)]);
    expect(row('Cane sugar, white')).toMatch(/in use.*18 g.*100%, 0%, 0%.*0% sugar/);
    // 22.99 g of honey, 17.1 % water; a cup holds 278.8 g of hexose against 210.1 g.
    expect(row('Honey')).toMatch(/23 g.*tbsp.*3\.9 g.*\+33% sugar/);
    expect(row('Stevia')).toMatch(/ferment/);
    expect(screen.queryByRole('button', { name: /^Use Stevia/ })).toBeNull();
    expect(screen.queryByRole('button', { name: 'Use Cane sugar, white' })).toBeNull();
  });

  test('are none where the batch adds no sugar', () => {
    openSwap([typed('sweetenerMass', 0)]);
    expect(screen.queryByRole('table')).toBeNull();
    expect(screen.getByText(/nothing to swap/)).toBeTruthy();
  });

  test.each([
    ['typed', typed('sweetenerMass', 18)],
    ['typed as cane sugar', typed('caneEquivalent', 18)],
    ['all there is', onHand('sweetenerMass', 18)],
  ])('keep the sugar of a batch when one is used, by a weight that is %s', async (_, given) => {
    const { store, user, batch, sugar } = openSwap([given]);
    const before = sugar();
    await user.click(screen.getByRole('button', { name: 'Use Honey' }));
    expect(batch().sweetener).toEqual([{ id: 'honey', share: 1 }]);
    expect(sugar() / before).toBeCloseTo(1, 2);
    expect(store.undoName.value).toBe('Swap the sweetener for Honey');
    store.undo();
    expect(store.undoName.value).toBeNull();
  });
});

describe('a blend', () => {
  test.each([
    ['50', 0.5],
    ['25 %', 0.25],
    ['30', 0.3],
  ])('of %s by weight keeps the sugar of the batch, as one step', async (label, share) => {
    const { store, user, batch, sugar } = openSwap([typed('sweetenerMass', 18)]);
    const before = sugar();
    await user.selectOptions(screen.getByRole('combobox', { name: /^Blend cane sugar, white with/ }), 'Honey');
    const field = screen.getByRole('textbox', { name: 'Share of Honey, % of the weight' });
    await user.clear(field);
    await user.type(field, label);
    await user.click(screen.getByRole('button', { name: 'Blend' }));
    expect(batch().sweetener.map(({ id }) => id)).toEqual(['caneWhite', 'honey']);
    expect(batch().sweetener[1]?.share).toBeCloseTo(share, 12);
    expect(sugar() / before).toBeCloseTo(1, 2);
    expect(store.undoName.value).toBe('Blend Cane sugar, white with Honey');
  });
});

test('a share that is none is told beside its field, and blends nothing', async () => {
  const { store, user } = openSwap([typed('sweetenerMass', 18)]);
  const field = screen.getByRole('textbox', { name: 'Share of Honey, % of the weight' });
  await user.clear(field);
  await user.type(field, '130');
  expect(textOf(screen.getByRole('alert'))).toContain('between 0 and 100 %');
  await user.click(screen.getByRole('button', { name: 'Blend' }));
  expect(store.undoName.value).toBeNull();
});

describe('the price of a sweetener', () => {
  test('is kept as one step and gives what the amount costs', async () => {
    const { store, user, row, price } = openSwap([typed('caneEquivalent', 18)]);
    await user.type(price('Honey'), '9.50');
    await user.tab();
    expect(store.document.value.packages).toMatchObject([{ food: 'sweetener.honey', price: '9.5' }]);
    // 22.99 g at 9.50 a kilogram.
    expect(row('Honey')).toContain('costs 0.22');
    expect(store.undoName.value).toBe('Price honey: 9.5 for 1 kg');
    await user.clear(price('Honey'));
    await user.tab();
    expect(store.document.value.packages).toEqual([]);
  });

  test('that can’t be read is said beside it, and the old one is kept', async () => {
    const { store, user, row, price } = openSwap([typed('caneEquivalent', 18)]);
    await user.type(price('Honey'), '9.50');
    await user.tab();
    await user.clear(price('Honey'));
    await user.type(price('Honey'), 'dear');
    await user.tab();
    expect(row('Honey')).toContain('Type a price as a number');
    expect(store.document.value.packages?.[0]?.price).toBe('9.5');
  });

  test('is shown with the cook’s own decimal sign', () => {
    const { price } = openSwap([typed('caneEquivalent', 18)], (store) => {
      store.changeSettings({ decimalComma: true });
      const amount = { text: '1 kg', amount: 1000, kind: 'mass' } as const;
      store.takeEdit(setPackage(store.document.value, 'sweetener.honey', { amount, price: '9.5' }), 'Price');
    });
    expect(price('Honey').value).toBe('9,50');
  });

  test('is of the package it was priced by, a jar of so many mL too', async () => {
    const { store, user, row } = openSwap([typed('caneEquivalent', 18)], (opened) => {
      const amount = { text: '350 mL', amount: 350, kind: 'volume' } as const;
      opened.takeEdit(setPackage(opened.document.value, 'sweetener.honey', { amount, price: '8' }), 'Price');
    });
    // 350 mL of honey are 501.5 g, a cup being 339 g: 22.99 g of it at 8.
    expect(row('Honey')).toContain('costs 0.37');
    const field = screen.getByRole('textbox', { name: 'Price of 350 mL: Honey' });
    await user.clear(field);
    await user.type(field, '4');
    await user.tab();
    expect(store.document.value.packages).toMatchObject([{ amount: { text: '350 mL' }, price: '4' }]);
    expect(row('Honey')).toContain('costs 0.18');
  });
});
