import { computed, signal } from '@preact/signals';
import { demo } from './demo';
import type { SheetDocument } from './document';
import {
  addState,
  type Database,
  isNewer,
  listAside,
  listStates,
  mendStates,
  openDatabase,
  readState,
  takeIn,
  writeFound,
} from './keep-database';
import { readEarlier, takeOverEarlier } from './keep-earlier';
import { createSaves } from './keep-saves';
import { keepWords } from './keep-words';
import type { KeptSheet } from './keeping';
import { createOneWindow } from './one-window';
import { findLastGood, type LastGood, openText } from './open-saved';
import { databaseName, type KeyStorage } from './storage';

interface Surroundings {
  /** Where an earlier version of the page may have left a sheet; null where it is blocked. */
  readonly storage: KeyStorage | null;
  /** Commits what is typed into an open cell. */
  readonly commitOpenCell: () => void;
}

/**
 * Opens the sheet kept in this browser and keeps it from then on. Whatever fails, there is a sheet to go on with and a
 * message in plain words; it never rejects and throws nothing away.
 */
export async function keepSheet({ storage, commitOpenCell }: Surroundings): Promise<KeptSheet> {
  const reading = signal<'' | 'elsewhere' | 'newer' | 'overtaken' | 'reload' | 'stuck'>('elsewhere');
  const trouble = signal<string | null>(null);
  const notice = signal<string | null>(null);
  let base = 0;
  let shown: SheetDocument = demo;
  let show: (document: SheetDocument) => void = () => {};
  let database: Database | null = null;

  const connect = async (): Promise<Database> => {
    database ??= await openDatabase({
      onNewer: () => void makeWay(),
      onGone: () => {
        database = null;
      },
    });
    return database;
  };

  const present = (document: SheetDocument): void => {
    shown = document;
    show(document);
  };

  const readLast = async (from: Database): Promise<LastGood> => {
    const last = await findLastGood(await listStates(from), (key) => readState(from, key));
    return isNewer(from) ? { ...last, newer: last.newer ?? from.version } : last;
  };

  /** Reads what another window has saved. */
  const refresh = async (): Promise<void> => {
    const last = await readLast(await connect());
    if (last.head === base) return;
    base = last.head;
    if (last.document !== null) present(last.document);
  };

  /** Opens the sheet to edit it: takes over what an earlier page left and mends what is damaged. */
  const open = async (): Promise<void> => {
    const now = Date.now();
    const from = await connect();
    if (!isNewer(from)) {
      try {
        await takeOverEarlier(storage, from, now);
      } catch (error) {
        const earlier = openText(readEarlier(storage));
        if (earlier.is === 'good') present(earlier.document);
        trouble.value = describeFailure(error);
      }
    }
    const last = await readLast(from);
    const changed = last.head !== base;
    base = last.head;
    if (last.document !== null && changed) present(last.document);
    if (last.newer !== null) {
      notice.value = keepWords.newer(last.newer, last.document !== null && last.damaged.length === 0);
      reading.value = 'newer';
      return;
    }
    if (last.damaged.length > 0 && !(await mend(from, last))) return;
    reading.value = '';
  };

  const mend = async (from: Database, { damaged, document, at }: LastGood): Promise<boolean> => {
    try {
      base = await mendStates(from, damaged, JSON.stringify(document ?? demo), Date.now());
      notice.value = keepWords.damaged(damaged[0]?.why ?? '', at === null ? null : new Date(at).toLocaleString());
      return true;
    } catch {
      notice.value = keepWords.noRoomAside;
      reading.value = 'stuck';
      return false;
    }
  };

  const setAside = async (text: string): Promise<void> => {
    await takeIn(await connect(), null, [{ text, why: keepWords.typedHere }], Date.now());
    notice.value = keepWords.overtaken;
  };

  const write = async (document: SheetDocument): Promise<string | null> => {
    try {
      const text = JSON.stringify(document);
      const into = await connect();
      if (isNewer(into)) return keepWords.reload;
      const revision = await addState(into, base, text, Date.now());
      if (revision !== null) {
        base = revision;
        shown = document;
        turns.tellSaved();
        return null;
      }
      await setAside(text);
      reading.value = 'overtaken';
      await refresh();
      return null;
    } catch (error) {
      return describeFailure(error);
    }
  };

  const saves = createSaves(write, (message) => {
    trouble.value = message;
  });

  const letGo = async (why: 'elsewhere' | 'reload'): Promise<boolean> => {
    commitOpenCell();
    const before = reading.peek();
    if (before === '') reading.value = why;
    const isSaved = await saves.settle();
    if (!isSaved) reading.value = before;
    return isSaved;
  };

  /** A newer page waits for this one to close the database. */
  const makeWay = async (): Promise<void> => {
    if (await letGo('reload')) reading.value = 'reload';
    database?.close();
    database = null;
  };

  const turns = createOneWindow({
    locks: navigator.locks ?? undefined,
    channel: typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(databaseName),
    name: databaseName,
    onGained: () => open().catch(fail),
    onLost: () => {
      if (reading.peek() === '') reading.value = 'elsewhere';
    },
    onSaved: () => {
      if (reading.peek() !== '') void refresh().catch(() => undefined);
    },
    letGo: () => letGo('elsewhere'),
  });

  const fail = (error: unknown): void => {
    const earlier = openText(readEarlier(storage));
    if (base === 0 && earlier.is === 'good') present(earlier.document);
    trouble.value = isFull(error) ? keepWords.full : keepWords.blocked;
    reading.value = '';
  };

  try {
    await connect();
    if (await turns.start()) await open();
    else await refresh();
  } catch (error) {
    fail(error);
  }

  const { how } = saves;
  return {
    document: shown,
    isFirst: base === 0 && shown === demo,
    keeping: {
      how: computed(() => (trouble.value !== null && how.value === 'saved' ? 'unsaved' : how.value)),
      mayEdit: computed(() => reading.value === ''),
      editedElsewhere: computed(() => reading.value === 'elsewhere' || reading.value === 'overtaken'),
      message: computed(() => {
        if (reading.value === 'elsewhere') return trouble.value ?? keepWords.elsewhere;
        if (reading.value === 'reload') return keepWords.reload;
        return trouble.value ?? notice.value;
      }),
      save: saves.save,
      putAside: (document) => void setAside(JSON.stringify(document)).catch(fail),
      follow(toShow) {
        show = toShow;
      },
      async editHere() {
        trouble.value = (await turns.ask()) ? null : keepWords.notYet;
      },
      async list() {
        const from = await connect();
        const keys = await listStates(from);
        const states = keys.toReversed().map(async (key) => {
          const found = await readState(from, key);
          return { revision: key[0], at: key[1], text: writeFound(found), document: documentIn(found) };
        });
        const aside = await listAside(from);
        return {
          states: await Promise.all(states),
          aside: aside.map((one) => ({ ...one, document: documentIn(one.text) })),
        };
      },
    },
  };
}

function documentIn(found: unknown): SheetDocument | null {
  const opened = openText(found);
  return opened.is === 'good' ? opened.document : null;
}

function describeFailure(error: unknown): string {
  return isFull(error) ? keepWords.full : keepWords.failed;
}

/** Browsers report a full storage by this name, some as the reason why a transaction was aborted. */
function isFull(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'QuotaExceededError';
}
