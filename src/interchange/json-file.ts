import { correctionsOf } from '../batch/document/batch-corrections';
import type { SheetDocument } from '../batch/document/document';
import { withoutLists } from '../batch/document/sheet-lists';

/** The sheet as the text of a file, with all that is kept in it; what this page does not know of is kept too. */
export function writeCopy(document: SheetDocument): string {
  return `${JSON.stringify(document, null, 2)}\n`;
}

/**
 * The sheet with only these batches in it: with the figures they are worked out with and their lines of the log, and
 * the cartons that they name; without own foods, grains, prices, classes and blends. The same sheet where none of them is
 * there, since a sheet has a batch.
 */
export function onlyBatches(document: SheetDocument, ids: ReadonlySet<string>): SheetDocument {
  const batches = document.batches.filter(({ id }) => ids.has(id));
  if (batches.length === 0) return document;
  const named = new Set(batches.map(({ carton }) => carton));
  const cartons = (document.cartons ?? []).filter(({ name }) => named.has(name));
  const yours = Object.assign({}, ...batches.map((batch) => correctionsOf(document, batch)));
  const log = document.log.filter(({ batch }) => ids.has(batch));
  return { ...withoutLists(document), batches, yours, log, ...(cartons.length > 0 ? { cartons } : {}) };
}
