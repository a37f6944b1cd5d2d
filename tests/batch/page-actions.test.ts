import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { SheetDocument } from '../../src/batch/document/document';
import { openText } from '../../src/batch/keeping/open-saved';
import { withSettings } from '../../src/batch/reading/settings';
import { createStore } from '../../src/batch/store/store';
import { describeProblem } from '../../src/formula/words/words';
import { type Action, anyAction, firstSheet } from '../page-actions';

// The long form: `ACTIONS=5000 FRESH=1 npx vitest run tests/batch/page-actions.test.ts`.
const numRuns = Number(process.env.ACTIONS ?? 150);
const sequences = fc.array(anyAction, { minLength: 10, maxLength: 40 });

/** Does each action, and gives all the documents it came by. */
function play(actions: readonly Action[]) {
  const store = createStore(firstSheet);
  const documents: SheetDocument[] = [];
  for (const { act } of actions) {
    act(store);
    documents.push(store.document.peek());
    for (const batch of store.document.peek().batches) store.formulationOf(batch);
  }
  return { store, documents };
}

describe('whatever is done to a sheet, in any order', () => {
  test('every number is one, and every problem has its sentence', () => {
    fc.assert(
      fc.property(sequences, (actions) => {
        const { store } = play(actions);
        const { batches, settings } = store.document.peek();
        for (const batch of batches) {
          for (const { id, value, range, problems } of Object.values(store.formulationOf(batch).rows)) {
            const numbers = [value, range?.low, range?.high].filter((one) => typeof one === 'number');
            for (const number of numbers) expect(Number.isFinite(number), id).toBe(true);
            for (const problem of problems)
              expect(describeProblem(problem, settings), problem.code).toMatch(
                /^(?!.*(NaN|Infinity|undefined|–\s*\(–\))).+/s,
              );
          }
        }
      }),
      { numRuns },
    );
  });

  test('undoing it all gives the first sheet again, and redoing it all the last, exactly', () => {
    fc.assert(
      fc.property(sequences, (actions) => {
        const { store } = play(actions);
        const last = store.document.peek();
        let steps = 0;
        while (store.redoName.peek() !== null) store.redo();
        const newest = store.document.peek();
        while (store.undoName.peek() !== null) {
          store.undo();
          steps += 1;
        }
        expect(store.document.peek()).toEqual(withSettings(firstSheet, last.settings));
        for (let step = 0; step < steps; step += 1) store.redo();
        expect(store.document.peek()).toEqual(newest);
      }),
      { numRuns },
    );
  });

  test('each edit is one step, which one undo takes back exactly', () => {
    fc.assert(
      fc.property(sequences, anyAction, (actions, { act }) => {
        const { store } = play(actions);
        const before = store.document.peek();
        const kept = JSON.stringify(before);
        act(store);
        const after = store.document.peek();
        if (after === before || after.settings !== before.settings || store.redoName.peek() !== null) return;
        store.undo();
        expect(JSON.stringify(store.document.peek())).toBe(kept);
        store.redo();
        expect(store.document.peek()).toEqual(after);
      }),
      { numRuns },
    );
  });

  test('what is saved opens again as the very same sheet', () => {
    fc.assert(
      fc.property(sequences, (actions) => {
        const { documents } = play(actions);
        for (const document of documents) {
          const saved = JSON.stringify(document);
          const opened = openText(saved);
          expect(opened.is).toBe('good');
          if (opened.is === 'good') expect(opened.document).toEqual(document);
          expect(JSON.stringify(opened.is === 'good' ? opened.document : null)).toBe(saved);
        }
      }),
      { numRuns },
    );
  });
});
