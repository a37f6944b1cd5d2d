import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { openDB } from 'idb';
import { beforeEach, expect, test, vi } from 'vitest';
import {
  addState,
  type Database,
  isNewer,
  listAside,
  listStates,
  mendStates,
  openDatabase,
  readState,
  takeIn,
} from '../../../src/batch/keeping/keep-database';

const quietly = { onNewer: () => {}, onGone: () => {} };
let database: Database;

beforeEach(async () => {
  globalThis.indexedDB = new IDBFactory();
  database = await openDatabase(quietly);
});

test('states are added under the next revision and read again', async () => {
  expect(await addState(database, 0, 'one', 10)).toBe(1);
  expect(await addState(database, 1, 'two', 20)).toBe(2);
  expect(await listStates(database)).toEqual([
    [1, 10],
    [2, 20],
  ]);
  expect(await readState(database, [2, 20])).toBe('two');
});

test('a state that does not build on the newest one is refused and changes nothing', async () => {
  await addState(database, 0, 'one', 10);
  expect(await addState(database, 0, 'other', 20)).toBeNull();
  expect(await addState(database, 2, 'other', 20)).toBeNull();
  expect(await listStates(database)).toEqual([[1, 10]]);
});

test('of two windows that save at the same moment one is refused', async () => {
  const other = await openDatabase(quietly);
  const saved = await Promise.all([addState(database, 0, 'one', 10), addState(other, 0, 'two', 10)]);
  expect(saved.toSorted()).toEqual([1, null]);
  expect(await listStates(database)).toEqual([[1, 10]]);
});

test('a sheet is saved on where the browser has thrown all states away', async () => {
  expect(await addState(database, 7, 'eight', 10)).toBe(8);
});

test('surplus states go in the same step', async () => {
  for (let revision = 0; revision < 9; revision += 1)
    await addState(database, revision, `${revision}`, 1000 + revision);
  expect((await listStates(database)).map(([revision]) => revision)).toEqual([6, 7, 8, 9]);
});

test('damaged states move aside as they are, and the text in their place is a new revision', async () => {
  await addState(database, 0, 'good', 10);
  await database.put('states', { not: 'a text' }, [2, 20]);
  expect(await mendStates(database, [{ key: [2, 20], why: 'It is no text.' }], 'good', 30)).toBe(3);
  expect(await listStates(database)).toEqual([
    [1, 10],
    [3, 30],
  ]);
  expect(await listAside(database)).toEqual([{ key: 1, at: 20, why: 'It is no text.', text: '{"not":"a text"}' }]);
});

test('a text taken in is the first state, or is put aside where there is one', async () => {
  await takeIn(database, { text: 'left', why: 'late' }, [{ text: 'half', why: 'damaged' }], 10);
  await takeIn(database, { text: 'again', why: 'late' }, [], 20);
  expect(await readState(database, [1, 10])).toBe('left');
  expect(await listAside(database)).toEqual([
    { key: 2, at: 20, why: 'late', text: 'again' },
    { key: 1, at: 10, why: 'damaged', text: 'half' },
  ]);
});

test('a damaged record among those put aside is listed all the same', async () => {
  await database.add('aside', 7);
  await database.add('aside', { at: 'noon' });
  expect((await listAside(database)).map(({ text }) => text)).toEqual(['{"at":"noon"}', '7']);
});

test('a newer layout opens to be read', async () => {
  await addState(database, 0, 'one', 10);
  database.close();
  (await openDB('jarwright', 2)).close();
  const newer = await openDatabase(quietly);
  expect(isNewer(newer)).toBe(true);
  expect(await readState(newer, [1, 10])).toBe('one');
  newer.close();
});

test('a database that lacks its parts is refused', async () => {
  globalThis.indexedDB = new IDBFactory();
  (await openDB('jarwright', 1)).close();
  await expect(openDatabase(quietly)).rejects.toThrow('not known');
});

test('one that opens only after five seconds is not waited for, and closes by itself', async () => {
  const deleting = new Promise((resolve, reject) => {
    const request = indexedDB.deleteDatabase('jarwright');
    request.onsuccess = resolve;
    request.onerror = reject;
  });
  vi.useFakeTimers({ toFake: ['setTimeout'] });
  const opening = expect(openDatabase(quietly)).rejects.toThrow('no answer');
  await vi.advanceTimersByTimeAsync(5000);
  await opening;
  vi.useRealTimers();
  // What stood in the way of it goes: now it opens, for nobody.
  database.close();
  await deleting;
  let inTheWay = 0;
  const newer = await openDB('jarwright', 2, {
    blocked() {
      inTheWay += 1;
    },
  });
  expect([newer.version, inTheWay]).toEqual([2, 0]);
  newer.close();
});

test('a newer page that waits is told of', async () => {
  let told = 0;
  globalThis.indexedDB = new IDBFactory();
  const open = await openDatabase({
    onGone: () => {},
    onNewer: () => {
      told += 1;
      open.close();
    },
  });
  (await openDB('jarwright', 2)).close();
  expect(told).toBe(1);
});
