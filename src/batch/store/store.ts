import { computed, type ReadonlySignal, signal } from '@preact/signals';
import { type Formulation, formulate } from '../../formula/engine/formulate';
import { type Batch, recipeOf, type Settings, type SheetDocument } from '../document/document';
import { type History, redoName, startHistory, undoName } from '../document/recorded';
import { type JustSwapped, justSwapped } from '../edits/swap-sweetener';
import type { Keeping, KeptSheet } from '../keeping/keeping';
import { lastGood } from './last-good';
import { type SheetEdits, sheetEdits } from './sheet-edits';

/** The sheet while it is open: the document, its results and its undo as signals. */
interface OpenSheet {
  readonly document: ReadonlySignal<SheetDocument>;
  readonly settings: ReadonlySignal<Settings>;
  /** What to tell the cook of how the sheet is kept; null where all is well. */
  readonly message: ReadonlySignal<string | null>;
  /** What keeps the sheet in this browser; null until it is there. */
  readonly keeping: ReadonlySignal<Keeping | null>;
  /** Whether no edit is taken here, as while another window edits. */
  readonly readOnly: ReadonlySignal<boolean>;
  readonly undoName: ReadonlySignal<string | null>;
  readonly redoName: ReadonlySignal<string | null>;
  /** One batch as it stands, followed by itself: an edit to another batch changes nothing here. */
  readonly batchOf: (id: string) => ReadonlySignal<Batch | undefined>;
  /** The batch worked out; worked out once for as long as neither it nor the corrections change. */
  readonly formulationOf: (batch: Batch) => Formulation;
  /** The figures that stand in for those a slip takes away; null where nothing is refused. */
  readonly lastGoodOf: (batch: Batch) => Formulation | null;
  /** The sweetener that the last step chose in place of another; null where it did something else. */
  readonly justSwapped: ReadonlySignal<JustSwapped | null>;
  /** Has the sheet kept from now on: what was edited before that is saved, each edit as it comes. */
  readonly keepIn: (kept: KeptSheet) => void;
}

/** An open sheet with every edit as an action. */
export type Store = OpenSheet & SheetEdits;

/** Opens a sheet with all its edits. */
export function createStore(initial: SheetDocument): Store {
  const history = signal(startHistory(initial));
  const keeping = signal<Keeping | null>(null);
  const readOnly = computed(() => keeping.value?.mayEdit.value === false);
  const document = computed(() => history.value.present);
  const yours = computed(() => document.value.yours);
  // By batch and corrections, the two things a result depends on: an edit to one batch leaves the others' as they are.
  const results = new WeakMap<Batch, WeakMap<SheetDocument['yours'], Formulation>>();

  const followed = new Map<string, ReadonlySignal<Batch | undefined>>();
  const batchOf = (id: string): ReadonlySignal<Batch | undefined> => {
    const known = followed.get(id) ?? computed(() => document.value.batches.find((batch) => batch.id === id));
    followed.set(id, known);
    return known;
  };

  const take = (next: History, isStep = false): void => {
    const isNew = next.present !== history.value.present;
    const { save, putAside } = keeping.peek() ?? {};
    // What was typed as the other window took over is not to be lost; an undo that is not made is no loss.
    if (readOnly.peek()) isNew && isStep && putAside?.(next.present);
    else {
      history.value = next;
      if (isNew) save?.(next.present);
    }
  };
  const show = (shown: SheetDocument): void => {
    history.value = startHistory(shown);
  };
  const formulationOf = (batch: Batch): Formulation => {
    const own = results.get(batch) ?? new WeakMap<SheetDocument['yours'], Formulation>();
    results.set(batch, own);
    const found = own.get(yours.value) ?? formulate(recipeOf(document.peek(), batch));
    own.set(yours.value, found);
    return found;
  };

  return {
    ...sheetEdits({ history: () => history.value, take }),
    document,
    keeping,
    readOnly,
    settings: computed(() => document.value.settings),
    message: computed(() => keeping.value?.message.value ?? null),
    undoName: computed(() => undoName(history.value)),
    redoName: computed(() => redoName(history.value)),
    batchOf,
    formulationOf,
    lastGoodOf: (batch) => lastGood(batch, history.peek(), formulationOf),
    justSwapped: computed(() => justSwapped(history.value)),
    keepIn(kept) {
      const here = document.peek();
      const isEdited = here !== initial;
      if (isEdited && kept.isFirst && kept.keeping.mayEdit.peek()) kept.keeping.save(here);
      else {
        if (isEdited) kept.keeping.putAside(here);
        if (kept.document !== here) show(kept.document);
      }
      kept.keeping.follow(show);
      keeping.value = kept.keeping;
    },
  };
}
