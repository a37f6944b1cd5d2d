// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { demo } from '../../src/batch/demo';
import { createStore } from '../../src/batch/store';
import { rowOrder } from '../../src/formula/order';
import { App } from '../../src/ui/App';
import { openSheet, textOf } from './open-sheet';

afterEach(cleanup);

test('every row of the sheet is there once for the batch, and none is empty', async () => {
  const { container, cell } = await openSheet();
  const ids = [...container.querySelectorAll('[data-quantity]')].map((one) => one.getAttribute('data-quantity'));
  expect(ids).toEqual(rowOrder);
  for (const row of rowOrder) expect(textOf(cell(row)), row).not.toBe('');
});

test('what the store has to say is a status on the page, gone when there is nothing to say', async () => {
  let room = false;
  const store = createStore(demo, { save: () => (room ? null : 'This could not be saved.') });
  render(<App store={store} />);
  expect(screen.queryByRole('status')?.textContent ?? '').not.toContain('could not be saved');
  store.typeCell('b1', 'sourceMass', '200 g');
  expect(textOf(await screen.findByText('This could not be saved.'))).not.toBe('');
  room = true;
  store.undo();
  await expect.poll(() => screen.queryByText('This could not be saved.')).toBeNull();
});
