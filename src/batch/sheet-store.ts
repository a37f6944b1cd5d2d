import { computed, type ReadonlySignal, signal, batch as together } from '@preact/signals';
import { type Formulation, formulate } from '../formula/formulate';
import { type Batch, recipeOf, type Settings, type SheetDocument } from './document';
import type { Keeping, KeptSheet } from './keeping';
import { type History, redoName, startHistory, undoName } from './recorded';
import type { Held, SheetEdits } from './sheet-edits';

/** What an edit puts where, by the name of the place: shown there for as long as the edit waits. */
export type Shown = Readonly<Record<string, string>>;

/** How an edit stands to undo: a step that it takes back, the undo itself, or none of both. */
export type EditKind = 'step' | 'undo' | 'redo' | 'setting';

/** The sheet while it is open: the document, its results and its undo as signals, and a way in for edits. */
export interface SheetStore {
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
  /** The batch worked out; worked out once for as long as neither it nor the corrections change. */
  readonly formulationOf: (batch: Batch) => Formulation;
  /** Makes an edit: at once where the edits are there, else as soon as they are, in the order in which they came. */
  readonly edit: (act: (edits: SheetEdits) => void, shown?: Shown, kind?: EditKind) => void;
  /** What the edits that wait will put where; empty where none waits. */
  readonly waiting: ReadonlySignal<Shown>;
  /** Whether an edit waits. */
  readonly waits: ReadonlySignal<boolean>;
  /** Takes what makes edits, carries out those that waited, and gives it back as it works on this sheet. */
  readonly startEdits: (make: (held: Held) => SheetEdits) => SheetEdits;
  /** Has the sheet kept from now on: what was edited before that is saved, each edit as it comes. */
  readonly keepIn: (kept: KeptSheet) => void;
}

interface Waiting {
  readonly act: (edits: SheetEdits) => void;
  readonly shown: Shown;
  readonly kind: EditKind;
}

/** Opens a sheet to be looked at. What makes its edits may come later: until it does, edits wait in their order. */
export function createSheetStore(initial: SheetDocument): SheetStore {
  const history = signal(startHistory(initial));
  const keeping = signal<Keeping | null>(null);
  const readOnly = computed(() => keeping.value?.mayEdit.value === false);
  const queue = signal<readonly Waiting[]>([]);
  let edits: SheetEdits | null = null;
  const document = computed(() => history.value.present);
  const yours = computed(() => document.value.yours);
  // By batch and corrections, the two things a result depends on: an edit to one batch leaves the others' as they are.
  const results = new WeakMap<Batch, WeakMap<SheetDocument['yours'], Formulation>>();

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

  /** What waited for its edits while another window took the sheet is made to a copy, which is put aside. */
  const makeAside = (make: (held: Held) => SheetEdits, waited: readonly Waiting[]): void => {
    let copy = history.value;
    const made = make({
      history: () => copy,
      take(next) {
        copy = next;
      },
    });
    for (const { act } of waited) act(made);
    if (copy.past.length > history.value.past.length) keeping.peek()?.putAside(copy.present);
  };

  const show = (shown: SheetDocument): void => {
    history.value = startHistory(shown);
  };

  return {
    document,
    keeping,
    readOnly,
    settings: computed(() => document.value.settings),
    message: computed(() => keeping.value?.message.value ?? null),
    undoName: computed(() => undoName(history.value)),
    redoName: computed(() => redoName(history.value)),
    formulationOf(batch) {
      const own = results.get(batch) ?? new WeakMap<SheetDocument['yours'], Formulation>();
      results.set(batch, own);
      const found = own.get(yours.value) ?? formulate(recipeOf(document.peek(), batch));
      own.set(yours.value, found);
      return found;
    },
    edit(act, shown = {}, kind = 'step') {
      if (edits === null) queue.value = [...queue.value, { act, shown, kind }];
      else act(edits);
    },
    waiting: computed(() => showWaiting(queue.value)),
    waits: computed(() => queue.value.length > 0),
    startEdits(make) {
      const made = make({ history: () => history.value, take });
      together(() => {
        const waited = queue.value;
        queue.value = [];
        edits = made;
        if (readOnly.peek()) makeAside(make, waited);
        else for (const { act } of waited) act(made);
      });
      return made;
    },
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

/** What will stand where once all of these are made: an undo takes back the step before it. */
function showWaiting(queue: readonly Waiting[]): Shown {
  const steps: Shown[] = [];
  const undone: Shown[] = [];
  let settings: Shown = {};
  for (const { shown, kind } of queue) {
    if (kind === 'setting') settings = { ...settings, ...shown };
    else if (kind === 'step') {
      steps.push(shown);
      undone.length = 0;
    } else {
      const [from, to] = kind === 'undo' ? [steps, undone] : [undone, steps];
      const moved = from.pop();
      if (moved !== undefined) to.push(moved);
    }
  }
  return Object.fromEntries([settings, ...steps].flatMap((shown) => Object.entries(shown)));
}
