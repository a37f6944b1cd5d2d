// @vitest-environment happy-dom
import { cleanup, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import type { Store } from '../../../src/batch/store/store';
import { openSheet } from '../open-sheet';

afterEach(cleanup);

const names = (store: Store) => store.document.value.batches.map(({ name }) => name);
const head = (name: string) => screen.findByRole('columnheader', { name: new RegExp(name) });
const tool = async (of: string, name: string) =>
  within(await head(of)).getByRole<HTMLButtonElement>('button', { name });

/** Two batches, the first as it was. */
async function openTwo() {
  return openSheet((store) => {
    store.addBatch();
    store.renameBatch('b2', 'Sunday hemp');
  });
}

describe('a batch', () => {
  test('is renamed, and named so everywhere', async () => {
    const { store, user } = await openSheet();
    await user.click(await tool('Saturday almond', 'Rename'));
    const input = screen.getByRole<HTMLInputElement>('textbox', { name: 'Name of the batch' });
    expect(input.value).toBe('Saturday almond');
    await user.clear(input);
    await user.type(input, 'Monday{Enter}');
    expect(names(store)).toEqual(['Monday']);
    expect(await screen.findByRole('heading', { name: 'Monday' })).toBeDefined();
    expect(store.undoName.value).toBe('Rename to Monday');
  });

  test.each(['{Escape}', '{Control>}a{/Control}{Delete}{Enter}'])('keeps its name after %s', async (keys) => {
    const { store, user } = await openSheet();
    await user.click(await tool('Saturday almond', 'Rename'));
    await user.keyboard(`${keys === '{Escape}' ? 'x' : ''}${keys}`);
    await screen.findByRole('heading', { name: 'Saturday almond' });
    expect([names(store), store.undoName.value]).toEqual([['Saturday almond'], null]);
  });

  test('is copied beside itself, all of it, and the copy is gone to', async () => {
    const { store, user, container } = await openSheet((made) => made.typeCell('b1', 'sourceMass', '200 g'));
    await user.click(await tool('Saturday almond', 'Copy'));
    const [one, copy] = store.document.value.batches;
    expect(copy).toEqual({ ...one, id: 'b2', name: 'Saturday almond, copy' });
    await waitFor(() => expect(container.querySelector('[data-spot="true"]')?.getAttribute('data-batch')).toBe('b2'));
  });

  test('is moved, but not beyond the ends', async () => {
    const { store, user } = await openTwo();
    expect((await tool('Saturday almond', 'Move left')).disabled).toBe(true);
    expect((await tool('Sunday hemp', 'Move right')).disabled).toBe(true);
    await user.click(await tool('Sunday hemp', 'Move left'));
    expect(names(store)).toEqual(['Sunday hemp', 'Saturday almond']);
    store.undo();
    expect(names(store)).toEqual(['Saturday almond', 'Sunday hemp']);
  });

  test('is removed, and undo brings it back', async () => {
    const { store, user, container } = await openTwo();
    const before = store.document.value;
    await user.click(await tool('Saturday almond', 'Remove'));
    expect(names(store)).toEqual(['Sunday hemp']);
    await waitFor(() => expect(container.querySelector('[data-spot="true"]')?.getAttribute('data-batch')).toBe('b2'));
    store.undo();
    expect(store.document.value).toEqual(before);
  });

  test('that is the last one left is followed by a fresh one', async () => {
    const { store, user } = await openSheet();
    await user.click(await tool('Saturday almond', 'Remove'));
    expect(names(store)).toEqual(['Almonds']);
    expect(await screen.findByRole('heading', { name: 'Almonds' })).toBeDefined();
  });
});

test.each([
  ['Escape', (user: { keyboard(keys: string): Promise<void> }) => user.keyboard('{Escape}')],
  ['a press elsewhere', (user: { click(element: Element): Promise<void> }) => user.click(screen.getByRole('main'))],
] as const)('the menu of a batch closes by %s', async (_, leave) => {
  const { user, container } = await openSheet();
  const menu = container.querySelector<HTMLDetailsElement>('.batch-tools');
  if (menu === null) throw new Error('there is no menu');
  await user.click(within(menu).getByLabelText('Saturday almond: copy, move, remove'));
  menu.open = true;
  within(menu).getByText('Rename').focus();
  await leave(user);
  expect(menu.open).toBe(false);
});
