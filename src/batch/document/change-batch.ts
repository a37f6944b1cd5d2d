import type { Batch, SheetDocument } from './document';

/** The document with one batch changed; the same document where that batch is not there or comes back as it was. */
export function changeBatch(document: SheetDocument, batchId: string, change: (batch: Batch) => Batch): SheetDocument {
  const at = document.batches.findIndex(({ id }) => id === batchId);
  const old = document.batches[at];
  if (old === undefined) return document;
  const changed = change(old);
  if (changed === old) return document;
  return { ...document, batches: document.batches.with(at, changed) };
}
