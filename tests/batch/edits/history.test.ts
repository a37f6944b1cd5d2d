import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { renameBatch } from '../../../src/batch/edits/batch-list';
import { typeCell } from '../../../src/batch/edits/edits';
import {
  type History,
  record,
  redo,
  redoName,
  replacePresent,
  startHistory,
  undo,
  undoName,
} from '../../../src/batch/edits/history';
import { changeSettings } from '../../../src/batch/reading/settings';
import { anyEdit, first, freeze } from '../any-edit';

function rename(history: History, name: string): History {
  return record(history, renameBatch(history.present, 'b1', name), `Rename to ${name}`);
}

test('undo after any edits restores every document exactly, and redo returns to it', () => {
  fc.assert(
    fc.property(fc.array(anyEdit, { maxLength: 30 }), (edits) => {
      let history = startHistory(freeze(demo));
      const documents = [JSON.stringify(demo)];
      for (const edit of edits) {
        const edited = freeze(edit(history.present));
        if (edited !== history.present) documents.push(JSON.stringify(edited));
        history = record(history, edited, 'Edit');
      }
      expect(history.past.length).toBe(documents.length - 1);
      const last = history;
      for (const document of documents.toReversed()) {
        expect(JSON.stringify(history.present)).toBe(document);
        history = undo(history);
      }
      expect(history.present).toEqual(demo);
      for (const document of documents) {
        expect(JSON.stringify(history.present)).toBe(document);
        history = redo(history);
      }
      expect(history).toEqual(last);
    }),
  );
});

describe('names', () => {
  const history = rename(rename(startHistory(demo), 'one'), 'two');

  test('there is nothing to undo or redo at first', () => {
    const fresh = startHistory(demo);
    expect([undoName(fresh), redoName(fresh)]).toEqual([null, null]);
    expect(undo(fresh)).toBe(fresh);
    expect(redo(fresh)).toBe(fresh);
  });

  test('name the step that is next either way', () => {
    expect([undoName(history), redoName(history)]).toEqual(['Rename to two', null]);
    const back = undo(history);
    expect([undoName(back), redoName(back)]).toEqual(['Rename to one', 'Rename to two']);
  });

  test('a new step does away with what was undone', () => {
    expect(redoName(rename(undo(history), 'three'))).toBeNull();
  });
});

test('the same document is no step', () => {
  const history = startHistory(demo);
  expect(record(history, demo, 'Nothing')).toBe(history);
});

test('the oldest of more than 500 steps are let go', () => {
  let history = startHistory(demo);
  for (let step = 1; step <= 510; step += 1) history = rename(history, `name ${step}`);
  expect(history.past.length).toBe(500);
  for (let step = 1; step <= 510; step += 1) history = undo(history);
  expect(first(history.present).name).toBe('name 10');
});

test('settings are no step, and undo keeps those of now', () => {
  const typed = record(startHistory(demo), typeCell(demo, 'b1', 'waterRatio', '4,5'), 'Type');
  const renamed = rename(typed, 'one');
  const changed = replacePresent(renamed, changeSettings(renamed.present, { leads: 'us', decimalComma: true }));
  const back = undo(changed);
  expect(undoName(back)).toBe('Type');
  expect(back.present.settings).toEqual({ ...demo.settings, leads: 'us', decimalComma: true });
  expect(first(back.present)).toMatchObject({ name: 'Saturday almond', given: [{ text: '4,5', amount: 4.5 }] });
  expect(undo(back).present).toEqual({ ...demo, settings: back.present.settings });
});
