import { effect, signal } from '@preact/signals';
import { describe, expect, test } from 'vitest';
import { demo, startBatch } from '../../../src/batch/document/demo';
import type { Batch, SheetDocument } from '../../../src/batch/document/document';
import type { Keeping } from '../../../src/batch/keeping/keeping';
import { createStore, type Store } from '../../../src/batch/store/store';
import { first } from '../any-edit';

function batchAt(store: Store, place: number): Batch {
  const batch = store.document.value.batches[place];
  if (batch === undefined) throw new Error('no batch there');
  return batch;
}

describe('steps', () => {
  test('are named, undone and redone', () => {
    const store = createStore(demo);
    expect([store.undoName.value, store.redoName.value]).toEqual([null, null]);
    store.typeCell('b1', 'sourceMass', '300 g');
    store.choose('b1', 'sweetener', 'honey');
    expect(store.undoName.value).toBe('Choose Honey');
    store.undo();
    expect([store.undoName.value, store.redoName.value]).toEqual(['Type 300 g for Weight as bought', 'Choose Honey']);
    store.undo();
    expect(store.document.value).toEqual(demo);
    store.redo();
    expect(first(store.document.value).given).toMatchObject([{ text: '300 g' }]);
  });

  test('are not taken where nothing changes', () => {
    const store = createStore(demo);
    store.typeCell('b1', 'sourceMass', '');
    store.choose('b1', 'source', 'almond');
    expect(store.undoName.value).toBeNull();
  });

  test('every action is one step, under its own name', () => {
    const store = createStore(demo);
    const names = [
      () => store.typeCell('b1', 'grainMass', '55 g'),
      () => store.setUse('b1', 'grainMass', 'onHand'),
      () => store.clearCell('b1', 'grainMass'),
      () => store.measureCell('b1', 'milkVolume', '700 mL'),
      () => store.clearMeasured('b1', 'milkVolume'),
      () => store.blendSweeteners('b1', [{ id: 'honey', share: 1 }]),
      () => store.setHeat('b1', { what: 'milk', temperature: 80, minutes: 5 }),
      () => store.correct('almond.uptake', 0.7, 'Water taken up in soaking'),
      () => store.keepMeasured('almond.uptake', 0.8, 'Water taken up in soaking'),
      () => store.giveBack('almond.uptake', 'Water taken up in soaking'),
      () => store.renameBatch('b1', 'Sunday'),
      () => store.addBatch(),
      () => store.copyBatch('b1'),
      () => store.moveBatch('b1', 2),
      () => store.removeBatch('b1'),
    ].map((act) => {
      act();
      return store.undoName.value;
    });
    expect(names).toEqual([
      'Type 55 g for Culture to add',
      'Size the batch from Culture to add',
      'Clear Culture to add',
      'Measure 700 mL for Milk after straining',
      'Forget what was measured for Milk after straining',
      'Blend Honey',
      'Heat the milk',
      'Use 0.7 for Water taken up in soaking',
      'Keep what was measured for Water taken up in soaking',
      'Give back Water taken up in soaking',
      'Rename to Sunday',
      'Add a batch',
      'Copy Sunday',
      'Move Sunday',
      'Remove Sunday',
    ]);
    while (store.undoName.value !== null) store.undo();
    expect(store.document.value).toEqual(demo);
  });

  test('settings are none', () => {
    const store = createStore(demo);
    store.typeCell('b1', 'sourceMass', '300 g');
    store.changeSettings({ leads: 'us' });
    expect(store.settings.value.leads).toBe('us');
    store.undo();
    expect(store.settings.value.leads).toBe('us');
    expect(store.undoName.value).toBeNull();
  });
});

test('a new batch’s id is given, so that the page can go there', () => {
  const store = createStore(demo);
  expect([store.addBatch(), store.copyBatch('b1'), store.copyBatch('b9')]).toEqual(['b2', 'b3', null]);
});

describe('formulationOf', () => {
  test('works out a batch once, and the others not at all when one is edited', () => {
    const store = createStore(demo);
    store.addBatch();
    const [one, two] = [store.formulationOf(batchAt(store, 0)), store.formulationOf(batchAt(store, 1))];
    store.typeCell('b2', 'sourceMass', '300 g');
    expect(store.formulationOf(batchAt(store, 0))).toBe(one);
    expect(store.formulationOf(batchAt(store, 1))).not.toBe(two);
    expect(store.formulationOf(batchAt(store, 1)).rows.sourceMass.value).toBe(300);
    store.undo();
    expect(store.formulationOf(batchAt(store, 1))).toBe(two);
  });

  test('follows a correction', () => {
    const store = createStore(demo);
    const seen: unknown[] = [];
    const stop = effect(() => {
      seen.push(store.formulationOf(batchAt(store, 0)).rows.servingSize.value);
    });
    store.correct('kitchen.servingUsual', 300, 'Usual glass');
    store.giveBack('kitchen.servingUsual', 'Usual glass');
    stop();
    expect(seen).toEqual([250, 300, 250]);
  });

  test('is not worked out anew for settings', () => {
    const store = createStore(demo);
    const before = store.formulationOf(batchAt(store, 0));
    store.changeSettings({ cups: 'metric' });
    expect(store.formulationOf(batchAt(store, 0))).toBe(before);
  });
});

describe('keeping', () => {
  function keptIn(isFirst: boolean, document: SheetDocument = demo, mayEdit = true) {
    const saved: SheetDocument[] = [];
    const aside: SheetDocument[] = [];
    const message = signal<string | null>(null);
    const may = signal(mayEdit);
    let show: (shown: SheetDocument) => void = () => {};
    const keeping: Keeping = {
      how: signal('saved'),
      mayEdit: may,
      editedElsewhere: signal(!mayEdit),
      message,
      save: (one) => saved.push(one),
      putAside: (one) => aside.push(one),
      follow: (toShow) => {
        show = toShow;
      },
      editHere: () => Promise.resolve(),
      list: () => Promise.resolve({ states: [], aside: [] }),
      removeAside: () => Promise.resolve(),
    };
    const fromElsewhere = (shown: SheetDocument) => show(shown);
    return { kept: { document, isFirst, keeping }, saved, aside, message, may, fromElsewhere };
  }

  test('saves every change of the document, and undo, and nothing else', () => {
    const { kept, saved } = keptIn(true);
    const store = createStore(demo);
    store.keepIn(kept);
    store.typeCell('b1', 'sourceMass', '300 g');
    store.typeCell('b1', 'sourceMass', '300 g');
    store.changeSettings({ leads: 'us' });
    store.undo();
    store.undo();
    expect(saved.length).toBe(3);
    expect(saved.at(-1)).toBe(store.document.value);
  });

  test('says what there is to say of it, and nothing before it is there', () => {
    const { kept, message } = keptIn(true);
    const store = createStore(demo);
    expect(store.message.value).toBeNull();
    store.keepIn(kept);
    message.value = 'No room.';
    expect(store.message.value).toBe('No room.');
    message.value = null;
    expect(store.message.value).toBeNull();
  });

  test('saves what was edited before it was there', () => {
    const { kept, saved } = keptIn(true);
    const store = createStore(demo);
    store.typeCell('b1', 'sourceMass', '300 g');
    store.keepIn(kept);
    expect(saved).toEqual([store.document.value]);
    expect(store.undoName.value).toContain('300 g');
  });

  test('puts aside what was edited meanwhile where a sheet turns out to be kept, and shows that', () => {
    const other = { ...demo, batches: [...demo.batches, startBatch('b2', 'Other')] };
    const { kept, saved, aside } = keptIn(false, other);
    const store = createStore(demo);
    store.typeCell('b1', 'sourceMass', '300 g');
    const typed = store.document.value;
    store.keepIn(kept);
    expect([saved, aside]).toEqual([[], [typed]]);
    expect(store.document.value).toBe(other);
  });

  test('takes no edit while it may only be read, and follows the window that edits', () => {
    const { kept, saved, may, fromElsewhere } = keptIn(false, demo, false);
    const store = createStore(demo);
    store.keepIn(kept);
    expect(store.readOnly.value).toBe(true);
    store.typeCell('b1', 'sourceMass', '300 g');
    store.changeSettings({ leads: 'us' });
    expect(store.document.value).toBe(demo);
    const other = { ...demo, batches: [startBatch('b2', 'Other')] };
    fromElsewhere(other);
    expect(store.document.value).toBe(other);
    expect([saved, store.undoName.value]).toEqual([[], null]);
    may.value = true;
    store.renameBatch('b2', 'Mine');
    expect(saved).toEqual([store.document.value]);
  });
});
