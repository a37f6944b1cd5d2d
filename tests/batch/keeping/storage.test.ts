import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, expect, test } from 'vitest';
import { openDatabase } from '../../../src/batch/keeping/keep-database';
import { isFirstVisit } from '../../../src/batch/keeping/storage';
import { KeptTexts } from '../kept-texts';

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});

test('a browser that holds nothing of the page is on its first visit', async () => {
  expect(await isFirstVisit(new KeptTexts())).toBe(true);
});

test('a sheet left by an earlier version of the page is no first visit', async () => {
  expect(await isFirstVisit(new KeptTexts({ 'jarwright.sheet': '' }))).toBe(false);
});

test('a database of the page is no first visit', async () => {
  const database = await openDatabase({ onNewer: () => {}, onGone: () => {} });
  database.close();
  expect(await isFirstVisit(new KeptTexts())).toBe(false);
});

test('a browser that keeps nothing is no first visit: what says so has to be loaded', async () => {
  expect(await isFirstVisit(null)).toBe(false);
  globalThis.indexedDB.databases = () => Promise.reject(new DOMException('no', 'SecurityError'));
  expect(await isFirstVisit(new KeptTexts())).toBe(false);
});
