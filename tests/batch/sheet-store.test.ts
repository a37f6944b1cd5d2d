import { signal } from '@preact/signals';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../src/batch/demo';
import type { SheetDocument } from '../../src/batch/document';
import type { Keeping } from '../../src/batch/keeping';
import { createSheetStore, type EditKind, type SheetStore, type Shown } from '../../src/batch/sheet-store';
import { createStore, withEdits } from '../../src/batch/store';
import { first } from './any-edit';

type Act = readonly [act: Parameters<SheetStore['edit']>[0], shown?: Shown, kind?: EditKind];

const type = (row: 'sourceMass' | 'waterRatio', text: string): Act => [
  (edits) => edits.typeCell('b1', row, text),
  { [row]: text },
];
const undo: Act = [(edits) => edits.undo(), {}, 'undo'];
const redo: Act = [(edits) => edits.redo(), {}, 'redo'];
const leadWith = (leads: 'us' | 'metric'): Act => [(edits) => edits.changeSettings({ leads }), { leads }, 'setting'];

describe('edits before what makes them is there', () => {
  test('wait, and are made in their order when it comes', () => {
    const sheet = createSheetStore(demo);
    sheet.edit(...type('sourceMass', '200 g'));
    sheet.edit((edits) => edits.choose('b1', 'sweetener', 'honey'));
    expect(sheet.document.value).toBe(demo);
    expect([sheet.waits.value, sheet.undoName.value]).toEqual([true, null]);
    const store = withEdits(sheet);
    expect(first(store.document.value)).toMatchObject({ given: [{ text: '200 g' }], sweetener: [{ id: 'honey' }] });
    expect([store.waits.value, store.undoName.value]).toEqual([false, 'Choose Honey']);
    store.undo();
    expect(store.undoName.value).toBe('Type 200 g for Source, as bought');
  });

  test('are made once, and those after them at once', () => {
    const sheet = createSheetStore(demo);
    sheet.edit((edits) => edits.addBatch());
    expect(withEdits(sheet)).toBe(withEdits(withEdits(sheet)));
    expect(sheet.document.value.batches.length).toBe(2);
    sheet.edit((edits) => edits.addBatch());
    expect([sheet.document.value.batches.length, sheet.waits.value]).toEqual([3, false]);
  });

  test('come to the same as edits made at once, wherever among them it comes', () => {
    const act = fc.oneof(
      fc
        .tuple(fc.constantFrom('sourceMass', 'waterRatio'), fc.constantFrom('', '200 g', '5', '1,5'))
        .map(([row, text]) => type(row, text)),
      fc.constantFrom<Act>(
        [(edits) => edits.choose('b1', 'source', 'cashew')],
        [(edits) => edits.clearCells(['b1'], ['sourceMass', 'waterRatio'])],
        [(edits) => edits.copyBatch('b1')],
        [(edits) => edits.changeSettings({ decimalComma: true })],
        leadWith('us'),
        undo,
        redo,
      ),
    );
    fc.assert(
      fc.property(fc.array(act, { maxLength: 12 }), fc.nat(12), (acts, arrival) => {
        const atOnce = createStore(demo);
        const later = createSheetStore(demo);
        for (const [at, one] of acts.entries()) {
          atOnce.edit(...one);
          if (at === arrival) withEdits(later);
          later.edit(...one);
        }
        withEdits(later);
        expect(later.document.value).toEqual(atOnce.document.value);
        expect([later.undoName.value, later.redoName.value]).toEqual([atOnce.undoName.value, atOnce.redoName.value]);
      }),
    );
  });
});

describe('what waits is told for its place', () => {
  test.each<readonly [string, readonly Act[], Shown]>([
    ['nothing', [], {}],
    [
      'the text of each',
      [type('sourceMass', '200 g'), type('waterRatio', '5')],
      { sourceMass: '200 g', waterRatio: '5' },
    ],
    ['the last of two', [type('sourceMass', '200 g'), type('sourceMass', '210 g')], { sourceMass: '210 g' }],
    [
      'what was there before an undo',
      [type('sourceMass', '200 g'), type('sourceMass', ''), undo],
      { sourceMass: '200 g' },
    ],
    ['nothing that is undone', [type('sourceMass', '200 g'), undo, undo], {}],
    ['what is redone', [type('sourceMass', '200 g'), undo, redo], { sourceMass: '200 g' }],
    [
      'nothing of a step after which there is no redo',
      [type('waterRatio', '5'), undo, type('sourceMass', '9'), redo],
      { sourceMass: '9' },
    ],
    ['a setting, which undo leaves', [leadWith('us'), undo], { leads: 'us' }],
  ])('%s', (_, acts, expected) => {
    const sheet = createSheetStore(demo);
    for (const act of acts) sheet.edit(...act);
    expect(sheet.waiting.value).toEqual(expected);
    withEdits(sheet);
    expect(sheet.waiting.value).toEqual({});
  });
});

describe('while another window has the sheet', () => {
  function readIn(sheet: SheetStore) {
    const mayEdit = signal(false);
    const [saved, aside]: [SheetDocument[], SheetDocument[]] = [[], []];
    const keeping: Keeping = {
      how: signal('saved'),
      mayEdit,
      editedElsewhere: signal(true),
      message: signal(null),
      save: (one) => saved.push(one),
      putAside: (one) => aside.push(one),
      follow: () => {},
      editHere: () => Promise.resolve(),
      list: () => Promise.resolve({ states: [], aside: [] }),
      removeAside: () => Promise.resolve(),
    };
    sheet.keepIn({ document: demo, isFirst: true, keeping });
    return { saved, aside, mayEdit };
  }

  test('edits that waited are put aside together, and the sheet stays as it is', () => {
    const sheet = createSheetStore(demo);
    sheet.edit(...type('sourceMass', '200 g'));
    sheet.edit(...type('waterRatio', '5'));
    const { saved, aside } = readIn(sheet);
    const store = withEdits(sheet);
    expect(store.document.value).toBe(demo);
    expect(saved).toEqual([]);
    expect(aside.map((one) => first(one).given.map(({ text }) => text))).toEqual([['200 g', '5']]);
    expect([store.waits.value, store.waiting.value]).toEqual([false, {}]);
  });

  test('an edit is put aside, and an undo or a setting is not', () => {
    const store = createStore(demo);
    store.typeCell('b1', 'sourceMass', '200 g');
    const { aside, mayEdit } = readIn(store);
    aside.length = 0;
    mayEdit.value = true;
    store.typeCell('b1', 'waterRatio', '4');
    mayEdit.value = false;
    const before = store.document.value;
    store.undo();
    store.changeSettings({ leads: 'us' });
    expect(aside).toEqual([]);
    store.typeCell('b1', 'waterRatio', '5');
    expect(aside.map((one) => first(one).given.map(({ text }) => text))).toEqual([['5']]);
    expect(store.document.value).toBe(before);
  });
});
