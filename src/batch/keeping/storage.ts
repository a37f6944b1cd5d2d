export type KeyStorage = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** Where the sheet is kept in this browser. */
export const databaseName = 'jarwright';
/** Where earlier versions of the page kept it. */
export const earlierKey = 'jarwright.sheet';

/** Stands in local storage where a sheet is kept: the page then does not open with the example in its place. */
export const keptMark = 'jarwright.kept';

/** Says, where the page can see it before it is drawn, whether a sheet is kept here. */
export function markKept(storage: KeyStorage | null, isKept: boolean): void {
  try {
    if (isKept) storage?.setItem(keptMark, '');
    else storage?.removeItem(keptMark);
  } catch {
    // Without the mark the example is seen for a moment.
  }
}

/** Whether this browser surely keeps no sheet. So the page need not load what opens one before it shows itself. */
export async function isFirstVisit(storage: KeyStorage | null): Promise<boolean> {
  try {
    const databases = await indexedDB.databases();
    return storage?.getItem(earlierKey) === null && databases.every(({ name }) => name !== databaseName);
  } catch {
    return false;
  }
}
