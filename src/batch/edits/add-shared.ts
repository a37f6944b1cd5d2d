import { ownJarOf } from '../../formula/recipe/coefficients';
import { changeBatch } from '../document/change-batch';
import { type Batch, longestName, type SheetDocument } from '../document/document';
import { mostCorrections } from '../document/document-limits';
import { cleanName, cutText } from '../document/plain-text';
import { addBatch } from './batch-list';

/** A batch that somebody else sent, with the figures it was worked out with; its own jar’s are under `own.`. */
export interface SharedBatch {
  readonly batch: Batch;
  readonly yours: SheetDocument['yours'];
}

/** The sender’s figures that hold for other batches too, and of which there is none of yours. */
export function figuresToTake(document: SheetDocument, { yours }: SharedBatch): SheetDocument['yours'] {
  return Object.fromEntries(
    Object.entries(yours).filter(([key]) => !isShape(key) && !Object.hasOwn(document.yours, key)),
  );
}

/** The sender’s figures where yours is another, which stays. */
export function figuresToKeep(document: SheetDocument, { yours }: SharedBatch): readonly string[] {
  return Object.entries(yours).flatMap(([key, { value }]) => {
    const own = Object.hasOwn(document.yours, key) ? document.yours[key] : undefined;
    return isShape(key) || own === undefined || own.value === value ? [] : [key];
  });
}

/**
 * The document with the batch added after another under an id and a name of its own, and the shape of its own jar with
 * it. The sender’s other figures come along only if asked for, and never in place of yours. A sheet that can’t take it
 * stays as it is.
 */
export function addShared(
  document: SheetDocument,
  shared: SharedBatch,
  { withFigures = false, after }: { readonly withFigures?: boolean; readonly after?: string } = {},
): SheetDocument {
  const old = new Set(document.batches.map(({ id }) => id));
  const added = after === undefined ? addBatch(document) : addBatch(document, after);
  const id = added.batches.find((batch) => !old.has(batch.id))?.id;
  if (id === undefined) return document;
  const name = freeName(shared.batch.name, new Set(document.batches.map((batch) => batch.name)));
  const next = changeBatch(added, id, () => ({ ...shared.batch, id, name }));
  const shape = Object.entries(shared.yours)
    .filter(([key]) => isShape(key))
    .map(([key, value]) => [key.replace('own', ownJarOf(id)), value] as const);
  // Whatever shaped the jar of an earlier batch of this id is no shape of this one’s.
  const kept = Object.entries(next.yours).filter(([key]) => !key.startsWith(`${ownJarOf(id)}.`));
  const figures = withFigures ? figuresToTake(document, shared) : {};
  const yours = { ...Object.fromEntries(kept), ...Object.fromEntries(shape), ...figures };
  return Object.keys(yours).length > mostCorrections ? document : { ...next, yours };
}

function isShape(key: string): boolean {
  return key.startsWith('own.');
}

function freeName(name: string, taken: ReadonlySet<string>): string {
  const clean = cleanName(name);
  const own = clean === '' ? 'A batch' : clean;
  let free = own;
  for (let number = 1; taken.has(free); number += 1) {
    const tail = number === 1 ? ' (from link)' : ` (from link, ${number})`;
    free = `${cutText(own, longestName - tail.length)}${tail}`;
  }
  return free;
}
