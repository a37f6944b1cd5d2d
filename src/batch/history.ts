import type { SheetDocument } from './document';
import { withSettings } from './settings';

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

const mostSteps = 500;

export function startHistory(document: SheetDocument): History {
  return { past: [], present: document, future: [] };
}

/** Takes a step; the same document is no step. What was undone before it is gone, and so is the oldest of too many. */
export function record(history: History, document: SheetDocument, step: string): History {
  if (document === history.present) return history;
  const kept = history.past.length < mostSteps ? history.past : history.past.slice(1 - mostSteps);
  const past = [...kept, { document: history.present, step }];
  return { past, present: document, future: [] };
}

/** Changes the present without a step, for settings: how one looks at a sheet is nothing to undo. */
export function replacePresent(history: History, document: SheetDocument): History {
  return document === history.present ? history : { ...history, present: document };
}

/** Goes one step back, if there is one, keeping the settings of now. */
export function undo(history: History): History {
  const last = history.past.at(-1);
  if (last === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present: withSettings(last.document, history.present.settings),
    future: [{ document: history.present, step: last.step }, ...history.future],
  };
}

/** Takes the step again that was undone last, if there is one, keeping the settings of now. */
export function redo(history: History): History {
  const [next, ...future] = history.future;
  if (next === undefined) return history;
  return {
    past: [...history.past, { document: history.present, step: next.step }],
    present: withSettings(next.document, history.present.settings),
    future,
  };
}

/** The name of the step that undo would take back; null where there is none. */
export function undoName(history: History): string | null {
  return history.past.at(-1)?.step ?? null;
}

/** The name of the step that redo would take again; null where there is none. */
export function redoName(history: History): string | null {
  return history.future[0]?.step ?? null;
}
