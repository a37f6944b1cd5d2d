import type { Change } from '../../formula/advice/typed-change';
import { isOnHandRow, type StockId, stockRows } from '../../formula/recipe/order';
import { changeBatch } from '../document/change-batch';
import type { SheetDocument } from '../document/document';
import { isBlank, readCell } from '../reading/read-cell';
import { choose, clearCell, clearMeasured, measureCell, setUse, typeCell } from './edits';

/** Takes the changes of a way out, in their order. */
export function takeChanges(document: SheetDocument, batchId: string, changes: readonly Change[]): SheetDocument {
  return changes.reduce((taken, change) => takeChange(taken, batchId, change), document);
}

function takeChange(document: SheetDocument, batchId: string, change: Change): SheetDocument {
  switch (change.do) {
    case 'clear':
      return clearCell(document, batchId, change.row);
    case 'measure':
      return measureCell(document, batchId, change.row, change.text);
    case 'unmeasure':
      return clearMeasured(document, batchId, change.row);
    case 'vessel':
      return choose(document, batchId, 'vessel', change.vessel);
    case 'forget':
      return stockUp(document, batchId, change.stock, '');
    case 'type': {
      const { row, text, use } = change;
      const typed = typeCell(document, batchId, row, text);
      const sizes = use === 'onHand' && isOnHandRow(row);
      return sizes ? setUse(typed, batchId, row, 'onHand') : typed;
    }
  }
}

/** Says how much of something is on hand, as typed; a blank text forgets it. It never resizes the batch by itself. */
export function stockUp(document: SheetDocument, batchId: string, stock: StockId, text: string): SheetDocument {
  return changeBatch(document, batchId, (batch) => {
    const { [stock]: old, ...others } = batch.onHand ?? {};
    if (isBlank(text)) return old === undefined ? batch : { ...batch, onHand: others };
    const cell = readCell(stockRows[stock], text, document.settings);
    return old?.text === cell.text ? batch : { ...batch, onHand: { ...others, [stock]: cell } };
  });
}
