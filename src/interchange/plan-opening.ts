import type { SheetDocument } from '../batch/document';
import { changesBetween, type DocumentChange, describeLeftOut, settingsThatDiffer } from '../batch/document-changes';
import { isTaught } from '../batch/log-edits';
import { mergeInto, replaceWith } from '../batch/merge';
import type { SheetParts } from '../batch/salvage';

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
  /** Which settings of the file are others than yours. */
  readonly settings: readonly string[];
}

/** What merging a file into the sheet, or replacing the sheet by it, would change. */
export function planOpening(document: SheetDocument, parts: SheetParts): OpeningPlan {
  const { document: merged, leftOut } = mergeInto(document, parts);
  const replaced = replaceWith(document, parts);
  return {
    merged,
    byMerging: changesBetween(document, merged),
    replaced,
    byReplacing: changesBetween(document, replaced),
    there: parts.batches.length - (merged.batches.length - document.batches.length) - leftOut.batches.length,
    noRoom: describeLeftOut(leftOut),
    figuresKept: Object.entries(parts.yours).filter(([key, { value, how }]) => {
      const own = Object.hasOwn(document.yours, key) ? document.yours[key] : undefined;
      if (own === undefined || isTaught(key, how) || isTaught(key, own.how)) return false;
      return own.value !== value && merged.yours[key]?.value === own.value;
    }).length,
    settings: parts.settings === null ? [] : settingsThatDiffer(document.settings, parts.settings),
  };
}
