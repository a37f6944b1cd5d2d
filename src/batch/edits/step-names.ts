import type { ChoiceRowId, MeasuredRowId, NumericRowId, StockId } from '../../formula/recipe/order';
import type { HeatStep, SweetenerPart } from '../../formula/recipe/recipe';
import { labelOf } from '../../formula/words/labels';
import { writeTrimmed } from '../../measure/write-quantity';
import { grains } from '../../reference/grains';
import { jars } from '../../reference/jars';
import { sources } from '../../reference/sources';
import { sweeteners } from '../../reference/sweeteners';
import type { Batch } from '../document/document';
import { isKeyOf } from '../document/table-keys';
import { isBlank } from '../reading/read-cell';
import { isOnlyMeasured } from './edits';
import { shorten } from './shorten';

/** The names of the steps for undo and redo, in plain words; one for each edit that can be undone. */
export const stepNames = {
  typeCell: (row: NumericRowId, text: string): string => {
    if (isOnlyMeasured(row)) return stepNames.measureCell(row, text);
    return isBlank(text) ? stepNames.clearCell(row) : `Type ${shorten(text)} for ${labelOf(row)}`;
  },
  clearCell: (row: NumericRowId) => `Clear ${labelOf(row)}`,
  clearCells: (batchIds: readonly string[], [row, ...more]: readonly NumericRowId[]) =>
    row !== undefined && more.length === 0 && batchIds.length === 1
      ? stepNames.clearCell(row)
      : 'Clear the selected cells',
  measureCell: (row: MeasuredRowId, text: string): string =>
    isBlank(text) ? stepNames.clearMeasured(row) : `Measure ${shorten(text)} for ${labelOf(row)}`,
  clearMeasured: (row: MeasuredRowId) => `Forget what was measured for ${labelOf(row)}`,
  choose: (row: ChoiceRowId, id: string) => `Choose ${chosenName(row, id)}`,
  blendSweeteners: (parts: readonly SweetenerPart[]) =>
    `Blend ${parts.map(({ id }) => sweeteners[id].name).join(' with ')}`,
  setUse: (row: NumericRowId, use: 'onHand' | undefined) =>
    use === 'onHand' ? `Size the batch from ${labelOf(row)}` : `No longer size the batch from ${labelOf(row)}`,
  stockUp: (stock: StockId, text: string) =>
    isBlank(text) ? `Forget the ${stock} on hand` : `Have ${shorten(text)} of ${stock} on hand`,
  setHeat: (heat: HeatStep | null) => (heat === null ? 'Leave out the heat step' : `Heat the ${heat.what}`),
  correct: (label: string, value: number, decimalComma: boolean) =>
    `Use ${writeTrimmed(value, places, decimalComma)} for ${label}`,
  ownLabel: () => 'Keep what the label of your own source says',
  keepMeasured: (label: string) => `Keep what was measured for ${label}`,
  giveBack: (label: string) => `Give back ${label}`,
  renameBatch: (name: string) => `Rename to ${shorten(name)}`,
  addBatch: () => 'Add a batch',
  copyBatch: (batch: Batch | undefined) => `Copy ${nameOf(batch)}`,
  moveBatch: (batch: Batch | undefined) => `Move ${nameOf(batch)}`,
  removeBatch: (batch: Batch | undefined) => `Remove ${nameOf(batch)}`,
};

const places = 4;

function chosenName(row: ChoiceRowId, id: string): string {
  const table: Readonly<Record<string, { readonly name: string }>> = choices[row];
  return isKeyOf(table, id) ? (table[id]?.name ?? id) : id;
}

const choices = { vessel: jars, source: sources, sweetener: sweeteners, grains };

function nameOf(batch: Batch | undefined): string {
  return batch === undefined ? 'a batch' : shorten(batch.name);
}
