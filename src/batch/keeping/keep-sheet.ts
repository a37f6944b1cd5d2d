import { computed, signal } from '@preact/signals';
import type { SheetDocument } from '../document/document';
import { askToStay } from './ask-to-stay';
import { createConnection } from './keep-connection';
import { addState, type Database, isNewer, listStates, readState, removeAside, takeIn } from './keep-database';
import { readEarlier, takeOverEarlier } from './keep-earlier';
import { describeFailure, isFull } from './keep-failure';
import { listKept } from './keep-list';
import { mendDamaged } from './keep-mend';
import { createSaves } from './keep-saves';
import { afterEvent, type KeepEffect, type KeepEvent, messageOf, notLookedAt, whatNewest } from './keep-state';
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
  const state = signal(notLookedAt);
  let show: (document: SheetDocument) => void = () => {};

  /** The only way in which the state changes. */
  const tell = (event: KeepEvent): void => {
    const step = afterEvent(state.peek(), event);
    state.value = step.state;
    step.effects.forEach(carryOut);
  };

  const carryOut = (effect: KeepEffect): void => {
    if (effect.do === 'show') show(effect.document);
    else if (effect.do === 'stopTrying') saves.giveUp();
    else {
      turns.tellSaved();
      if (effect.isFirst) markKept(storage, true);
      void askToStay(navigator, effect.isFirst);
    }
  };

  const { connect, disconnect, isOpen } = createConnection({
    onNewer: () => void makeWay(),
    onGone: () => void lookWhetherGone(),
  });

  /**
   * Goes on from the newest state that is kept, once an edit that could not be saved here is safe aside. Where it can’t
   * be, all stays as it is, and the cook is told. Gives whether it went on.
   */
  const goOnFrom = async ({ head, document }: LastGood): Promise<boolean> => {
    const { unsaved } = state.peek();
    if (unsaved !== null) {
      try {
        await setAside(unsaved, keepWords.overtaken);
      } catch {
        tell({ is: 'troubled', why: keepWords.stillHere });
        return false;
      }
      tell({ is: 'gaveUp' });
    }
    tell({ is: 'wentOn', head, document });
    return true;
  };

  /** Why a save failed; where nothing was ever kept here, nothing is said to be there still. */
  const whyFailed = (error: unknown): string => {
    const { base, isLookedAt } = state.peek();
    const isNothingKept = base === 0 && (!isOpen() || isLookedAt) && readEarlier(storage) === null;
    if (!isNothingKept) return describeFailure(error);
    return isFull(error) ? keepWords.neverRoom : keepWords.blocked;
  };

  const readLast = async (from: Database): Promise<LastGood> => {
    const last = await findLastGood(await listStates(from), (key) => readState(from, key));
    tell({ is: 'lookedAt' });
    return isNewer(from) ? { ...last, newer: last.newer ?? from.version } : last;
  };

  const readNewer = async (): Promise<void> => {
    const from = await connect();
    const [head = 0] = (await listStates(from)).at(-1) ?? [];
    tell({ is: 'lookedAt' });
    const what = whatNewest(head, state.peek());
    if (what === 'gone') tell({ is: 'gone' });
    if (what !== 'go') return;
    const last = await readLast(from);
    // This window has saved meanwhile, or is about to: whether that fits is found out there.
    const { reading, base } = state.peek();
    if (reading === '' && (last.head <= base || saves.how.peek() !== 'saved')) return;
    await goOnFrom(last);
  };

  /** What is kept may have been deleted with the connection, and then nothing that is shown is saved any more. */
  const lookWhetherGone = async (): Promise<void> => {
    await disconnect();
    await saves.settle();
    await refresh().catch((error: unknown) => tell({ is: 'troubled', why: whyFailed(error) }));
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
        showEarlier();
        tell({ is: 'troubled', why: describeFailure(error) });
      }
    }
    const last = await readLast(from);
    if (last.head !== state.peek().base && !(await goOnFrom(last))) {
      tell({ is: 'turned', reading: 'overtaken' });
      return;
    }
    if (last.newer !== null) {
      tell({ is: 'tooNew', tell: keepWords.newer(last.newer, last.document !== null && last.damaged.length === 0) });
      return;
    }
    if (last.damaged.length > 0) {
      const mended = await mendDamaged(from, last);
      tell({ is: 'mended', ...mended });
      if (mended.revision === null) return;
    }
    tell({ is: 'opened' });
  };

  /** What an earlier page left is shown from where it lies, unless something here is saved nowhere. */
  const showEarlier = (): void => {
    const earlier = openText(readEarlier(storage));
    if (earlier.is === 'good' && state.peek().unsaved === null) tell({ is: 'came', document: earlier.document });
  };

  const setAside = async (document: SheetDocument, why: string): Promise<void> => {
    const text = JSON.stringify(document);
    await takeIn(await connect(), null, [{ text, why: keepWords.typedHere }], Date.now());
    tell({ is: 'putAside', tell: why });
  };

  const write = async ({ document, builtOn }: Edited): Promise<string | null> => {
    try {
      const text = JSON.stringify(document);
      const into = await connect();
      if (isNewer(into)) {
        tell({ is: 'notSaved', document });
        return keepWords.tooNew;
      }
      const { line, base } = state.peek();
      const revision = builtOn === line ? await addState(into, base, text, Date.now()) : null;
      if (revision !== null) {
        tell({ is: 'saved', revision, document });
        return null;
      }
      tell({ is: 'overtaken' });
      await setAside(document, keepWords.overtaken);
      await refresh();
      return null;
    } catch (error) {
      tell({ is: 'notSaved', document });
      return whyFailed(error);
    }
  };

  const saves = createSaves(write, (why) => tell({ is: 'troubled', why }));

  const letGo = async (why: 'elsewhere' | 'reload'): Promise<boolean> => {
    commitOpenCell();
    const { reading } = state.peek();
    tell({ is: 'lost', to: why });
    const isSaved = await saves.settle();
    if (!isSaved) tell({ is: 'turned', reading });
    return isSaved;
  };

  /** A newer page waits for this one to close the database. */
  const makeWay = async (): Promise<void> => {
    if (await letGo('reload')) tell({ is: 'turned', reading: 'reload' });
    await disconnect();
  };

  const locks = navigator.locks ?? undefined;
  const channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(databaseName);
  /** Without locks the window that edits follows the others too, or they would drift apart until both save. */
  const followOthers = (): void => {
    if (state.peek().reading !== '') void refresh().catch(() => undefined);
    else if (locks === undefined) lookAgain();
  };

  const turns = createOneWindow({
    locks,
    channel,
    name: databaseName,
    onGained: () => open().catch(fail),
    onLost: () => tell({ is: 'lost', to: 'elsewhere' }),
    onSaved: followOthers,
    letGo: () => letGo('elsewhere'),
  });

  const fail = (error: unknown): void => {
    if (state.peek().base === 0) showEarlier();
    tell({ is: 'blocked', why: isFull(error) ? keepWords.full : keepWords.blocked });
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
  const { base, shown } = state.peek();
  markKept(storage, base !== 0);
  return {
    document: shown,
    isFirst: base === 0 && shown === notLookedAt.shown,
    keeping: {
      how: computed(() => (state.value.trouble !== null && how.value === 'saved' ? 'unsaved' : how.value)),
      mayEdit: computed(() => state.value.reading === ''),
      editedElsewhere: computed(() => ['elsewhere', 'overtaken'].includes(state.value.reading)),
      message: computed(() => messageOf(state.value)),
      save: (document) => saves.save({ document, builtOn: state.peek().line }),
      putAside: (document) => {
        setAside(document, keepWords.asideHere).catch((error: unknown) => {
          tell({ is: 'notSaved', document });
          tell({ is: 'troubled', why: whyFailed(error) });
        });
      },
      follow(toShow) {
        show = toShow;
      },
      async editHere() {
        tell({ is: 'told', tell: null });
        if (!(await turns.ask())) tell({ is: 'told', tell: keepWords.notYet });
      },
      list: async () => listKept(await connect()),
      removeAside: async (key) => removeAside(await connect(), key),
    },
  };
}
