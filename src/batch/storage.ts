import type { SheetDocument } from './document';

export type KeyStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** Where the sheet is kept in this browser. */
export const key = 'jarwright.sheet';
export const blocked =
  'This browser lets the page keep nothing, so this sheet is gone when you close it. Print it to keep it.';

/** Whether this is a first visit: storage works and holds no sheet. So the page need not load what opens one. */
export function isFirstVisit(storage: KeyStorage | null): boolean {
  try {
    return storage !== null && storage.getItem(key) === null;
  } catch {
    return false;
  }
}

/** Saves the sheet in this browser. Gives null, or what to tell the cook where it could not be saved; never throws. */
export function saveDocument(storage: KeyStorage | null, document: SheetDocument): string | null {
  if (storage === null) return blocked;
  try {
    storage.setItem(key, JSON.stringify(document));
    return null;
  } catch {
    return 'This sheet could not be saved: this browser has no room left for the page, or keeps nothing. Print it to keep it.';
  }
}
