import type { Logged, SheetDocument } from '../document/document';
import { mostLogged } from '../document/document-limits';
import type { SheetParts } from '../document/salvage';
import { writeSorted } from '../document/same-data';
import { batchesInLists, listsOf } from '../document/sheet-lists';

/** Whether an id and a name in the file mean what the document has, or had, under that id. */
export type Knows = (id: string, name: string) => boolean;

/**
 * Tells whether what the file has under an id is the same batch as in the document, where only its log may be left of
 * it: no line here has the id, one has the name too, or both logs have a line of it alike.
 */
export function knowsFrom(document: SheetDocument, { log }: SheetParts): Knows {
  const theirs = new Set(log.map(writeSorted));
  const names = new Map<string, Set<string>>();
  const shared = new Set<string>();
  for (const { id, name } of document.batches) names.set(id, new Set([name]));
  for (const { id, name } of batchesInLists(listsOf(document))) {
    if (name !== null) names.set(id, (names.get(id) ?? new Set()).add(name));
  }
  for (const line of document.log) {
    names.set(line.batch, (names.get(line.batch) ?? new Set()).add(line.name));
    if (theirs.has(writeSorted(line))) shared.add(line.batch);
  }
  return (id, name) => shared.has(id) || (names.get(id)?.has(name) ?? true);
}

interface JoinedLog {
  readonly joined: readonly Logged[];
  /** Lines of the file, as they are there, that the sheet has no room for. */
  readonly noRoom: readonly Logged[];
  /** Under which id what the file has of a batch of this id and name goes here. */
  readonly moveTo: (named: Named) => string;
}

interface Named {
  readonly batch: string;
  /** Null where it is not known, and a batch that is not in the file is taken for the one of that id here. */
  readonly name: string | null;
}

/**
 * Two lines are the same where they say the same, under whatever id their batch goes here. A line whose batch is not in
 * the file goes under an id of its own where the document has another batch under that one.
 */
export function joinLog(
  log: readonly Logged[],
  theirs: readonly Logged[],
  idOf: ReadonlyMap<string, string>,
  knows: Knows,
  freshId: () => string,
): JoinedLog {
  const said = new Set(log.map(sayingOf));
  const added = theirs.filter((one) => {
    const saying = sayingOf(one);
    if (said.has(saying)) return false;
    said.add(saying);
    return true;
  });
  const moved = new Map(idOf);
  const moveTo = ({ batch, name }: Named): string => {
    if (name === null) return idOf.get(batch) ?? batch;
    const id = moved.get(batch) ?? (knows(batch, name) ? batch : freshId());
    moved.set(batch, id);
    return id;
  };
  const room = Math.max(0, mostLogged - log.length);
  return {
    joined: [...log, ...added.slice(0, room).map((one) => ({ ...one, batch: moveTo(one) }))],
    noRoom: added.slice(room),
    moveTo,
  };
}

function sayingOf({ batch: _, ...rest }: Logged): string {
  return writeSorted(rest);
}
