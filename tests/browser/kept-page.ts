import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { waitForPage } from './open-part';

/** Waits until the page says that all is kept, or that it is not. */
export async function waitForKept(page: Page, how: 'saved' | 'unsaved' = 'saved'): Promise<void> {
  await expect.poll(() => page.locator('.saved[data-kept]').getAttribute('data-kept'), { timeout: 10_000 }).toBe(how);
}

/** Waits for the page, and for what keeps the sheet. */
export async function waitForSheet(page: Page): Promise<void> {
  await waitForPage(page);
  await waitForKept(page);
}

/** What the page has to tell the cook. */
export function message(page: Page) {
  return page.locator('.message');
}

type Records = { readonly states: readonly (readonly [number, unknown])[]; readonly aside: readonly unknown[] };

/** What stands in the browser's database: states by revision, oldest first, and what was put aside. */
export function readRecords(page: Page): Promise<Records> {
  return page.evaluate(async () => {
    const answer = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await answer(indexedDB.open('jarwright'));
    const { states, aside } = { states: 'states', aside: 'aside' };
    const transaction = database.transaction([states, aside]);
    const keys = await answer(transaction.objectStore(states).getAllKeys());
    const values = await answer(transaction.objectStore(states).getAll());
    const put = await answer(transaction.objectStore(aside).getAll());
    database.close();
    return {
      states: keys.map((key, at) => [Array.isArray(key) ? Number(key[0]) : -1, values[at]] as const),
      aside: put,
    };
  });
}

/** Writes a record over the newest state, or as a newer one, behind the page's back. */
export function writeNewest(page: Page, value: unknown, isNext = false): Promise<void> {
  return page.evaluate(
    async ([written, next]) => {
      const answer = <T>(request: IDBRequest<T>) =>
        new Promise<T>((resolve, reject) => {
          request.onsuccess = () => resolve(request.result);
          request.onerror = () => reject(request.error);
        });
      const database = await answer(indexedDB.open('jarwright'));
      const store = database.transaction('states', 'readwrite').objectStore('states');
      const newest = (await answer(store.getAllKeys())).at(-1);
      if (!Array.isArray(newest)) throw new Error('nothing is kept yet');
      const [revision, at] = newest.map(Number);
      if (revision === undefined || at === undefined) throw new Error('the newest state has no place');
      await answer(store.put(written, [next === true ? revision + 1 : revision, at]));
      database.close();
    },
    [value, isNext] as const,
  );
}
