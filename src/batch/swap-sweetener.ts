import type { SweetenerPart } from '../formula/recipe';
import type { SheetDocument } from './document';
import { blendSweeteners, typeCell } from './edits';

/**
 * Another sweetener, or a blend, in a batch at equal fermentable sugar: a typed weight of the old one is typed anew as
 * `massText` of the new; where the weight follows from a rate it follows by itself.
 */
export function swapSweetener(
  document: SheetDocument,
  batchId: string,
  parts: readonly SweetenerPart[],
  massText: string,
): SheetDocument {
  const batch = document.batches.find((one) => one.id === batchId);
  const typed = batch?.given.some(({ row }) => row === 'sweetenerMass') === true;
  const chosen = blendSweeteners(document, batchId, parts);
  return typed ? typeCell(chosen, batchId, 'sweetenerMass', massText) : chosen;
}
