import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import fc from 'fast-check';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { demo } from '../../src/batch/demo';
import type { SheetDocument } from '../../src/batch/document';
import { typeCell } from '../../src/batch/edits';
import { openDatabase } from '../../src/batch/keep-database';
import { keepSheet } from '../../src/batch/keep-sheet';
import type { Keeping } from '../../src/batch/keeping';
import { anyDocument } from './any-edit';
import { KeptTexts } from './kept-texts';

// Without locks every window may edit, and only the revision guards: two windows are then two calls.
const open = (storage = new KeptTexts()) => keepSheet({ storage, commitOpenCell: () => {} });
const edited = typeCell(demo, 'b1', 'sourceMass', '300 g');
const saved = ({ how }: Keeping) => vi.waitUntil(() => how.value !== 'saving').then(() => how.value);

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  Object.defineProperty(globalThis, 'navigator', { value: {}, configurable: true });
});

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
    expect(storage.texts.size).toBe(0);
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
