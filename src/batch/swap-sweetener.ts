import type { SweetenerId } from '../reference/sweeteners';
import type { SheetDocument } from './document';
import { choose, typeCell } from './edits';

/**
 * Another sweetener in a batch at equal fermentable sugar: a typed weight of the old one is typed anew as `massText` of
 * the new one; where the weight follows from a rate it follows by itself.
 */
export function swapSweetener(
  document: SheetDocument,
  batchId: string,
  id: SweetenerId,
  massText: string,
): SheetDocument {
  const batch = document.batches.find((one) => one.id === batchId);
  const typed = batch?.given.some(({ row }) => row === 'sweetenerMass') === true;
  const chosen = choose(document, batchId, 'sweetener', id);
  return typed ? typeCell(chosen, batchId, 'sweetenerMass', massText) : chosen;
}
