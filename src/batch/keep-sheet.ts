import { computed, signal } from '@preact/signals';
import { askToStay } from './ask-to-stay';
import { demo } from './demo';
import type { SheetDocument } from './document';
import { createConnection } from './keep-connection';
import { addState, type Database, isNewer, listStates, readState, removeAside, takeIn } from './keep-database';
import { readEarlier, takeOverEarlier } from './keep-earlier';
import { describeFailure, isFull } from './keep-failure';
import { listKept } from './keep-list';
import { mendDamaged } from './keep-mend';
import { createSaves } from './keep-saves';
import { keepWords } from './keep-words';
import type { KeptSheet } from './keeping';
import { createOneWindow } from './one-window';
import { findLastGood, type LastGood, openText } from './open-saved';
import { databaseName, type KeyStorage, markKept } from './storage';

const betweenLooks = 3000;

interface Surroundings {
  /** Where an earlier version of the page may have left a sheet; null where it is blocked. */
  readonly storage: KeyStorage | null;
  /** Commits what is typed into an open cell. */
  readonly commitOpenCell: () => void;
}

/** A document to save, and the line of documents that it was edited on. */
interface Edited {
  readonly document: SheetDocument;
  readonly builtOn: number;
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
  // Counts the documents taken from elsewhere: an edit that was made to one shown before must not be saved over it.
  let line = 0;
  let shown: SheetDocument = demo;
  let unsaved: SheetDocument | null = null;
  let show: (document: SheetDocument) => void = () => {};
  let isLookedAt = false;

  const { connect, disconnect, isOpen } = createConnection({
    onNewer: () => void makeWay(),
    onGone: () => void lookWhetherGone(),
  });

  const present = (document: SheetDocument): void => {
    line += 1;
    shown = document;
    show(document);
  };

  /**
   * Goes on from the newest state that is kept, once an edit that could not be saved here is safe aside. Where it can’t
   * be, all stays as it is, and the cook is told. Gives whether it went on.
   */
  const goOnFrom = async ({ head, document }: LastGood): Promise<boolean> => {
    if (unsaved !== null) {
      try {
        await setAside(unsaved, keepWords.overtaken);
      } catch {
        trouble.value = keepWords.stillHere;
        return false;
      }
      saves.giveUp();
      trouble.value = null;
    }
    base = head;
    if (document !== null) present(document);
    return true;
  };

  /** Why a save failed; where nothing was ever kept here, nothing is said to be there still. */
  const whyFailed = (error: unknown): string => {
    const isNothingKept = base === 0 && (!isOpen() || isLookedAt) && readEarlier(storage) === null;
    if (!isNothingKept) return describeFailure(error);
    return isFull(error) ? keepWords.neverRoom : keepWords.blocked;
  };

  const readLast = async (from: Database): Promise<LastGood> => {
    const last = await findLastGood(await listStates(from), (key) => readState(from, key));
    isLookedAt = true;
    return isNewer(from) ? { ...last, newer: last.newer ?? from.version } : last;
  };

  const readNewer = async (): Promise<void> => {
    const from = await connect();
    const [head = 0] = (await listStates(from)).at(-1) ?? [];
    isLookedAt = true;
    if (head === base) return;
    if (head === 0 && reading.peek() === '') {
      tellGone();
      return;
    }
    const last = await readLast(from);
    // This window has saved meanwhile, or is about to: whether that fits is found out there.
    if (reading.peek() === '' && (last.head <= base || saves.how.peek() !== 'saved')) return;
    await goOnFrom(last);
  };

  const tellGone = (): void => {
    base = 0;
    trouble.value = keepWords.gone;
  };

  /** What is kept may have been deleted with the connection, and then nothing that is shown is saved any more. */
  const lookWhetherGone = async (): Promise<void> => {
    await disconnect();
    await saves.settle();
    await refresh().catch((error: unknown) => {
      trouble.value = whyFailed(error);
    });
  };

  let lastRead: Promise<void> = Promise.resolve();
  /** Reads what another window has saved. One reading after the other, or an older one might come in last. */
  const refresh = (): Promise<void> => {
    lastRead = lastRead.catch(() => undefined).then(readNewer);
    return lastRead;
  };

  /** A page that was frozen, or comes back from the browser’s history, may have missed what others saved. */
  const lookAgain = (): void => {
    if (saves.how.peek() === 'saved') void refresh().catch(() => undefined);
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
        if (earlier.is === 'good' && unsaved === null) present(earlier.document);
        trouble.value = describeFailure(error);
      }
    }
    const last = await readLast(from);
    if (last.head !== base && !(await goOnFrom(last))) {
      reading.value = 'overtaken';
      return;
    }
    if (last.newer !== null) {
      notice.value = keepWords.newer(last.newer, last.document !== null && last.damaged.length === 0);
      reading.value = 'newer';
      return;
    }
    if (last.damaged.length > 0) {
      const { revision, tell } = await mendDamaged(from, last);
      notice.value = tell;
      if (revision === null) {
        reading.value = 'stuck';
        return;
      }
      base = revision;
    }
    reading.value = '';
  };

  const setAside = async (document: SheetDocument, tell: string): Promise<void> => {
    const text = JSON.stringify(document);
    await takeIn(await connect(), null, [{ text, why: keepWords.typedHere }], Date.now());
    unsaved = null;
    notice.value = tell;
  };

  const write = async ({ document, builtOn }: Edited): Promise<string | null> => {
    try {
      const text = JSON.stringify(document);
      const into = await connect();
      if (isNewer(into)) {
        unsaved = document;
        return keepWords.tooNew;
      }
      const isFirst = base === 0;
      const revision = builtOn === line ? await addState(into, base, text, Date.now()) : null;
      if (revision !== null) {
        base = revision;
        shown = document;
        unsaved = null;
        turns.tellSaved();
        if (isFirst) markKept(storage, true);
        void askToStay(navigator, isFirst);
        return null;
      }
      if (reading.peek() === '') reading.value = 'overtaken';
      await setAside(document, keepWords.overtaken);
      await refresh();
      return null;
    } catch (error) {
      unsaved = document;
      return whyFailed(error);
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
    await disconnect();
  };

  const locks = navigator.locks ?? undefined;
  const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(databaseName);
  /** Without locks the window that edits follows the others too, or they would drift apart until both save. */
  const followOthers = (): void => {
    if (reading.peek() !== '') void refresh().catch(() => undefined);
    else if (locks === undefined) lookAgain();
  };

  const turns = createOneWindow({
    ...{ locks, channel },
    name: databaseName,
    onGained: () => open().catch(fail),
    onLost: () => {
      if (reading.peek() === '') reading.value = 'elsewhere';
    },
    onSaved: followOthers,
    letGo: () => letGo('elsewhere'),
  });

  const fail = (error: unknown): void => {
    const earlier = openText(readEarlier(storage));
    if (base === 0 && earlier.is === 'good' && unsaved === null) present(earlier.document);
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

  // Nobody tells what another window has saved.
  if (channel === null) setInterval(followOthers, betweenLooks);
  if (typeof addEventListener === 'function') {
    for (const back of ['pageshow', 'visibilitychange']) addEventListener(back, lookAgain);
  }
  const { how } = saves;
  markKept(storage, base !== 0);
  return {
    document: shown,
    isFirst: base === 0 && shown === demo,
    keeping: {
      how: computed(() => (trouble.value !== null && how.value === 'saved' ? 'unsaved' : how.value)),
      mayEdit: computed(() => reading.value === ''),
      editedElsewhere: computed(() => reading.value === 'elsewhere' || reading.value === 'overtaken'),
      message: computed(() => {
        if (reading.value === 'elsewhere') {
          return trouble.value ?? [notice.value ?? '', keepWords.elsewhere].join(' ').trim();
        }
        if (reading.value === 'reload') return keepWords.reload;
        return trouble.value ?? notice.value;
      }),
      save: (document) => saves.save({ document, builtOn: line }),
      putAside: (document) => {
        setAside(document, keepWords.asideHere).catch((error: unknown) => {
          unsaved = document;
          trouble.value = whyFailed(error);
        });
      },
      follow(toShow) {
        show = toShow;
      },
      async editHere() {
        notice.value = null;
        if (!(await turns.ask())) notice.value = keepWords.notYet;
      },
      list: async () => listKept(await connect()),
      removeAside: async (key) => removeAside(await connect(), key),
    },
  };
}
