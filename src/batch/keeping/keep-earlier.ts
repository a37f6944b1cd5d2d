import { type Database, takeIn } from './keep-database';
import { earlierKey, type KeyStorage } from './storage';

const keptKey = `${earlierKey}.kept`;
const fromEarlier = 'An earlier version of this page saved it after this one had begun to keep the sheet.';
const keptByEarlier = 'An earlier version of this page could not open it.';

/** The text of the sheet that an earlier version of the page left; null where there is none or it can't be read. */
export function readEarlier(storage: KeyStorage | null): string | null {
  try {
    return storage?.getItem(earlierKey) ?? null;
  } catch {
    return null;
  }
}

/**
 * Takes over what an earlier version of the page left: its sheet, and the texts it had put aside. Nothing is deleted
 * there before it is safely kept here. Rejects where it can't be kept.
 */
export async function takeOverEarlier(storage: KeyStorage | null, database: Database, now: number): Promise<void> {
  if (storage === null) return;
  const sheet = readEarlier(storage);
  const aside = listKept(storage);
  if (sheet === null && aside.length === 0) return;
  const others = aside.map(({ text }) => ({ text, why: keptByEarlier }));
  await takeIn(database, sheet === null ? null : { text: sheet, why: fromEarlier }, others, now);
  for (const { key, text } of [{ key: earlierKey, text: sheet }, ...aside]) {
    // What was written there meanwhile is for the next time.
    if (storage.getItem(key) === text) storage.removeItem(key);
  }
}

function listKept(storage: KeyStorage): { key: string; text: string }[] {
  const found: { key: string; text: string }[] = [];
  try {
    for (let number = 1; ; number += 1) {
      const key = number === 1 ? keptKey : `${keptKey}.${number}`;
      const text = storage.getItem(key);
      if (text === null) return found;
      found.push({ key, text });
    }
  } catch {
    return found;
  }
}
