// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, render, screen } from '@testing-library/preact';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { keepSheet } from '../../../src/batch/keeping/keep-sheet';
import { createStore } from '../../../src/batch/store/store';
import { rowOrder } from '../../../src/formula/recipe/order';
import { App } from '../../../src/ui/page/App';
import { openSheet, textOf } from '../open-sheet';

afterEach(cleanup);

test('every row of the sheet is there once for the batch, and none is empty', async () => {
  const { container, cell } = await openSheet();
  const ids = [...container.querySelectorAll('[data-quantity]')].map((one) => one.getAttribute('data-quantity'));
  expect(ids.toSorted()).toEqual(rowOrder.toSorted());
  for (const row of rowOrder) expect(textOf(cell(row)), row).not.toBe('');
});

test('what there is to say of how the sheet is kept is a status on the page, gone when there is nothing to say', async () => {
  globalThis.indexedDB = new IDBFactory();
  const store = createStore(demo);
  render(<App store={store} storage={null} />);
  const kept = await keepSheet({ storage: null, commitOpenCell: () => {} });
  store.keepIn(kept);
  expect(document.querySelector('.message')).toBeNull();
  const put = IDBObjectStore.prototype.put;
  IDBObjectStore.prototype.put = () => {
    throw new DOMException('full', 'QuotaExceededError');
  };
  store.typeCell('b1', 'sourceMass', '200 g');
  expect(textOf(await screen.findByText(/no room left/))).not.toBe('');
  IDBObjectStore.prototype.put = put;
  store.undo();
  await expect.poll(() => document.querySelector('.message')).toBeNull();
});
