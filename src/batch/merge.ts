import { isOwnShape, jarOwnerOf, ownShapeOf, renameShape } from './batch-corrections';
import type { Batch, SheetDocument } from './document';
import { longestName, mostBatches, mostCorrections, mostOwnFoods } from './document-limits';
import { joinLog, type Knows, knowsFrom } from './merge-log';
import type { SheetParts } from './salvage';
import { writeSorted } from './same-data';

/**
 * The document joined with what a file holds. Nothing of the document is changed or taken away: a batch that is there
 * already, whatever its id, is left out; one of the same id that differs stands beside yours under a new id and name;
 * the log is joined without doubles; of figures, own foods and prices yours stay and those you have none of come in;
 * settings stay yours. Joining the same file twice changes nothing more. What is beyond the limits stays out.
 */
export function mergeInto(document: SheetDocument, parts: SheetParts): SheetDocument {
  const knows = knowsFrom(document, parts);
  const { batches, yours, idOf, freshId } = joinBatches(document, parts, knows);
  const log = joinLog(document.log, parts.log, idOf, knows, freshId);
  const next: SheetDocument = { ...document, batches, yours: joinFigures(yours, parts), log };
  const merged = { ...next, ...joinLarder(document, parts) };
  return writeSorted(merged) === writeSorted(document) ? document : merged;
}

/**
 * The document with everything in it replaced by what a file holds, settings apart, which stay yours. A file without a
 * readable batch replaces nothing.
 */
export function replaceWith(document: SheetDocument, parts: SheetParts): SheetDocument {
  if (parts.batches.length === 0) return document;
  const { ownFoods: _, prices: __, ...rest } = document;
  const { batches, log, yours, ownFoods, prices } = parts;
  const replaced: SheetDocument = {
    ...rest,
    batches,
    log,
    yours: withoutStrayShapes(yours, new Set(batches.map(({ id }) => id))),
    ...(ownFoods.length > 0 ? { ownFoods } : {}),
    ...(Object.keys(prices).length > 0 ? { prices } : {}),
  };
  return writeSorted(replaced) === writeSorted(document) ? document : replaced;
}

interface JoinedBatches {
  readonly batches: readonly Batch[];
  /** The document’s own figures with the shapes of the jars that came in. */
  readonly yours: SheetDocument['yours'];
  /** Under which id each batch of the file is found in the joined document. */
  readonly idOf: ReadonlyMap<string, string>;
  /** An id that is found nowhere, and is not given twice. */
  readonly freshId: () => string;
}

function joinBatches(document: SheetDocument, parts: SheetParts, knows: Knows): JoinedBatches {
  const batches = [...document.batches];
  let { yours } = document;
  const names = new Set(batches.map(({ name }) => name));
  const ids = new Set(batches.map(({ id }) => id));
  // The shape of a jar whose batch is gone would shape the jar of a batch that came in under its id.
  const taken = new Set([...ids, ...Object.keys(yours).map(jarOwnerOf)]);
  // Nor may one that is only in a log be given anew: its lines would be those of another batch.
  const theirs = new Set([
    ...parts.batches.map(({ id }) => id),
    ...[...document.log, ...parts.log].map(({ batch }) => batch),
  ]);
  const idOf = new Map<string, string>();
  const there = new Map<string, string[]>();
  for (const batch of batches) {
    const content = contentOf(batch, yours);
    there.set(content, [...(there.get(content) ?? []), batch.id]);
  }
  let number = batches.length;
  const freshId = (): string => {
    do number += 1;
    while (taken.has(`b${number}`) || theirs.has(`b${number}`));
    return `b${number}`;
  };
  for (const batch of parts.batches) {
    const alike = there.get(contentOf(batch, parts.yours)) ?? [];
    const same = alike.includes(batch.id) ? batch.id : alike[0];
    if (same !== undefined) {
      alike.splice(alike.indexOf(same), 1);
      idOf.set(batch.id, same);
      continue;
    }
    const shape = ownShapeOf(parts.yours, batch.id);
    const figures = Object.keys(yours).length + Object.keys(shape).length;
    if (batches.length >= mostBatches || figures > mostCorrections) continue;
    const id = taken.has(batch.id) || !knows(batch.id, batch.name) ? freshId() : batch.id;
    const name = ids.has(batch.id) ? nameFromFile(batch.name, names) : batch.name;
    batches.push({ ...batch, id, name });
    taken.add(id);
    ids.add(id);
    names.add(name);
    idOf.set(batch.id, id);
    yours = { ...yours, ...renameShape(shape, batch.id, id) };
  }
  return { batches, yours, idOf, freshId };
}

const tail = / \(from file(?:, \d+)?\)$/;
const longestTail = 20;

/** All that makes a batch what it is: everything but its id, and the shape of its own jar; so joining again finds it. */
function contentOf({ id, name, ...rest }: Batch, yours: SheetDocument['yours']): string {
  const own = name.replace(tail, '').slice(0, longestName - longestTail);
  return writeSorted([own, rest, renameShape(ownShapeOf(yours, id), id, 'x')]);
}

function nameFromFile(name: string, taken: ReadonlySet<string>): string {
  const own = name.replace(tail, '').slice(0, longestName - longestTail);
  let free = `${own} (from file)`;
  for (let number = 2; taken.has(free); number += 1) free = `${own} (from file, ${number})`;
  return free;
}

function joinFigures(yours: SheetDocument['yours'], parts: SheetParts): SheetDocument['yours'] {
  const room = Math.max(0, mostCorrections - Object.keys(yours).length);
  const added = Object.entries(parts.yours).filter(([key]) => !isOwnShape(key) && !Object.hasOwn(yours, key));
  return { ...yours, ...Object.fromEntries(added.slice(0, room)) };
}

function joinLarder(document: SheetDocument, parts: SheetParts): Pick<SheetDocument, 'ownFoods' | 'prices'> {
  const { ownFoods = [], prices = {} } = document;
  const added = parts.ownFoods.filter(({ name }) => ownFoods.every((food) => food.name !== name));
  const allFoods = [...ownFoods, ...added].slice(0, mostOwnFoods);
  const allPrices = { ...parts.prices, ...prices };
  return {
    ...(allFoods.length > 0 ? { ownFoods: allFoods } : {}),
    ...(Object.keys(allPrices).length > 0 ? { prices: allPrices } : {}),
  };
}

/** A shape of a jar whose batch is not there would one day shape the jar of another batch of that id. */
function withoutStrayShapes(yours: SheetDocument['yours'], ids: ReadonlySet<string>): SheetDocument['yours'] {
  return Object.fromEntries(
    Object.entries(yours).filter(([key]) => {
      const owner = jarOwnerOf(key);
      return owner === null || ids.has(owner);
    }),
  );
}
