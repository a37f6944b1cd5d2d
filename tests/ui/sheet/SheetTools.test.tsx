// @vitest-environment happy-dom
import { cleanup, screen, waitFor } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { openSheet, textOf } from '../open-sheet';

afterEach(cleanup);

const rowsOf = (container: Element) =>
  [...container.querySelectorAll('[data-batch="b1"]')].map((cell) => cell.getAttribute('data-quantity'));

/** Two batches that are alike but for the glass, in which 200 mL and 250 mL are told apart. */
async function openTwo() {
  return openSheet((store) => {
    store.typeCell('b1', 'milkVolume', '1 L');
    store.copyBatch('b1');
    store.renameBatch('b2', 'Small glass');
    store.typeCell('b2', 'servingSize', '200 mL');
  });
}

describe('adding a batch', () => {
  test('puts it after the one that is looked at, and goes there', async () => {
    const { store, user, container } = await openTwo();
    await user.click(await screen.findByRole('button', { name: '+ Batch' }));
    expect(store.document.value.batches.map(({ id }) => id)).toEqual(['b1', 'b3', 'b2']);
    await waitFor(() => expect(container.querySelector('[data-spot="true"]')?.getAttribute('data-batch')).toBe('b3'));
    expect(store.undoName.value).toBe('Add a batch');
  });
});

test('one batch has nothing to be told apart from', async () => {
  await openSheet();
  await screen.findByRole('button', { name: '+ Batch' });
  expect(screen.queryByRole('checkbox', { name: 'Only what differs' })).toBeNull();
  expect(screen.queryByRole('combobox', { name: 'Compare with' })).toBeNull();
});

describe('only rows that differ', () => {
  test('are left on the sheet, and all come back', async () => {
    const { user, container } = await openTwo();
    const all = rowsOf(container);
    const only = await screen.findByRole('checkbox', { name: 'Only what differs' });
    await user.click(only);
    await waitFor(() => expect(rowsOf(container)).toEqual(['servings', 'drinkVolume', 'servingSize']));
    await user.click(only);
    await waitFor(() => expect(rowsOf(container)).toEqual(all));
  });
});

describe('comparing', () => {
  test('shows how far the others are from one batch, in its unit and in per cent', async () => {
    const { user, container } = await openTwo();
    await user.selectOptions(await screen.findByRole('combobox', { name: /Compare with/ }), 'Saturday almond');
    const cell = (batch: string, row: string) => container.querySelector(`[id="remarks-${row}-${batch}"] .compared`);
    await waitFor(() => expect(cell('b2', 'servingSize')).not.toBeNull());
    const there = cell('b2', 'servingSize');
    expect(there === null ? '' : textOf(there)).toBe('−50 mL, −20 %');
    expect([cell('b1', 'servingSize'), cell('b2', 'milkVolume')]).toEqual([null, null]);
  });

  test('with nothing, or with a batch that is gone, shows nothing', async () => {
    const { store, user, container } = await openTwo();
    const menu = await screen.findByRole('combobox', { name: /Compare with/ });
    await user.selectOptions(menu, 'Small glass');
    await waitFor(() => expect(container.querySelectorAll('.compared').length).toBeGreaterThan(0));
    await user.selectOptions(menu, 'nothing');
    await waitFor(() => expect(container.querySelectorAll('.compared').length).toBe(0));
    await user.selectOptions(menu, 'Small glass');
    store.removeBatch('b2');
    await waitFor(() => expect(container.querySelectorAll('.compared').length).toBe(0));
  });
});
