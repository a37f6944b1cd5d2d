import type { Logged, SheetDocument } from '../document/document';
import { mostLogged } from '../document/document-limits';
import type { SheetParts } from '../document/salvage';
import { writeSorted } from '../document/same-data';

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
  const moveTo = ({ batch, name }: Logged): string => {
    const id = moved.get(batch) ?? (knows(batch, name) ? batch : freshId());
    moved.set(batch, id);
    return id;
  };
  const room = Math.max(0, mostLogged - log.length);
  return {
    joined: [...log, ...added.slice(0, room).map((one) => ({ ...one, batch: moveTo(one) }))],
    noRoom: added.slice(room),
  };
}

function sayingOf({ batch: _, ...rest }: Logged): string {
  return writeSorted(rest);
}
