import { copyCell } from '../formula/copy-cell';
import { isRow } from '../formula/evaluate';
import type { Formulation } from '../formula/formulate';
import type { RowId } from '../formula/order';
import type { Batch, Settings } from './document';

/** A cell as it is copied: what was typed, as typed; else what it shows, in metric with its unit. */
export function copyText(batch: Batch, formulation: Formulation, row: RowId, settings: Settings): string {
  const typed = isRow(row) ? batch.given.find((cell) => cell.row === row)?.text : undefined;
  return (typed ?? copyCell(formulation, row, settings)).replaceAll(/[\t\r\n]/g, ' ');
}

/** Cells of some rows and batches as tab-separated text, a line a row, for any spreadsheet and for this sheet. */
export function copyRange(
  batches: readonly Batch[],
  rows: readonly RowId[],
  formulationOf: (batch: Batch) => Formulation,
  settings: Settings,
): string {
  const line = (row: RowId): string =>
    batches.map((batch) => copyText(batch, formulationOf(batch), row, settings)).join('\t');
  return rows.map(line).join('\n');
}
