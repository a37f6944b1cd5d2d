import { jarOwnerOf } from '../batch/document/batch-corrections';
import type { SheetDocument } from '../batch/document/document';
import { listNames, listWords } from '../batch/document/kept-lists';
import type { ReadParts, SheetParts } from '../batch/document/salvage';
import { listsOf } from '../batch/document/sheet-lists';
import {
  changesBetween,
  type DocumentChange,
  describeLeftOut,
  settingsThatDiffer,
} from '../batch/edits/document-changes';
import { isTaught } from '../batch/edits/log-edits';
import { mergeInto, replaceWith } from '../batch/edits/merge';

/** What opening a file would do, either way; nothing is done by asking. */
export interface OpeningPlan {
  readonly merged: SheetDocument;
  readonly byMerging: readonly DocumentChange[];
  readonly replaced: SheetDocument;
  readonly byReplacing: readonly DocumentChange[];
  /** How many batches of the file are in the sheet as they are. */
  readonly there: number;
  /** What of the file the sheet has no room for in merging. */
  readonly noRoom: readonly DocumentChange[];
  /** Figures where the file has another than yours, which stays in merging. */
  readonly figuresKept: number;
  /** What of yours stays in replacing, since the file has nothing of it that can be read. */
  readonly stays: readonly string[];
  /** Which settings of the file are others than yours. */
  readonly settings: readonly string[];
}

/** What merging a file into the sheet, or replacing the sheet by it, would change. */
export function planOpening(document: SheetDocument, read: ReadParts): OpeningPlan {
  const { batches, log, yours, settings } = read;
  const parts: SheetParts = { batches, settings, log: log ?? [], yours: yours ?? {}, ...listsOf(read) };
  const { document: merged, leftOut } = mergeInto(document, parts);
  const replaced = replaceWith(document, withYours(document, read));
  return {
    merged,
    byMerging: changesBetween(document, merged),
    replaced,
    byReplacing: changesBetween(document, replaced),
    there: batches.length - (merged.batches.length - document.batches.length) - leftOut.batches.length,
    noRoom: describeLeftOut(leftOut),
    figuresKept: Object.entries(parts.yours).filter(([key, { value, how }]) => {
      const own = Object.hasOwn(document.yours, key) ? document.yours[key] : undefined;
      if (own === undefined || isTaught(key, how) || isTaught(key, own.how)) return false;
      return own.value !== value && merged.yours[key]?.value === own.value;
    }).length,
    stays: [
      ...(log === null ? ['the log'] : []),
      ...(yours === null ? ['your own figures'] : []),
      ...listNames.filter((list) => read[list] === null).map((list) => listWords[list].many),
    ],
    settings: settings === null ? [] : settingsThatDiffer(document.settings, settings),
  };
}

/** The parts of a file, those that could not be read taken from the document: what is unread is not empty. */
function withYours(document: SheetDocument, read: ReadParts): SheetParts {
  const { batches, settings, log, yours } = read;
  const own = listsOf(document);
  return {
    batches,
    settings,
    log: log ?? logBeside(document, batches),
    yours: yours ?? figuresBeside(document, batches),
    ownFoods: read.ownFoods ?? own.ownFoods,
    stocks: read.stocks ?? own.stocks,
    cartons: read.cartons ?? own.cartons,
    packages: read.packages ?? own.packages,
    classes: read.classes ?? own.classes,
    blends: read.blends ?? own.blends,
  };
}

/** Your log beside other batches: a line of a batch whose id is another’s there goes under an id of its own. */
function logBeside(document: SheetDocument, batches: SheetParts['batches']): SheetDocument['log'] {
  const isOther = otherFinder(document, batches);
  const taken = new Set([...batches.map(({ id }) => id), ...document.log.map(({ batch }) => batch)]);
  const moved = new Map<string, string>();
  const moveFrom = (id: string): string => {
    let number = batches.length;
    do number += 1;
    while (taken.has(`b${number}`));
    taken.add(`b${number}`);
    moved.set(id, `b${number}`);
    return `b${number}`;
  };
  return document.log.map((line) =>
    isOther(line.batch, line.name) ? { ...line, batch: moved.get(line.batch) ?? moveFrom(line.batch) } : line,
  );
}

/** Your figures beside other batches: the shape of a jar goes with its batch. */
function figuresBeside(document: SheetDocument, batches: SheetParts['batches']): SheetDocument['yours'] {
  const isOther = otherFinder(document, batches);
  return Object.fromEntries(
    Object.entries(document.yours).filter(([key]) => {
      const owner = jarOwnerOf(key);
      return owner === null || !isOther(owner, null);
    }),
  );
}

/** Tells whether an id means another batch there than it does here, where it may go by this name as well. */
function otherFinder({ batches: yours }: SheetDocument, batches: SheetParts['batches']) {
  const here = new Map(yours.map(({ id, name }) => [id, name]));
  const there = new Map(batches.map(({ id, name }) => [id, name]));
  return (id: string, name: string | null): boolean => {
    const other = there.get(id);
    return other !== undefined && other !== name && other !== here.get(id);
  };
}
