import { blendMass } from '../../formula/advice/blend-mass';
import { formulate } from '../../formula/engine/formulate';
import type { SweetenerPart } from '../../formula/recipe/recipe';
import { writeTrimmed } from '../../measure/write-quantity';
import { type Batch, recipeOf, type SheetDocument } from '../document/document';
import type { History } from '../document/recorded';
import { blendSweeteners, choose, typeCell } from './edits';

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

const places = 1;

/**
 * Chooses another sweetener in a batch and keeps its fermentable sugar: a typed weight is typed anew in the other. What
 * is on hand stays as it is, as does a weight that no other can stand in for.
 */
export function chooseSweetener(document: SheetDocument, batchId: string, id: string): SheetDocument {
  const chosen = choose(document, batchId, 'sweetener', id);
  const [before, after] = [document, chosen].map(({ batches }) => batches.find((one) => one.id === batchId));
  const typed = before === undefined ? undefined : weightOf(before);
  if (before === undefined || after === undefined || before === after || typed === undefined) return chosen;
  const mass = blendMass(after.sweetener, formulate(recipeOf(document, before)));
  if (mass === null || !(mass > 0)) return chosen;
  return typeCell(chosen, batchId, 'sweetenerMass', `${writeTrimmed(mass, places, document.settings.decimalComma)} g`);
}

function weightOf({ given }: Batch) {
  return given.find(({ row, use }) => row === 'sweetenerMass' && use === undefined);
}

/** A sweetener that was just chosen in place of another; null where the last step did something else. */
export interface JustSwapped {
  readonly batch: string;
  /** The batch as it was with the one before. */
  readonly before: Batch;
  /** What was typed for the one before; null where its weight was worked out. */
  readonly text: string | null;
}

/** What the last step swapped, so that the page can say that the sugar is the same and offer the other choice. */
export function justSwapped({ past, present }: History): JustSwapped | null {
  const last = past.at(-1);
  if (last === undefined) return null;
  for (const batch of present.batches) {
    const before = last.document.batches.find(({ id }) => id === batch.id);
    if (before === undefined || before === batch || before.sweetener === batch.sweetener) continue;
    return { batch: batch.id, before, text: weightOf(before)?.text ?? null };
  }
  return null;
}
