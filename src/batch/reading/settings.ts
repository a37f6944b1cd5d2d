import { measuredRows, type StockId, stockIds, stockRows } from '../../formula/recipe/order';
import type { Batch, Cell, Settings, SheetDocument } from '../document/document';
import { readCell } from './read-cell';

/** Changes how this cook measures. Amounts already read stay as they were: only how they are written changes. */
export function changeSettings(document: SheetDocument, changes: Partial<Settings>): SheetDocument {
  return withSettings(document, { ...document.settings, ...changes });
}

/**
 * The document with these settings, and the texts that could not be read tried once more: `1,250` may be plain now. What
 * was read stays, so that switching a cup or the leading unit never alters a recipe.
 */
export function withSettings(document: SheetDocument, settings: Settings): SheetDocument {
  if (isSame(document.settings, settings)) return document;
  return { ...document, settings, batches: document.batches.map((batch) => readAgain(batch, settings)) };
}

function isSame(one: Settings, other: Settings): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function readAgain(batch: Batch, settings: Settings): Batch {
  const { onHand: stocks } = batch;
  const cells = [...batch.given, ...Object.values(batch.measured), ...Object.values(stocks ?? {})];
  if (cells.every(({ amount }) => amount !== null)) return batch;
  const measured: { -readonly [R in keyof Batch['measured']]: Batch['measured'][R] } = { ...batch.measured };
  for (const row of measuredRows) {
    const cell = measured[row];
    if (cell?.amount === null) measured[row] = { ...cell, ...readCell(row, cell.text, settings) };
  }
  const given = batch.given.map((cell) =>
    cell.amount === null ? { ...cell, ...readCell(cell.row, cell.text, settings) } : cell,
  );
  if (stocks === undefined) return { ...batch, given, measured };
  const onHand: { -readonly [S in StockId]?: Cell } = { ...stocks };
  for (const stock of stockIds) {
    const cell = stocks[stock];
    if (cell?.amount === null) onHand[stock] = { ...cell, ...readCell(stockRows[stock], cell.text, settings) };
  }
  return { ...batch, given, measured, onHand };
}
