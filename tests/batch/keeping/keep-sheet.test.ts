import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import type { SheetDocument } from '../../../src/batch/document/document';
import { typeCell } from '../../../src/batch/edits/edits';
import { openDatabase } from '../../../src/batch/keeping/keep-database';
import { keepSheet } from '../../../src/batch/keeping/keep-sheet';
import type { Keeping } from '../../../src/batch/keeping/keeping';
import { databaseName, keptMark } from '../../../src/batch/keeping/storage';
import { anyDocument } from '../any-edit';
import { KeptTexts } from '../kept-texts';

// Without locks every window may edit, and only the revision guards: two windows are then two calls.
const open = (storage = new KeptTexts()) => keepSheet({ storage, commitOpenCell: () => {} });
const edited = typeCell(demo, 'b1', 'sourceMass', '300 g');
const saved = ({ how }: Keeping) => vi.waitUntil(() => how.value !== 'saving').then(() => how.value);

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  Object.defineProperty(globalThis, 'navigator', { value: {}, configurable: true });
  vi.stubGlobal('BroadcastChannel', SilentChannel);
});

afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

/** Of which no window hears anything, so that each goes by what it has read itself. */
class SilentChannel {
  addEventListener(): void {}
  postMessage(): void {}
}

async function writeOver(value: unknown): Promise<void> {
  const database = await openDatabase({ onNewer: () => {}, onGone: () => {} });
  const newest = (await database.getAllKeys('states')).at(-1);
  if (newest === undefined) throw new Error('nothing is kept yet');
  await database.put('states', value, newest);
  database.close();
}

test('a first visit opens the demo and says nothing', async () => {
  const { document, isFirst, keeping } = await open();
  expect([document, isFirst]).toEqual([demo, true]);
  expect([keeping.message.value, keeping.mayEdit.value, keeping.how.value]).toEqual([null, true, 'saved']);
});

test('what is saved opens again as it was', async () => {
  await fc.assert(
    fc.asyncProperty(anyDocument, async (document) => {
      globalThis.indexedDB = new IDBFactory();
      const { keeping } = await open();
      keeping.save(document);
      expect(await saved(keeping)).toBe('saved');
      const again = await open();
      expect(again.document).toEqual(document);
      expect([again.isFirst, again.keeping.message.value]).toEqual([false, null]);
    }),
    { numRuns: 40 },
  );
});

test('a mark says that a sheet is kept, from the first save on', async () => {
  const storage = new KeptTexts();
  const isMarked = () => storage.getItem(keptMark) !== null;
  const { keeping } = await open(storage);
  expect(isMarked()).toBe(false);
  keeping.save(edited);
  await saved(keeping);
  expect(isMarked()).toBe(true);
  storage.removeItem(keptMark);
  await open(storage);
  expect(isMarked()).toBe(true);
  globalThis.indexedDB = new IDBFactory();
  await open(storage);
  expect(isMarked()).toBe(false);
});

test('earlier states are listed, newest first, with what they hold', async () => {
  const { keeping } = await open();
  for (const document of [demo, edited]) {
    keeping.save(document);
    await saved(keeping);
  }
  const { states, aside } = await keeping.list();
  expect(states.map(({ revision, document }) => [revision, document])).toEqual([
    [2, edited],
    [1, demo],
  ]);
  expect(aside).toEqual([]);
});

describe('a state that can’t be opened', () => {
  test('is put aside, and the last good one opens in its place', async () => {
    const first = await open();
    for (const document of [edited, demo]) {
      first.keeping.save(document);
      await saved(first.keeping);
    }
    await writeOver('{"half');
    const { document, keeping } = await open();
    expect(document).toEqual(edited);
    expect(keeping.message.value).toContain('put aside');
    expect((await keeping.list()).aside).toMatchObject([{ text: '{"half', document: null }]);
    keeping.save(demo);
    expect(await saved(keeping)).toBe('saved');
    expect((await open()).keeping.message.value).toBeNull();
  });

  test('opens the demo where there is no good one', async () => {
    const first = await open();
    first.keeping.save(edited);
    await saved(first.keeping);
    await writeOver(7);
    const { document, keeping } = await open();
    expect(document).toEqual(demo);
    expect(keeping.message.value).toContain('first sheet again');
    expect((await keeping.list()).aside).toMatchObject([{ text: '7' }]);
  });
});

test('a newer version’s sheet is shown, may not be edited, and stays as it is', async () => {
  const first = await open();
  first.keeping.save(edited);
  await saved(first.keeping);
  const newer = JSON.stringify({ ...edited, version: 99 });
  await writeOver(newer);
  const { document, keeping } = await open();
  expect(document).toEqual(edited);
  expect(keeping.mayEdit.value).toBe(false);
  expect(keeping.message.value).toContain('newer version of this page (99)');
  expect((await keeping.list()).states[0]?.text).toBe(newer);
});

test('a window that builds on an older revision is refused: its edit is put aside, the other’s shown', async () => {
  const [one, two] = [await open(), await open()];
  one.keeping.save(edited);
  await saved(one.keeping);
  const shown: SheetDocument[] = [];
  two.keeping.follow((document) => shown.push(document));
  const mine = typeCell(demo, 'b1', 'sourceMass', '400 g');
  two.keeping.save(mine);
  await saved(two.keeping);
  expect(shown).toEqual([edited]);
  expect(two.keeping.mayEdit.value).toBe(false);
  expect(two.keeping.message.value).toContain('put aside');
  const { states, aside } = await two.keeping.list();
  expect(states.map(({ document }) => document)).toEqual([edited]);
  expect(aside.map(({ document }) => document)).toEqual([mine]);
  await two.keeping.editHere();
  two.keeping.save(mine);
  expect(await saved(two.keeping)).toBe('saved');
  expect((await open()).document).toEqual(mine);
});

describe('what an earlier version of the page left', () => {
  const left = {
    'jarwright.sheet': JSON.stringify(edited),
    'jarwright.sheet.kept': '{',
    'jarwright.sheet.kept.2': '[',
  };

  test('is taken over, and only then deleted', async () => {
    const storage = new KeptTexts(left);
    const { document, keeping } = await open(storage);
    expect(document).toEqual(edited);
    expect([...storage.texts.keys()]).toEqual([keptMark]);
    expect((await keeping.list()).aside.map(({ text }) => text).toSorted()).toEqual(['[', '{']);
    expect((await open()).document).toEqual(edited);
  });

  test('is opened and left where it is where nothing can be kept', async () => {
    globalThis.indexedDB.open = () => {
      throw new DOMException('no', 'SecurityError');
    };
    const storage = new KeptTexts(left);
    const { document, keeping } = await open(storage);
    expect(document).toEqual(edited);
    expect(storage.texts.size).toBe(3);
    expect(keeping.message.value).toContain('keep nothing');
    expect([keeping.mayEdit.value, keeping.how.value]).toEqual([true, 'unsaved']);
  });

  test('is put aside where a sheet is kept already', async () => {
    const first = await open();
    first.keeping.save(demo);
    await saved(first.keeping);
    const { document, keeping } = await open(new KeptTexts({ 'jarwright.sheet': JSON.stringify(edited) }));
    expect(document).toEqual(demo);
    expect((await keeping.list()).aside.map((one) => one.document)).toEqual([edited]);
  });
});

test('an edit made while a refused one is put aside is put aside too, and never saved over the other window’s', async () => {
  const [one, two] = [await open(), await open()];
  one.keeping.save(edited);
  await saved(one.keeping);
  const [mine, later] = ['400 g', '401 g'].map((text) => typeCell(demo, 'b1', 'sourceMass', text));
  if (mine === undefined || later === undefined) throw new Error('two edits are needed');
  two.keeping.save(mine);
  two.keeping.save(later);
  await saved(two.keeping);
  const { states, aside } = await two.keeping.list();
  expect(states.map(({ document }) => document)).toEqual([edited]);
  expect(aside.map(({ document }) => document)).toEqual([later, mine]);
  expect((await open()).document).toEqual(edited);
});

test('what could not be saved is put aside before another window’s state is shown', async () => {
  const [one, two] = [await open(), await open()];
  const makeRoom = fillUp('put');
  const mine = typeCell(demo, 'b1', 'sourceMass', '400 g');
  two.keeping.save(mine);
  expect(await saved(two.keeping)).toBe('unsaved');
  makeRoom();
  one.keeping.save(edited);
  await saved(one.keeping);
  two.keeping.save(mine);
  expect(await saved(two.keeping)).toBe('saved');
  const { states, aside } = await two.keeping.list();
  expect(states.map(({ document }) => document)).toEqual([edited]);
  expect(aside.map(({ document }) => document)).toEqual([mine]);
});

/** Has the disk refuse what this gives names of; gives what ends it. */
function fillUp(...requests: readonly ('put' | 'add')[]): () => void {
  const { put, add } = IDBObjectStore.prototype;
  for (const request of requests) {
    IDBObjectStore.prototype[request] = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  }
  return () => Object.assign(IDBObjectStore.prototype, { put, add });
}

describe('where another window has saved, “Edit here instead”', () => {
  const mine = typeCell(demo, 'b1', 'sourceMass', '400 g');

  /** A window with an edit that could not be saved, and what the other has saved since. */
  async function openUnsaved() {
    const [one, two] = [await open(), await open()];
    const shown: SheetDocument[] = [];
    two.keeping.follow((document) => shown.push(document));
    const makeRoom = fillUp('put');
    two.keeping.save(mine);
    expect(await saved(two.keeping)).toBe('unsaved');
    makeRoom();
    one.keeping.save(edited);
    await saved(one.keeping);
    return { keeping: two.keeping, shown };
  }

  test('puts what could not be saved here aside before it shows the other’s', async () => {
    const { keeping, shown } = await openUnsaved();
    await keeping.editHere();
    expect(shown).toEqual([edited]);
    expect((await keeping.list()).aside.map(({ document }) => document)).toEqual([mine]);
    expect([keeping.how.value, keeping.mayEdit.value]).toEqual(['saved', true]);
    expect(keeping.message.value).toContain('put aside');
  });

  test('shows on what can’t be put aside, says so, and goes on once there is room', async () => {
    const { keeping, shown } = await openUnsaved();
    const makeRoom = fillUp('put', 'add');
    await keeping.editHere();
    expect(shown).toEqual([]);
    expect(keeping.message.value).toContain('could not be put aside');
    expect([keeping.how.value, keeping.mayEdit.value, keeping.editedElsewhere.value]).toEqual(['unsaved', false, true]);
    makeRoom();
    await keeping.editHere();
    expect(shown).toEqual([edited]);
    expect((await keeping.list()).aside.map(({ document }) => document)).toEqual([mine]);
    expect([keeping.how.value, keeping.mayEdit.value]).toEqual(['saved', true]);
  });
});

describe('a database that is deleted while the page is open', () => {
  const deleted = () =>
    new Promise<void>((resolve, reject) => {
      const request = globalThis.indexedDB.deleteDatabase(databaseName);
      request.onsuccess = () => resolve();
      request.onerror = () => reject(request.error);
      request.onblocked = () => reject(new Error('the page holds on to it'));
    });

  test('is let go of, and the sheet is said to be saved nowhere, until it is saved again', async () => {
    const { keeping } = await open();
    keeping.save(edited);
    expect(await saved(keeping)).toBe('saved');
    await deleted();
    await vi.waitUntil(() => keeping.message.value !== null);
    expect(keeping.message.value).toContain('has been deleted');
    expect(keeping.message.value).not.toContain('saved before is still there');
    expect([keeping.how.value, keeping.mayEdit.value]).toEqual(['unsaved', true]);
    keeping.save(edited);
    expect(await saved(keeping)).toBe('saved');
    expect(keeping.message.value).toBeNull();
    expect((await open()).document).toEqual(edited);
  });

  test('says nothing where nothing was kept', async () => {
    const { keeping } = await open();
    await deleted();
    await keeping.list();
    expect([keeping.message.value, keeping.how.value]).toEqual([null, 'saved']);
  });
});

test('what a full disk refused is saved by itself once there is room', async () => {
  const { keeping } = await open();
  const makeRoom = fillUp('put');
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  keeping.save(edited);
  await vi.waitUntil(() => keeping.how.value === 'unsaved');
  expect(keeping.message.value).toContain('tried again by itself');
  makeRoom();
  vi.advanceTimersByTime(60_000);
  vi.useRealTimers();
  await vi.waitUntil(() => keeping.how.value === 'saved');
  expect(keeping.message.value).toBeNull();
  expect((await open()).document).toEqual(edited);
});

test('the database is opened once, however many ask for it at once', async () => {
  const { open: openNow } = globalThis.indexedDB;
  globalThis.indexedDB.open = () => {
    throw new DOMException('no', 'SecurityError');
  };
  const { keeping } = await open();
  let opened = 0;
  globalThis.indexedDB.open = (...asked) => {
    opened += 1;
    return openNow.apply(globalThis.indexedDB, asked);
  };
  keeping.save(edited);
  await Promise.all([keeping.list(), keeping.list(), saved(keeping)]);
  expect(opened).toBe(1);
});

test('what is put aside as it is typed is told of, listed, and removed for good by itself', async () => {
  const { keeping } = await open();
  keeping.putAside(edited);
  keeping.putAside(demo);
  await vi.waitUntil(() => keeping.message.value?.includes('put aside'));
  await expect.poll(async () => (await keeping.list()).aside.length).toBe(2);
  const [newest] = (await keeping.list()).aside;
  if (newest === undefined) throw new Error('nothing is listed');
  await keeping.removeAside(newest.key);
  expect((await keeping.list()).aside.map(({ document }) => document)).toEqual([edited]);
});

test('a state whose record is lost is passed over, and the page goes on from the one before', async () => {
  const first = await open();
  for (const document of [edited, demo]) {
    first.keeping.save(document);
    await saved(first.keeping);
  }
  const { get } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.get = function (this: IDBObjectStore, key: IDBValidKey) {
    if (this.name === 'states' && Array.isArray(key) && key[0] === 2) throw new DOMException('lost', 'DataError');
    return get.call(this, key);
  };
  try {
    const { document, keeping } = await open();
    expect(document).toEqual(edited);
    expect(keeping.message.value).toContain('can’t give it any more');
    keeping.save(demo);
    expect(await saved(keeping)).toBe('saved');
    expect((await keeping.list()).states.map(({ revision }) => revision)).toEqual([4, 3, 1]);
  } finally {
    IDBObjectStore.prototype.get = get;
  }
});
