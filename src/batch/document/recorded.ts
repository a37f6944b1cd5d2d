import type { SheetDocument } from './document';

/** A document to go back (or on) to, and the name of the step that lies between it and its neighbour. */
export interface Recorded {
  readonly document: SheetDocument;
  readonly step: string;
}

/** Undo as a list of documents: `past` oldest first, `future` next first. Documents share what did not change. */
export interface History {
  readonly past: readonly Recorded[];
  readonly present: SheetDocument;
  readonly future: readonly Recorded[];
}

export function startHistory(document: SheetDocument): History {
  return { past: [], present: document, future: [] };
}

/** The name of the step that undo would take back; null where there is none. */
export function undoName(history: History): string | null {
  return history.past.at(-1)?.step ?? null;
}

/** The name of the step that redo would take again; null where there is none. */
export function redoName(history: History): string | null {
  return history.future[0]?.step ?? null;
}
