export type KeyStorage = Pick<Storage, 'getItem' | 'removeItem'>;

/** Where the sheet is kept in this browser. */
export const databaseName = 'jarwright';
/** Where earlier versions of the page kept it. */
export const earlierKey = 'jarwright.sheet';

/** Whether this browser surely keeps no sheet. So the page need not load what opens one before it shows itself. */
export async function isFirstVisit(storage: KeyStorage | null): Promise<boolean> {
  try {
    const databases = await indexedDB.databases();
    return storage?.getItem(earlierKey) === null && databases.every(({ name }) => name !== databaseName);
  } catch {
    return false;
  }
}
