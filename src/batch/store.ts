import { computed, signal } from '@preact/signals';
import { type Formulation, formulate } from '../formula/formulate';
import type { ChoiceRowId, MeasuredRowId, NumericRowId, StockId } from '../formula/order';
import type { HeatStep, SweetenerPart } from '../formula/recipe';
import type { WayOut } from '../formula/ways-out';
import * as list from './batch-list';
import { type Batch, recipeOf, type Settings, type SheetDocument } from './document';
import * as edits from './edits';
import * as histories from './history';
import { changeSettings } from './settings';
import { stepNames } from './step-names';
import { stockUp, takeChanges } from './take-changes';

export interface StoreOptions {
  /** What to tell the cook from the start, such as that a saved sheet could not be opened. */
  readonly message?: string | null;
  /** Saves each document as it comes; gives what to tell the cook where it could not, else null. */
  readonly save?: (document: SheetDocument) => string | null;
}

export type Store = ReturnType<typeof createStore>;

/** The sheet while it is open: the document, its undo, its results as signals, and every edit as an action. */
export function createStore(initial: SheetDocument, options: StoreOptions = {}) {
  const history = signal(histories.startHistory(initial));
  const saving = signal<string | null>(null);
  const document = computed(() => history.value.present);
  const yours = computed(() => document.value.yours);
  // By batch and corrections, the two things a result depends on: an edit to one batch leaves the others' as they are.
  const results = new WeakMap<Batch, WeakMap<SheetDocument['yours'], Formulation>>();

  const take = (next: histories.History): void => {
    const before = history.value.present;
    history.value = next;
    if (next.present !== before) saving.value = options.save?.(next.present) ?? null;
  };
  const commit = (next: SheetDocument, step: string): void => take(histories.record(history.value, next, step));
  const now = (): SheetDocument => history.value.present;
  const find = (batchId: string): Batch | undefined => now().batches.find(({ id }) => id === batchId);
  /** Commits an edit that adds a batch, and gives the new batch's id; null where the sheet was full. */
  const commitNew = (next: SheetDocument, step: string): string | null => {
    const old = new Set(now().batches.map(({ id }) => id));
    commit(next, step);
    return next.batches.find(({ id }) => !old.has(id))?.id ?? null;
  };

  return {
    document,
    settings: computed(() => document.value.settings),
    message: computed(() => saving.value ?? options.message ?? null),
    undoName: computed(() => histories.undoName(history.value)),
    redoName: computed(() => histories.redoName(history.value)),

    /** The batch worked out; worked out once for as long as neither it nor the corrections change. */
    formulationOf(batch: Batch): Formulation {
      const own = results.get(batch) ?? new WeakMap<SheetDocument['yours'], Formulation>();
      results.set(batch, own);
      const found = own.get(yours.value) ?? formulate(recipeOf(document.peek(), batch));
      own.set(yours.value, found);
      return found;
    },

    undo: () => take(histories.undo(history.value)),
    redo: () => take(histories.redo(history.value)),
    /** Settings are no step: undo leaves them as they are. */
    changeSettings: (changes: Partial<Settings>) =>
      take(histories.replacePresent(history.value, changeSettings(now(), changes))),

    typeCell: (batchId: string, row: NumericRowId, text: string) =>
      commit(edits.typeCell(now(), batchId, row, text), stepNames.typeCell(row, text)),
    clearCell: (batchId: string, row: NumericRowId) =>
      commit(edits.clearCell(now(), batchId, row), stepNames.clearCell(row)),
    measureCell: (batchId: string, row: MeasuredRowId, text: string) =>
      commit(edits.measureCell(now(), batchId, row, text), stepNames.measureCell(row, text)),
    clearMeasured: (batchId: string, row: MeasuredRowId) =>
      commit(edits.clearMeasured(now(), batchId, row), stepNames.clearMeasured(row)),
    choose: (batchId: string, row: ChoiceRowId, id: string) =>
      commit(edits.choose(now(), batchId, row, id), stepNames.choose(row, id)),
    blendSweeteners: (batchId: string, parts: readonly SweetenerPart[]) =>
      commit(edits.blendSweeteners(now(), batchId, parts), stepNames.blendSweeteners(parts)),
    setUse: (batchId: string, row: 'sweetenerMass' | 'grainMass', use: 'onHand' | undefined) =>
      commit(edits.setUse(now(), batchId, row, use), stepNames.setUse(row, use)),
    takeWayOut: (batchId: string, { label, changes }: WayOut) => commit(takeChanges(now(), batchId, changes), label),
    stockUp: (batchId: string, stock: StockId, text: string) =>
      commit(stockUp(now(), batchId, stock, text), stepNames.stockUp(stock, text)),
    /** Takes a document that an edit of several cells at once has made, as one step. */
    takeEdit: (next: SheetDocument, step: string) => commit(next, step),
    setHeat: (batchId: string, heat: HeatStep | null) =>
      commit(edits.setHeat(now(), batchId, heat), stepNames.setHeat(heat)),

    correct: (key: string, value: number) =>
      commit(edits.correct(now(), key, value, 'typed'), stepNames.correct(key, value, now().settings.decimalComma)),
    keepMeasured: (key: string, value: number) =>
      commit(edits.keepMeasured(now(), key, value), stepNames.keepMeasured(key)),
    giveBack: (key: string) => commit(edits.giveBack(now(), key), stepNames.giveBack(key)),

    renameBatch: (batchId: string, name: string) =>
      commit(list.renameBatch(now(), batchId, name), stepNames.renameBatch(name)),
    addBatch: (after?: string) => commitNew(list.addBatch(now(), after), stepNames.addBatch()),
    copyBatch: (batchId: string) => commitNew(list.copyBatch(now(), batchId), stepNames.copyBatch(find(batchId))),
    moveBatch: (batchId: string, to: number) =>
      commit(list.moveBatch(now(), batchId, to), stepNames.moveBatch(find(batchId))),
    removeBatch: (batchId: string) => commit(list.removeBatch(now(), batchId), stepNames.removeBatch(find(batchId))),
  };
}
