import { isRow } from '../../formula/engine/evaluate';
import type { Formulation } from '../../formula/engine/formulate';
import type { RowId } from '../../formula/recipe/order';
import { copyCell } from '../../formula/words/copy-cell';
import type { Batch, Settings } from '../document/document';

/**
 * A cell as it is copied: what was typed, as typed, in one line; else what it comes to, in metric with its unit, unrounded. A byte order
 * mark would be lost on the way through a clipboard.
 */
export function copyText(batch: Batch, formulation: Formulation, row: RowId, settings: Settings): string {
  const given = isRow(row) ? batch.given.find((cell) => cell.row === row) : undefined;
  // A number typed without its unit means another amount where another unit leads.
  const typed = given !== undefined && (given.amount === null || /\p{L}|%/u.test(given.text)) ? given.text : undefined;
  return (typed ?? copyCell(formulation, row, settings)).replaceAll(/[\t\r\n\uFEFF]/g, ' ');
}

/** Cells of some rows and batches as tab-separated text, a line a row, for any spreadsheet and for this sheet. */
export function copyRange(
  batches: readonly Batch[],
  rows: readonly RowId[],
  formulationOf: (batch: Batch) => Formulation,
  settings: Settings,
): string {
  const line = (row: RowId): string =>
    batches.map((batch) => quoteCell(copyText(batch, formulationOf(batch), row, settings))).join('\t');
  return rows.map(line).join('\n');
}

/** A quote in a cell would else be taken for the quotes around one. */
function quoteCell(text: string): string {
  return text.includes('"') ? `"${text.replaceAll('"', '""')}"` : text;
}
