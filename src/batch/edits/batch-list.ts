import { ownJarOf } from '../../formula/recipe/coefficients';
import { nameFor } from '../document/batch-name';
import { changeBatch } from '../document/change-batch';
import { startBatch } from '../document/demo';
import { type Batch, longestName, mostBatches, type SheetDocument } from '../document/document';
import { cleanName, cutText } from '../document/plain-text';
import { batchesInLists, listsOf } from '../document/sheet-lists';

/** Renames a batch. A name of which nothing can be seen changes nothing; one too long to be saved is cut. */
export function renameBatch(document: SheetDocument, batchId: string, name: string): SheetDocument {
  const kept = cutText(cleanName(name), longestName);
  if (kept === '') return document;
  return changeBatch(document, batchId, (batch) => (batch.name === kept ? batch : { ...batch, name: kept }));
}

/** Adds a fresh batch after another, or at the end. A sheet that is full stays as it is. */
export function addBatch(document: SheetDocument, after?: string): SheetDocument {
  return insertBatch(document, after, freshBatch(document));
}

/**
 * Adds a batch made of another's choices and cells, with the shape of its own jar, after that one and named after its
 * source. A full sheet stays as it is.
 */
export function addMade(document: SheetDocument, after: string, made: Omit<Batch, 'id' | 'name'>): SheetDocument {
  const id = nextBatchId(document);
  const name = nameFor(
    made.source,
    document.batches.map((one) => one.name),
  );
  return withShapeOf(after, id, document, insertBatch(document, after, { ...made, id, name }));
}

/** Adds a copy of a batch, with the shape of its own jar, after the batch itself. A full sheet stays as it is. */
export function copyBatch(document: SheetDocument, batchId: string): SheetDocument {
  const batch = document.batches.find(({ id }) => id === batchId);
  if (batch === undefined) return document;
  const names = new Set(document.batches.map(({ name }) => name));
  let name = withTail(batch.name, ', copy');
  for (let number = 2; names.has(name); number += 1) name = withTail(batch.name, `, copy ${number}`);
  const id = nextBatchId(document);
  return withShapeOf(batchId, id, document, insertBatch(document, batchId, { ...batch, id, name }));
}

/** The document after a batch was added, with the figures of another's own jar for it. */
function withShapeOf(of: string, id: string, document: SheetDocument, added: SheetDocument): SheetDocument {
  const shape = ownShape(document, of);
  if (added === document || shape.length === 0) return added;
  const copies = shape.map(([key, value]) => [key.replace(ownJarOf(of), ownJarOf(id)), value] as const);
  return { ...added, yours: { ...document.yours, ...Object.fromEntries(copies) } };
}

function freshBatch(document: SheetDocument): Batch {
  const batch = startBatch(nextBatchId(document), '');
  const name = nameFor(
    batch.source,
    document.batches.map((one) => one.name),
  );
  return { ...batch, name };
}

/** The corrections that belong to this batch’s own jar. */
function ownShape({ yours }: SheetDocument, batchId: string) {
  return Object.entries(yours).filter(([key]) => key.startsWith(`${ownJarOf(batchId)}.`));
}

function withTail(name: string, tail: string): string {
  return `${cutText(name, longestName - tail.length)}${tail}`;
}

function insertBatch(document: SheetDocument, after: string | undefined, batch: Batch): SheetDocument {
  const { batches } = document;
  if (batches.length >= mostBatches) return document;
  const place = batches.findIndex(({ id }) => id === after);
  return { ...document, batches: batches.toSpliced(place < 0 ? batches.length : place + 1, 0, batch) };
}

/** Puts a batch in another place, counted from 0; a place beyond the ends is the end. */
export function moveBatch(document: SheetDocument, batchId: string, to: number): SheetDocument {
  const { batches } = document;
  const from = batches.findIndex(({ id }) => id === batchId);
  const batch = batches[from];
  const place = Math.max(0, Math.min(batches.length - 1, Math.trunc(to)));
  if (batch === undefined || Number.isNaN(place) || place === from) return document;
  return { ...document, batches: batches.toSpliced(from, 1).toSpliced(place, 0, batch) };
}

/** Takes a batch and the shape of its own jar away; in place of the last one left comes a fresh one. */
export function removeBatch(document: SheetDocument, batchId: string): SheetDocument {
  const batches = document.batches.filter(({ id }) => id !== batchId);
  if (batches.length === document.batches.length) return document;
  const shape = ownShape(document, batchId);
  const yours = { ...document.yours };
  for (const [key] of shape) delete yours[key];
  const left = { ...document, yours, batches };
  return batches.length > 0 ? left : { ...left, batches: [freshBatch(left)] };
}

/**
 * An id that no batch here has, nor one that is gone and still in the log: b1, b2 …, by counting alone, so that the same
 * edits give the same document.
 */
function nextBatchId(document: SheetDocument): string {
  const { batches, log } = document;
  const ids = new Set([
    ...[...batches, ...batchesInLists(listsOf(document))].map(({ id }) => id),
    ...log.map(({ batch }) => batch),
  ]);
  let number = batches.length + 1;
  while (ids.has(`b${number}`)) number += 1;
  return `b${number}`;
}
