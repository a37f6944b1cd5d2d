import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import * as z from 'zod/mini';
import { findSurplus, type StateKey } from './keep-states';
import { databaseName } from './storage';

interface Layout extends DBSchema {
  /** The texts of the sheet, newest last. Anything may be found here once a disk has gone wrong. */
  states: { key: [revision: number, at: number]; value: unknown };
  aside: { key: number; value: unknown };
}

export type Database = IDBPDatabase<Layout>;

const layoutVersion = 1;
const longestWait = 5000;
const stores = ['states', 'aside'] as const;
// A phone whose battery dies must not lose an edit that the page has called saved; the wait for the disk is not felt.
const lasting = { durability: 'strict' } as const;

export interface Watch {
  /** A newer version of the page waits to change the layout: close the database, soon. */
  readonly onNewer: () => void;
  /** The browser has closed the database by itself, or someone waits to delete it: close it, at once. */
  readonly onGone: () => void;
}

/**
 * Opens what keeps the sheet. Rejects where the browser keeps nothing, gives no answer for five seconds, or holds a
 * layout that is not to be read. One of a newer version opens too; `isNewer` tells.
 */
export async function openDatabase({ onNewer, onGone }: Watch): Promise<Database> {
  const callbacks = {
    blocking: (_: number, next: number | null) => (next === null ? onGone() : onNewer()),
    terminated: onGone,
  };
  const opening = openDB<Layout>(databaseName, layoutVersion, {
    ...callbacks,
    upgrade(database) {
      database.createObjectStore('states');
      database.createObjectStore('aside', { autoIncrement: true });
    },
  }).catch((error: unknown) => {
    if (error instanceof DOMException && error.name === 'VersionError') {
      return openDB<Layout>(databaseName, undefined, callbacks);
    }
    throw error;
  });
  const database = await Promise.race([opening, refuseAfter(longestWait)]).catch((error: unknown) => {
    // One that comes too late is nobody’s, and would stand in the way of a newer page.
    opening.then((late) => late.close(), ignore);
    throw error;
  });
  if (!stores.every((store) => database.objectStoreNames.contains(store))) {
    database.close();
    throw new DOMException('the layout is not known', 'NotFoundError');
  }
  return database;
}

function refuseAfter(milliseconds: number): Promise<never> {
  return new Promise((_, reject) => {
    setTimeout(() => reject(new DOMException('no answer', 'TimeoutError')), milliseconds);
  });
}

export function isNewer(database: Database): boolean {
  return database.version > layoutVersion;
}

/** The places of all states, oldest first. */
export async function listStates(database: Database): Promise<StateKey[]> {
  return database.getAllKeys('states', allStates());
}

export function readState(database: Database, [revision, at]: StateKey): Promise<unknown> {
  return database.get('states', [revision, at]);
}

/**
 * Adds a state that builds on revision `base` and gives its revision. Gives null, and changes nothing, where another
 * window has saved since: that is looked up in the very transaction that writes.
 */
export async function addState(database: Database, base: number, text: string, now: number): Promise<number | null> {
  const { store, done } = database.transaction('states', 'readwrite', lasting);
  const keys = await store.getAllKeys(allStates());
  const head = keys.at(-1)?.[0];
  if (head !== undefined && head !== base) {
    await done;
    return null;
  }
  const added: [number, number] = [base + 1, now];
  const requests = [store.put(text, added)];
  for (const [revision, at] of findSurplus([...keys, added], now)) void store.delete([revision, at]).catch(ignore);
  await settle(requests, done);
  return added[0];
}

/** Moves damaged states aside, as they are, and puts a text in their place: all of it or nothing. Gives its revision. */
export async function mendStates(
  database: Database,
  damaged: readonly { readonly key: StateKey; readonly why: string }[],
  text: string,
  now: number,
): Promise<number> {
  const transaction = database.transaction(stores, 'readwrite', lasting);
  const states = transaction.objectStore('states');
  const aside = transaction.objectStore('aside');
  const head = (await states.getAllKeys(allStates())).at(-1)?.[0] ?? 0;
  const requests: Promise<unknown>[] = [];
  for (const { key, why } of damaged) {
    const found = await states.get([...key]);
    if (found === undefined) continue;
    requests.push(aside.add({ at: key[1], why, found }), states.delete([...key]));
  }
  requests.push(states.put(text, [head + 1, now]));
  await settle(requests, transaction.done);
  return head + 1;
}

/** Puts texts aside, and one of them, if told to, in as the first state where there is none yet: all of it or nothing. */
export async function takeIn(
  database: Database,
  sheet: { readonly text: string; readonly why: string } | null,
  others: readonly { readonly text: string; readonly why: string }[],
  now: number,
): Promise<void> {
  const transaction = database.transaction(stores, 'readwrite', lasting);
  const states = transaction.objectStore('states');
  const aside = transaction.objectStore('aside');
  const isEmpty = (await states.getAllKeys(allStates())).length === 0;
  const requests: Promise<unknown>[] = others.map(({ text, why }) => aside.add({ at: now, why, found: text }));
  if (sheet !== null) {
    requests.push(
      isEmpty ? states.put(sheet.text, [1, now]) : aside.add({ at: now, why: sheet.why, found: sheet.text }),
    );
  }
  await settle(requests, transaction.done);
}

/** What was put aside, with the reason and the time of it. */
interface AsideText {
  readonly key: number;
  readonly at: number;
  readonly why: string;
  readonly text: string;
}

const asideRecord = z.object({ at: z.number(), why: z.string(), found: z.unknown() });

/** What was put aside, newest first; a record that is itself damaged is listed as what it is. */
export async function listAside(database: Database): Promise<AsideText[]> {
  const { store } = database.transaction('aside');
  const [keys, records] = await Promise.all([store.getAllKeys(), store.getAll()]);
  const all = keys.map((key, place) => ({ key, record: records[place] }));
  return all.reverse().map(({ key, record }) => {
    const read = z.safeParse(asideRecord, record);
    return read.success
      ? { key, at: read.data.at, why: read.data.why, text: writeFound(read.data.found) }
      : { key, at: 0, why: 'It was found damaged.', text: writeFound(record) };
  });
}

/** Throws away what was put aside under this key; nothing where it is gone. */
export function removeAside(database: Database, key: number): Promise<void> {
  return database.delete('aside', key);
}

/** A found value as text: a text as it is, anything else as JSON can say it. */
export function writeFound(found: unknown): string {
  if (typeof found === 'string') return found;
  try {
    return JSON.stringify(found) ?? String(found);
  } catch {
    return String(found);
  }
}

/** A request that fails takes its transaction with it, whose end is what is waited for. */
async function settle(requests: readonly Promise<unknown>[], done: Promise<void>): Promise<void> {
  for (const request of requests) request.catch(ignore);
  await done;
}

function ignore(): void {}

function allStates(): IDBKeyRange {
  return IDBKeyRange.bound([0, Number.NEGATIVE_INFINITY], [Number.MAX_SAFE_INTEGER - 1, Number.POSITIVE_INFINITY]);
}
