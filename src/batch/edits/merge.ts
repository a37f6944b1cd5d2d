import { isOwnShape, jarOwnerOf, ownShapeOf, renameShape } from '../document/batch-corrections';
import type { Batch, SheetDocument } from '../document/document';
import { longestName, mostBatches, mostCorrections } from '../document/document-limits';
import { cutText } from '../document/plain-text';
import type { SheetParts } from '../document/salvage';
import { writeSorted } from '../document/same-data';
import { batchesInLists, filledLists, listsOf, withoutLists } from '../document/sheet-lists';
import { isTaught, learn } from './log-edits';
import { joinLists, type NoRoomInLists } from './merge-lists';
import { joinLog, type Knows, knowsFrom } from './merge-log';

/** What a sheet has no room for, though the file holds it. */
export interface LeftOut extends NoRoomInLists {
  /** Names. */
  readonly batches: readonly string[];
  readonly log: SheetDocument['log'];
  /** Keys of figures. */
  readonly yours: readonly string[];
}

interface Merged {
  readonly document: SheetDocument;
  readonly leftOut: LeftOut;
}

/**
 * The document joined with what a file holds. Nothing of the document is changed or taken away: a batch that is there
 * already, whatever its id, is left out; one of the same id that differs stands beside yours under a new id and name;
 * the log is joined without doubles, and so is what was done with a jar of grains; of figures, own foods, cartons and
 * prices yours stay and those you have none of come in; classes and blends that differ stand beside yours;
 * settings stay yours; a learned pace is what the joined log teaches. Joining the same file twice changes nothing more.
 * What is beyond the limits stays out, and is told of.
 */
export function mergeInto(document: SheetDocument, parts: SheetParts): Merged {
  const knows = knowsFrom(document, parts);
  const { batches, yours, idOf, freshId, noRoom } = joinBatches(document, parts, knows);
  const log = joinLog(document.log, parts.log, idOf, knows, freshId);
  const figures = joinFigures(yours, parts);
  const lists = joinLists(listsOf(document), parts, log.moveTo);
  const merged: SheetDocument = {
    ...document,
    batches,
    yours: figures.yours,
    log: log.joined,
    ...filledLists(lists.joined),
  };
  const leftOut = { batches: noRoom, log: log.noRoom, yours: figures.noRoom, ...lists.noRoom };
  return { document: taughtAnew(document, merged), leftOut };
}

/** A document made of another with what its log teaches; the other itself where nothing has changed. */
function taughtAnew(before: SheetDocument, after: SheetDocument): SheetDocument {
  return writeSorted(after) === writeSorted(before) ? before : learn(after);
}

/**
 * The document with everything in it replaced by what a file holds, settings apart, which stay yours; a learned pace is
 * what the file’s log teaches. A file without a readable batch replaces nothing.
 */
export function replaceWith(document: SheetDocument, parts: SheetParts): SheetDocument {
  if (parts.batches.length === 0) return document;
  const { batches, log, yours } = parts;
  const replaced: SheetDocument = {
    ...withoutLists(document),
    batches,
    log,
    yours: withoutStrayShapes(yours, new Set(batches.map(({ id }) => id))),
    ...filledLists(parts),
  };
  return taughtAnew(document, replaced);
}

interface JoinedBatches {
  readonly batches: readonly Batch[];
  /** The document’s own figures with the shapes of the jars that came in. */
  readonly yours: SheetDocument['yours'];
  /** Under which id each batch of the file is found in the joined document. */
  readonly idOf: ReadonlyMap<string, string>;
  /** An id that is found nowhere, and is not given twice. */
  readonly freshId: () => string;
  /** The names of those there was no room for. */
  readonly noRoom: readonly string[];
}

function joinBatches(document: SheetDocument, parts: SheetParts, knows: Knows): JoinedBatches {
  const batches = [...document.batches];
  const figures = { ...document.yours };
  let count = Object.keys(figures).length;
  const shapeOf = shapesIn(document.yours);
  const theirShapeOf = shapesIn(parts.yours);
  const names = new Set(batches.map(({ name }) => name));
  const ids = new Set(batches.map(({ id }) => id));
  // The shape of a jar whose batch is gone would shape the jar of a batch that came in under its id.
  const taken = new Set([...ids, ...Object.keys(figures).map(jarOwnerOf)]);
  // Nor may one that is only in a log or a list be given anew: its lines would be those of another batch.
  const theirs = new Set([
    ...parts.batches.map(({ id }) => id),
    ...[...document.log, ...parts.log].map(({ batch }) => batch),
    ...[...batchesInLists(listsOf(document)), ...batchesInLists(parts)].map(({ id }) => id),
  ]);
  const idOf = new Map<string, string>();
  const noRoom: string[] = [];
  const there = new Map<string, string[]>();
  for (const batch of batches) {
    const content = contentOf(batch, shapeOf(batch.id));
    there.set(content, [...(there.get(content) ?? []), batch.id]);
  }
  let number = batches.length;
  const freshId = (): string => {
    do number += 1;
    while (taken.has(`b${number}`) || theirs.has(`b${number}`));
    return `b${number}`;
  };
  for (const batch of parts.batches) {
    const alike = there.get(contentOf(batch, theirShapeOf(batch.id))) ?? [];
    const same = alike.includes(batch.id) ? batch.id : alike[0];
    if (same !== undefined) {
      alike.splice(alike.indexOf(same), 1);
      idOf.set(batch.id, same);
      continue;
    }
    const shape = theirShapeOf(batch.id);
    const added = Object.keys(shape).length;
    if (batches.length >= mostBatches || count + added > mostCorrections) {
      noRoom.push(batch.name);
      continue;
    }
    const id = taken.has(batch.id) || !knows(batch.id, batch.name) ? freshId() : batch.id;
    const name = ids.has(batch.id) ? nameFromFile(batch.name, names) : batch.name;
    batches.push({ ...batch, id, name });
    taken.add(id);
    ids.add(id);
    names.add(name);
    idOf.set(batch.id, id);
    Object.assign(figures, renameShape(shape, batch.id, id));
    count += added;
  }
  return { batches, yours: figures, idOf, freshId, noRoom };
}

const tail = / \(from file(?:, \d+)?\)$/;
const longestTail = 20;

/** All that makes a batch what it is: everything but its id, and the shape of its own jar; so joining again finds it. */
function contentOf({ id, name, ...rest }: Batch, shape: SheetDocument['yours']): string {
  const own = cutText(name.replace(tail, ''), longestName - longestTail);
  return writeSorted([own, rest, renameShape(shape, id, 'x')]);
}

/** Finds the shape of a batch’s own jar; all other figures are looked through once, for any number of batches. */
function shapesIn(yours: SheetDocument['yours']): (batchId: string) => SheetDocument['yours'] {
  const shapes = Object.fromEntries(Object.entries(yours).filter(([key]) => isOwnShape(key)));
  return (batchId) => ownShapeOf(shapes, batchId);
}

function nameFromFile(name: string, taken: ReadonlySet<string>): string {
  const own = cutText(name.replace(tail, ''), longestName - longestTail);
  let free = `${own} (from file)`;
  for (let number = 2; taken.has(free); number += 1) free = `${own} (from file, ${number})`;
  return free;
}

function joinFigures(yours: SheetDocument['yours'], parts: SheetParts) {
  const room = Math.max(0, mostCorrections - Object.keys(yours).length);
  const added = Object.entries(parts.yours).filter(
    ([key, { how }]) => !isOwnShape(key) && !isTaught(key, how) && !Object.hasOwn(yours, key),
  );
  return {
    yours: { ...yours, ...Object.fromEntries(added.slice(0, room)) },
    noRoom: added.slice(room).map(([key]) => key),
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
