import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../src/batch/demo';
import { typeCell } from '../../src/batch/edits';
import { loadDocument } from '../../src/batch/open-saved';
import { type KeyStorage, saveDocument } from '../../src/batch/storage';
import { anyDocument } from './any-edit';

/** A storage that holds so many characters and no more, as a browser's does. */
class SmallStorage implements KeyStorage {
  readonly texts = new Map<string, string>();
  readonly room: number;

  constructor(room = Number.POSITIVE_INFINITY) {
    this.room = room;
  }

  getItem(key: string): string | null {
    return this.texts.get(key) ?? null;
  }

  setItem(key: string, text: string): void {
    const others = [...this.texts].filter(([other]) => other !== key);
    const taken = others.reduce((sum, [other, kept]) => sum + other.length + kept.length, 0);
    if (taken + key.length + text.length > this.room) throw new DOMException('full', 'QuotaExceededError');
    this.texts.set(key, text);
  }

  removeItem(key: string): void {
    this.texts.delete(key);
  }
}

const refuse = (): never => {
  throw new DOMException('blocked', 'SecurityError');
};
const blocked: KeyStorage = { getItem: refuse, setItem: refuse, removeItem: refuse };

test('a first visit opens the demo and says nothing', () => {
  expect(loadDocument(new SmallStorage())).toEqual({ document: demo, message: null });
});

test('what is saved opens again as it was', () => {
  fc.assert(
    fc.property(anyDocument, (document) => {
      const storage = new SmallStorage();
      expect(saveDocument(storage, document)).toBeNull();
      expect([...storage.texts.keys()]).toEqual(['jarwright.sheet']);
      expect(loadDocument(storage)).toEqual({ document, message: null });
    }),
  );
});

describe('a saved text that can’t be opened', () => {
  const damaged = ['', '{', 'null', '[]', '{"version":1}', JSON.stringify({ ...demo, version: 9 }), '{"__proto__":{}}'];

  test.each(damaged)('opens the demo, says so, and is kept aside: %s', (text) => {
    const storage = new SmallStorage();
    storage.setItem('jarwright.sheet', text);
    const { document, message } = loadDocument(storage);
    expect(document).toBe(demo);
    expect(message).toContain('could not be opened');
    expect(saveDocument(storage, document)).toBeNull();
    expect(storage.getItem('jarwright.sheet.kept')).toBe(text);
  });

  test('does not take the place of one kept earlier', () => {
    const storage = new SmallStorage();
    for (const text of ['one', 'two', 'two', 'three']) {
      storage.setItem('jarwright.sheet', text);
      loadDocument(storage);
    }
    expect([...storage.texts.values()]).toEqual(['three', 'one', 'two', 'three']);
  });

  test('is moved where there is no room for it twice', () => {
    const storage = new SmallStorage(150);
    const text = 'x'.repeat(100);
    storage.setItem('jarwright.sheet', text);
    loadDocument(storage);
    expect([...storage.texts]).toEqual([['jarwright.sheet.kept', text]]);
  });

  test('stays where it is where there is no room at all, and the message says so', () => {
    const text = 'x'.repeat(100);
    const storage = new SmallStorage(text.length + 'jarwright.sheet'.length);
    storage.setItem('jarwright.sheet', text);
    expect(loadDocument(storage).message).toContain('no room');
    expect([...storage.texts]).toEqual([['jarwright.sheet', text]]);
  });
});

test.each([
  ['missing', null],
  ['blocked', blocked],
])('%s storage opens the demo and says that nothing is kept', (_, storage) => {
  const { document, message } = loadDocument(storage);
  expect(document).toBe(demo);
  expect(message).toContain('keep');
  expect(saveDocument(storage, demo)).toContain('keep');
});

test('a full storage says so and keeps what was saved before', () => {
  const storage = new SmallStorage(JSON.stringify(demo).length + 20);
  expect(saveDocument(storage, demo)).toBeNull();
  expect(saveDocument(storage, typeCell(demo, 'b1', 'sourceMass', '300 g'))).toContain('could not be saved');
  expect(loadDocument(storage)).toEqual({ document: demo, message: null });
});
