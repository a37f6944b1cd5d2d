import type { WayOut } from '../../formula/advice/ways-out';
import type { ChoiceRowId, MeasuredRowId, NumericRowId, StockId } from '../../formula/recipe/order';
import type { HeatStep, SweetenerPart } from '../../formula/recipe/recipe';
import type { Batch, Settings, SheetDocument } from '../document/document';
import type { History } from '../document/recorded';
import * as list from '../edits/batch-list';
import * as edits from '../edits/edits';
import * as histories from '../edits/history';
import { stepNames } from '../edits/step-names';
import { chooseSweetener } from '../edits/swap-sweetener';
import { stockUp, takeChanges } from '../edits/take-changes';
import { changeSettings } from '../reading/settings';

export type SheetEdits = ReturnType<typeof sheetEdits>;

/** What the edits are made to: the history as it stands, and taking the next one in its place. */
export interface Held {
  readonly history: () => History;
  /** `isStep` where the next one has a step more, which must not be lost where it can’t be taken. */
  readonly take: (next: History, isStep?: boolean) => void;
}

/** Every edit of an open sheet as an action, each one step of its history. */
export function sheetEdits({ history, take }: Held) {
  const commit = (next: SheetDocument, step: string): void => take(histories.record(history(), next, step), true);
  const now = (): SheetDocument => history().present;
  const find = (batchId: string): Batch | undefined => now().batches.find(({ id }) => id === batchId);
  /** Commits an edit that adds a batch, and gives the new batch's id; null where the sheet was full. */
  const commitNew = (next: SheetDocument, step: string): string | null => {
    const old = new Set(now().batches.map(({ id }) => id));
    commit(next, step);
    return next.batches.find(({ id }) => !old.has(id))?.id ?? null;
  };

  return {
    undo: () => take(histories.undo(history())),
    redo: () => take(histories.redo(history())),
    /** Settings are no step: undo leaves them as they are. */
    changeSettings: (changes: Partial<Settings>) =>
      take(histories.replacePresent(history(), changeSettings(now(), changes))),

    typeCell: (batchId: string, row: NumericRowId, text: string) =>
      commit(edits.typeCell(now(), batchId, row, text), stepNames.typeCell(row, text)),
    clearCell: (batchId: string, row: NumericRowId) =>
      commit(edits.clearCell(now(), batchId, row), stepNames.clearCell(row)),
    /** Clears several rows of several batches as one step. */
    clearCells: (batchIds: readonly string[], rows: readonly NumericRowId[]) =>
      commit(edits.clearCells(now(), batchIds, rows), stepNames.clearCells(batchIds, rows)),
    measureCell: (batchId: string, row: MeasuredRowId, text: string) =>
      commit(edits.measureCell(now(), batchId, row, text), stepNames.measureCell(row, text)),
    clearMeasured: (batchId: string, row: MeasuredRowId) =>
      commit(edits.clearMeasured(now(), batchId, row), stepNames.clearMeasured(row)),
    choose: (batchId: string, row: ChoiceRowId, id: string) =>
      commit(
        row === 'sweetener' ? chooseSweetener(now(), batchId, id) : edits.choose(now(), batchId, row, id),
        stepNames.choose(row, id),
      ),
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

    correct: (key: string, value: number, label: string) =>
      commit(edits.correct(now(), key, value, 'typed'), stepNames.correct(label, value, now().settings.decimalComma)),
    keepMeasured: (key: string, value: number, label: string) =>
      commit(edits.keepMeasured(now(), key, value), stepNames.keepMeasured(label)),
    giveBack: (key: string, label: string) => commit(edits.giveBack(now(), key), stepNames.giveBack(label)),

    renameBatch: (batchId: string, name: string) =>
      commit(list.renameBatch(now(), batchId, name), stepNames.renameBatch(name)),
    addBatch: (after?: string) => commitNew(list.addBatch(now(), after), stepNames.addBatch()),
    copyBatch: (batchId: string) => commitNew(list.copyBatch(now(), batchId), stepNames.copyBatch(find(batchId))),
    moveBatch: (batchId: string, to: number) =>
      commit(list.moveBatch(now(), batchId, to), stepNames.moveBatch(find(batchId))),
    removeBatch: (batchId: string) => commit(list.removeBatch(now(), batchId), stepNames.removeBatch(find(batchId))),
  };
}
