// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, render, screen, within } from '@testing-library/preact';
import userEvent from '@testing-library/user-event';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { openDatabase } from '../../../src/batch/keeping/keep-database';
import { keepSheet } from '../../../src/batch/keeping/keep-sheet';
import { createStore, type Store } from '../../../src/batch/store/store';
import { writeCopy } from '../../../src/interchange/json-file';
import KeptActions from '../../../src/ui/page/KeptActions';
import { Kept } from '../../../src/ui/paper/Kept';
import { textOf } from '../open-sheet';

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

afterEach(cleanup);

/** What the sheet’s keeping shows, on a sheet that is kept and edited beforehand if told to. */
async function openKept(...amounts: readonly string[]) {
  const store = createStore(demo);
  const kept = await keepSheet({ storage: null, commitOpenCell: () => {} });
  store.keepIn(kept);
  for (const amount of amounts) {
    store.typeCell('b1', 'sourceMass', amount);
    await vi.waitUntil(() => kept.keeping.how.value === 'saved');
  }
  const { container } = render(
    <>
      <KeptActions store={store} />
      <Kept store={store} />
    </>,
  );
  const user = userEvent.setup();
  const openPanel = async () => {
    await user.click(screen.getByText('Kept in this browser'));
    return screen.findByRole('region', { name: 'Kept in this browser' });
  };
  return { store, user, container, openPanel };
}

const typedOf = (store: Store) => store.document.value.batches[0]?.given.map(({ text }) => text);
const how = () => textOf(screen.getByRole('status'));

test('says whether all is saved', async () => {
  const { store } = await openKept();
  expect(how()).toBe('Saved');
  store.typeCell('b1', 'sourceMass', '300 g');
  await expect.poll(how).toBe('Saving…');
  await expect.poll(how).toBe('Saved');
});

test('says that nothing is saved yet before what keeps the sheet is there', () => {
  render(<Kept store={createStore(demo)} />);
  expect(how()).toBe('Saving…');
});

test('opens an earlier state again as one step that undo takes back', async () => {
  const { store, user, openPanel } = await openKept('100 g', '200 g', '300 g');
  const panel = await openPanel();
  const again = await within(panel).findAllByRole('button', { name: /^Open the sheet of/ });
  expect(again.length).toBe(2);
  expect(textOf(panel)).toContain(`${demo.batches[0]?.name}; 1 amount typed`);
  const oldest = again.at(-1);
  if (oldest === undefined) throw new Error('no state is listed');
  await user.click(oldest);
  expect(typedOf(store)).toEqual(['100 g']);
  expect(store.undoName.value).toMatch(/^Open the sheet of/);
  store.undo();
  expect(typedOf(store)).toEqual(['300 g']);
});

test('opens an earlier state again with the settings of now, which undo leaves too', async () => {
  const { store, user, openPanel } = await openKept('100 g', '200 g');
  store.changeSettings({ leads: 'us', decimalComma: true });
  const panel = await openPanel();
  const oldest = (await within(panel).findAllByRole('button', { name: /^Open the sheet of/ })).at(-1);
  if (oldest === undefined) throw new Error('no state is listed');
  await user.click(oldest);
  expect(typedOf(store)).toEqual(['100 g']);
  expect(store.settings.value).toMatchObject({ leads: 'us', decimalComma: true });
  store.undo();
  expect(typedOf(store)).toEqual(['200 g']);
  expect(store.settings.value).toMatchObject({ leads: 'us', decimalComma: true });
});

test('downloads a copy written as every saved copy is', async () => {
  const { createObjectURL } = URL;
  const blobs: Blob[] = [];
  URL.createObjectURL = (blob: Blob) => {
    blobs.push(blob);
    return 'blob:kept';
  };
  try {
    const { store, user, openPanel } = await openKept('100 g');
    await user.click(within(await openPanel()).getByRole('button', { name: 'Download a copy' }));
    expect(await blobs[0]?.text()).toBe(writeCopy(store.document.value));
  } finally {
    URL.createObjectURL = createObjectURL;
  }
});

test('lists what was put aside with the reason, to be downloaded but not opened', async () => {
  const database = await openDatabase({ onNewer: () => {}, onGone: () => {} });
  await database.add('aside', { at: 1000, why: 'Its text is damaged.', found: '{"half' });
  database.close();
  const { openPanel } = await openKept();
  const panel = await openPanel();
  const item = await within(panel).findByRole('listitem');
  expect(textOf(item)).toContain('Its text is damaged.');
  expect(within(item).queryByRole('button', { name: /^Open/ })).toBeNull();
  expect(within(item).getByRole('button', { name: /^Download/ })).toBeDefined();
});

test('removes a copy only once it is asked twice', async () => {
  const database = await openDatabase({ onNewer: () => {}, onGone: () => {} });
  for (const why of ['The first.', 'The second.']) await database.add('aside', { at: 1000, why, found: '{"half' });
  database.close();
  const { user, openPanel } = await openKept();
  const panel = await openPanel();
  const items = () => within(panel).queryAllByRole('listitem').map(textOf);
  await expect.poll(() => items().length).toBe(2);
  const [newest] = within(panel).getAllByRole('listitem');
  if (newest === undefined) throw new Error('nothing is listed');
  await user.click(within(newest).getByRole('button', { name: /^Remove the sheet of/ }));
  expect(within(newest).getByRole('button', { name: 'Keep it' })).toBe(document.activeElement);
  await user.keyboard('{Enter}');
  expect(items().length).toBe(2);
  await user.click(within(newest).getByRole('button', { name: /^Remove the sheet of/ }));
  await user.click(within(newest).getByRole('button', { name: /^Remove the sheet of .* for good$/ }));
  await expect.poll(() => items().length).toBe(1);
  expect(items()[0]).toContain('The first.');
});

test('offers nothing to do where all is well, and a copy and another try where it is not', async () => {
  const { store, user, container } = await openKept();
  expect(container.querySelector('.kept-actions')).toBeNull();
  const { put } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.put = () => {
    throw new DOMException('full', 'QuotaExceededError');
  };
  store.typeCell('b1', 'sourceMass', '300 g');
  await screen.findByRole('button', { name: 'Download a copy' });
  expect(how()).toBe('Not saved');
  IDBObjectStore.prototype.put = put;
  await user.click(screen.getByRole('button', { name: 'Try to save again' }));
  await expect.poll(how).toBe('Saved');
  expect(container.querySelector('.kept-actions')).toBeNull();
});

test('offers a copy of what can neither be saved nor put aside, and shows it on', async () => {
  Object.defineProperty(navigator, 'locks', { value: undefined, configurable: true });
  const other = await keepSheet({ storage: null, commitOpenCell: () => {} });
  const { store, user } = await openKept();
  const { put, add } = IDBObjectStore.prototype;
  const refuse = () => {
    throw new DOMException('full', 'QuotaExceededError');
  };
  IDBObjectStore.prototype.put = refuse;
  store.typeCell('b1', 'sourceMass', '300 g');
  await expect.poll(how).toBe('Not saved');
  IDBObjectStore.prototype.put = put;
  other.keeping.save({ ...demo, cartons: [{ name: 'Oat' }] });
  await vi.waitUntil(() => other.keeping.how.value === 'saved');
  Object.assign(IDBObjectStore.prototype, { put: refuse, add: refuse });
  await store.keeping.value?.editHere();
  Object.assign(IDBObjectStore.prototype, { put, add });
  expect(typedOf(store)).toEqual(['300 g']);
  expect(store.message.value).toContain('could not be put aside');
  expect(screen.getByRole('button', { name: 'Download a copy' })).toBeDefined();
  await user.click(screen.getByRole('button', { name: 'Edit here instead' }));
  await expect.poll(() => store.document.value.cartons).toEqual([{ name: 'Oat' }]);
  expect(store.message.value).toContain('put aside under “Kept in this browser”');
  expect(how()).toBe('Saved');
});
