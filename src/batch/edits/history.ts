import type { SheetDocument } from '../document/document';
import type { History } from '../document/recorded';
import { withSettings } from '../reading/settings';

export { type History, redoName, startHistory, undoName } from '../document/recorded';

const mostSteps = 500;

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
