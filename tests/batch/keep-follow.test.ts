import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { demo } from '../../src/batch/document/demo';
import type { SheetDocument } from '../../src/batch/document/document';
import { typeCell } from '../../src/batch/edits/edits';
import { keepSheet } from '../../src/batch/keeping/keep-sheet';
import { keepWords } from '../../src/batch/keeping/keep-words';
import type { Keeping } from '../../src/batch/keeping/keeping';
import { KeptTexts } from './kept-texts';

// What a window shows of what another saves, and what is said where nothing can be saved.

const open = (storage = new KeptTexts()) => keepSheet({ storage, commitOpenCell: () => {} });
const edited = typeCell(demo, 'b1', 'sourceMass', '300 g');
const mine = typeCell(demo, 'b1', 'sourceMass', '400 g');
const saved = ({ how }: Keeping) => vi.waitUntil(() => how.value !== 'saving').then(() => how.value);

/** All that a window has been told to show. */
function follow({ keeping }: { readonly keeping: Keeping }): SheetDocument[] {
  const shown: SheetDocument[] = [];
  keeping.follow((document) => shown.push(document));
  return shown;
}

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  Object.defineProperty(globalThis, 'navigator', { value: {}, configurable: true });
});

afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
  vi.restoreAllMocks();
});

describe('without locks', () => {
  test('a window with nothing unsaved follows what another saves, and saves upon it', async () => {
    const [one, two] = [await open(), await open()];
    const [shownInOne, shownInTwo] = [follow(one), follow(two)];
    one.keeping.save(edited);
    await expect.poll(() => shownInTwo).toEqual([edited]);
    two.keeping.save(mine);
    expect(await saved(two.keeping)).toBe('saved');
    await expect.poll(() => shownInOne).toEqual([mine]);
    expect([one, two].map(({ keeping }) => keeping.message.value)).toEqual([null, null]);
    const { states, aside } = await one.keeping.list();
    expect([states.map(({ document }) => document), aside]).toEqual([[mine, edited], []]);
  });

  test('nor a channel, it looks every few seconds', async () => {
    vi.stubGlobal('BroadcastChannel', undefined);
    vi.useFakeTimers({ toFake: ['setInterval'] });
    const [one, two] = [await open(), await open()];
    const shown = follow(two);
    one.keeping.save(edited);
    await saved(one.keeping);
    vi.advanceTimersByTime(3000);
    await expect.poll(() => shown).toEqual([edited]);
  });
});

test('without a channel, a window that may only read looks every few seconds', async () => {
  vi.stubGlobal('BroadcastChannel', undefined);
  vi.useFakeTimers({ toFake: ['setInterval'] });
  const one = await open();
  const request = (_: string, { ifAvailable }: LockOptions, grant: (lock: Lock | null) => void) =>
    ifAvailable === true ? Promise.resolve(grant(null)) : new Promise(() => {});
  Object.defineProperty(globalThis, 'navigator', { value: { locks: { request } }, configurable: true });
  const two = await open();
  expect(two.keeping.message.value).toBe(keepWords.elsewhere);
  const shown = follow(two);
  one.keeping.save(edited);
  await saved(one.keeping);
  vi.advanceTimersByTime(3000);
  await expect.poll(() => shown).toEqual([edited]);
});

describe('where nothing was ever kept, nothing is said to be there still', () => {
  test('as the browser keeps nothing', async () => {
    vi.spyOn(globalThis.indexedDB, 'open').mockImplementation(() => {
      throw new DOMException('no', 'InvalidStateError');
    });
    const { keeping } = await open();
    expect(keeping.message.value).toBe(keepWords.blocked);
    keeping.save(edited);
    expect(await saved(keeping)).toBe('unsaved');
    expect(keeping.message.value).toBe(keepWords.blocked);
  });

  test.each([
    ['there is no room', 'QuotaExceededError', keepWords.neverRoom, keepWords.full],
    ['the disk fails', 'UnknownError', keepWords.blocked, keepWords.failed],
  ])('as %s; after a save it is', async (_, name, atFirst, later) => {
    const refuse = () => {
      throw new DOMException('no', name);
    };
    const { keeping } = await open();
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(refuse);
    keeping.save(edited);
    expect(await saved(keeping)).toBe('unsaved');
    expect(keeping.message.value).toBe(atFirst);
    put.mockRestore();
    keeping.save(edited);
    expect(await saved(keeping)).toBe('saved');
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(refuse);
    keeping.save(mine);
    expect(await saved(keeping)).toBe('unsaved');
    expect(keeping.message.value).toBe(later);
  });
});
