import { changeBatch } from '../document/change-batch';
import type { Batch, SheetDocument } from '../document/document';
import { longestText, mostExtras } from '../document/document-limits';
import { cleanName, cutText } from '../document/plain-text';
import { isSameData } from '../document/same-data';

const between = '; ';

/** What goes into the glass of a batch, as it is typed. */
export function writeExtras({ extras = [] }: Batch): string {
  return extras.join(between);
}

/**
 * Keeps what goes into the glass, a `;` between one and the next; a blank text leaves nothing. As many as a sheet holds
 * are kept, each cut to what is saved.
 */
export function typeExtras(document: SheetDocument, batchId: string, text: string): SheetDocument {
  const extras = text
    .split(between.trim())
    .map((one) => cutText(cleanName(one), longestText))
    .filter((one) => one !== '')
    .slice(0, mostExtras);
  return changeBatch(document, batchId, (batch) => {
    const { extras: old = [], ...rest } = batch;
    if (isSameData(old, extras)) return batch;
    return extras.length === 0 ? rest : { ...rest, extras };
  });
}

/** The name of the step for undo and redo. */
export function extrasStep(text: string): string {
  const told = cleanName(text);
  return told === '' ? 'Leave the glass plain' : `Flavour the glass with ${cutText(told, 40)}`;
}
