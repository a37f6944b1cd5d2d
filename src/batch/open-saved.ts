import { demo } from './demo';
import type { SheetDocument } from './document';
import { describeDocumentProblem } from './document-problem-words';
import { readDocument } from './document-schema';
import { blocked, type KeyStorage, key } from './storage';

export interface Loaded {
  readonly document: SheetDocument;
  /** What the cook has to be told, in plain words; null where all is well. */
  readonly message: string | null;
}

const keptKey = 'jarwright.sheet.kept';

/**
 * The sheet as it was left, or the demo on a first visit. A saved text that can't be opened is put aside, never thrown
 * away, and the demo opens in its place. Storage that is missing or blocked gives the demo too; nothing throws.
 */
export function loadDocument(storage: KeyStorage | null): Loaded {
  if (storage === null) return { document: demo, message: blocked };
  let text: string | null;
  try {
    text = storage.getItem(key);
  } catch {
    return { document: demo, message: blocked };
  }
  if (text === null) return { document: demo, message: null };
  const { document, why } = openText(text);
  if (document !== null) return { document, message: null };
  const kept = putAside(storage, text)
    ? 'The text of it is kept in this browser.'
    : 'There is no room to put it aside: it stays in this browser until you change something here.';
  return {
    document: demo,
    message: `The saved sheet could not be opened, so this is the first one again. ${why} ${kept}`,
  };
}

function openText(text: string): { readonly document: SheetDocument | null; readonly why: string } {
  try {
    const read = readDocument(JSON.parse(text));
    return read.ok ? { document: read.document, why: '' } : { document: null, why: describeDocumentProblem(read.why) };
  } catch {
    return { document: null, why: 'Its text is damaged.' };
  }
}

/** Keeps a text under a key of its own, beside any that were put aside earlier. */
function putAside(storage: KeyStorage, text: string): boolean {
  try {
    let place = keptKey;
    for (let number = 2; ; number += 1) {
      const there = storage.getItem(place);
      if (there === text) return true;
      if (there === null) break;
      place = `${keptKey}.${number}`;
    }
    return write(storage, place, text) || moveAside(storage, place, text);
  } catch {
    return false;
  }
}

/** A text too long to be there twice is moved, and put back where even that finds no room. */
function moveAside(storage: KeyStorage, place: string, text: string): boolean {
  storage.removeItem(key);
  if (write(storage, place, text)) return true;
  write(storage, key, text);
  return false;
}

function write(storage: KeyStorage, place: string, text: string): boolean {
  try {
    storage.setItem(place, text);
    return true;
  } catch {
    return false;
  }
}
