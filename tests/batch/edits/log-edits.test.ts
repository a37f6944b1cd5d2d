import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { type Logged, recipeOf, type SheetDocument } from '../../../src/batch/document/document';
import { mostLogged } from '../../../src/batch/document/document-limits';
import { readDocument } from '../../../src/batch/document/read-document';
import { addBatch, removeBatch } from '../../../src/batch/edits/batch-list';
import { correct } from '../../../src/batch/edits/edits';
import {
  addEntry,
  cartonFinder,
  changeEntry,
  expectedHours,
  forgetPace,
  leaveOut,
  looksOf,
  openCarton,
  recipeThen,
  removeEntry,
  takeLearnedPace,
  teachersOf,
} from '../../../src/batch/edits/log-edits';
import { createStore } from '../../../src/batch/store/store';
import { formulate } from '../../../src/formula/engine/formulate';
import { learnPaces } from '../../../src/formula/time/learn-pace';
import { paceKey } from '../../../src/formula/time/pace-keys';
import { first, freeze } from '../any-edit';

const start = freeze(demo);

function entry(changes: Partial<Logged> = {}): Logged {
  return {
    ...{ batch: 'b1', name: 'Saturday almond', at: '2026-11-24T08:00', found: 'ready', hours: 9, expected: 12 },
    ...{ temperature: null, acidity: null, note: '' },
    ...changes,
  };
}

const readyOf = (document: SheetDocument) => formulate(recipeOf(document, first(document))).rows.readyTime.value;
const onDay = (day: number, changes: Partial<Logged> = {}) => entry({ at: `2026-11-${day}T08:00`, ...changes });

describe('addEntry', () => {
  test('keeps the entry and what it teaches, as learned, and the ready time follows', () => {
    const document = addEntry(start, entry());
    expect(document.log).toEqual([entry()]);
    const learned = learnPaces(looksOf([entry()], start.batches));
    const factors = [...(learned?.factors ?? [])].map(([key, value]) => [key, { value, how: 'learned' }]);
    expect(factors.map(([key]) => key)).toEqual(['kitchen.pace', 'water.paceOfGrains', 'almond.paceOfSource']);
    expect(document.yours).toEqual(Object.fromEntries(factors));
    const [before, after] = [readyOf(start), readyOf(document)];
    const { pace } = learned?.of({ grains: 'water', source: 'almond' }) ?? { pace: Number.NaN };
    expect(Number(before) / Number(after)).toBeCloseTo(pace, 9);
  });

  test('of one kind of grains moves the other kind less, and what was typed of grains is taken as it is', () => {
    const milk = { ...first(start), id: 'b2', grains: 'milk' as const };
    const sheet: SheetDocument = { ...start, batches: [first(start), milk] };
    const taught = [11, 12, 13].reduce((all, day) => addEntry(all, onDay(day, { hours: 7 })), sheet);
    const hours = (document: SheetDocument, at: number) => {
      const batch = document.batches[at] ?? first(document);
      return Number(formulate(recipeOf(document, batch)).rows.readyTime.value);
    };
    const [water, other] = [0, 1].map((at) => hours(taught, at) / hours(sheet, at));
    expect(water).toBeLessThan((other ?? 0) * 0.98);
    expect(other).toBeLessThan(0.95);
    const typed = addEntry(correct(sheet, 'water.paceOfGrains', 1.3, 'typed'), entry());
    expect(typed.yours['water.paceOfGrains']).toEqual({ value: 1.3, how: 'typed' });
    expect(typed.yours[paceKey]?.how).toBe('learned');
    expect(forgetPace(typed).yours).toEqual({ 'water.paceOfGrains': { value: 1.3, how: 'typed' } });
  });

  test('lets a pace that is typed afterwards stand alone', () => {
    expect(correct(addEntry(start, entry()), paceKey, 1.5, 'typed').yours).toEqual({
      [paceKey]: { value: 1.5, how: 'typed' },
    });
  });

  test('goes by the recipe as it was, where the batch is another by now', () => {
    const was = recipeThen(start, first(start));
    expect(was).toMatchObject({ source: 'almond', grains: 'water' });
    expect(was.grainRate).toBeCloseTo(54, 6);
    const turned: SheetDocument = { ...start, batches: [{ ...first(start), source: 'cashew', grains: 'milk' }] };
    expect(Object.keys(addEntry(turned, entry({ was })).yours)).toEqual(Object.keys(addEntry(start, entry()).yours));
  });

  test('learns the more the more batches say the same', () => {
    const paces = [11, 12, 13].map((_, n) => {
      const document = [11, 12, 13].slice(0, n + 1).reduce((all, day) => addEntry(all, onDay(day)), start);
      return document.yours[paceKey]?.value ?? Number.NaN;
    });
    expect(paces).toEqual([...paces].sort((one, other) => one - other));
    expect(new Set(paces).size).toBe(3);
  });

  test('leaves a pace that the cook typed, and one that was measured', () => {
    for (const how of ['typed', 'measured'] as const) {
      const own = correct(start, paceKey, 1.5, how);
      expect(addEntry(own, entry()).yours).toEqual(own.yours);
      expect(takeLearnedPace(addEntry(own, entry())).yours).toEqual(addEntry(start, entry()).yours);
    }
  });

  test('of what teaches nothing changes the log alone', () => {
    const looked = addEntry(start, entry({ found: 'looked', acidity: 4.4 }));
    expect(looked.yours).toEqual({});
    expect(looked.log).toHaveLength(1);
    expect(addEntry(start, entry({ expected: null })).yours).toEqual({});
  });

  test('keeps the pace within what may be typed for it', () => {
    const slow = Array.from({ length: 30 }, (_, n) => n).reduce(
      (all, n) => addEntry(all, entry({ batch: `x${n}`, found: 'flat', hours: 5000 })),
      start,
    );
    for (const { value } of Object.values(slow.yours)) expect(value).toBeGreaterThanOrEqual(0.2);
    expect(Number(slow.yours[paceKey]?.value)).toBeLessThan(0.5);
  });

  test('refuses what could not be saved', () => {
    expect(addEntry(start, entry({ hours: Number.NaN }))).toBe(start);
    const full = { ...start, log: Array.from({ length: mostLogged }, () => entry({ found: 'looked' })) };
    expect(addEntry(full, entry())).toBe(full);
    const long = addEntry(start, entry({ note: 'x'.repeat(9000), name: 'y'.repeat(9000), hours: -0 }));
    expect(readDocument(JSON.parse(JSON.stringify(long)))).toEqual({ ok: true, document: long });
  });
});

describe('changeEntry and removeEntry', () => {
  const two = addEntry(addEntry(start, onDay(20)), onDay(22, { hours: 16, found: 'flat' }));

  test('teach anew', () => {
    const changed = changeEntry(two, 1, onDay(22, { hours: 9 }));
    expect(changed).toEqual(addEntry(addEntry(start, onDay(20)), onDay(22)));
    expect(removeEntry(two, 1)).toEqual(addEntry(start, onDay(20)));
  });

  test('of the last that taught takes the learned pace away, and a typed one not', () => {
    expect(removeEntry(addEntry(start, entry()), 0)).toEqual(start);
    const own = correct(start, paceKey, 1.5, 'typed');
    expect(removeEntry(addEntry(own, entry()), 0)).toEqual(own);
  });

  test('of a place that is not there change nothing', () => {
    expect(removeEntry(two, 2)).toBe(two);
    expect(removeEntry(two, -1)).toBe(two);
    expect(changeEntry(two, 7, entry())).toBe(two);
    expect(changeEntry(two, 0, entry({ acidity: Number.POSITIVE_INFINITY }))).toBe(two);
  });
});

describe('leaveOut', () => {
  test('of an entry teaches as if it were not there, and counting it again as before', () => {
    const two = addEntry(addEntry(start, onDay(20)), onDay(22, { hours: 16, found: 'flat' }));
    const left = leaveOut(two, 1, true);
    expect(left.yours).toEqual(addEntry(start, onDay(20)).yours);
    expect(left.log[1]?.leftOut).toBe(true);
    expect(leaveOut(left, 1, false)).toEqual(two);
    expect(leaveOut(two, 1, false)).toBe(two);
    expect(leaveOut(two, 9, true)).toBe(two);
  });
});

describe('the log', () => {
  test('outlives its batch, and goes on teaching', () => {
    const gone = removeBatch(addEntry(start, entry()), 'b1');
    expect(gone.log).toEqual([entry()]);
    expect(gone.yours[paceKey]?.how).toBe('learned');
    expect(addEntry(gone, onDay(26, { batch: 'b2' })).log).toHaveLength(2);
  });

  test('of a batch that is gone is never taken for that of a new one', () => {
    const gone = removeBatch(addEntry(start, entry()), 'b1');
    const ids = [gone, addBatch(gone)].flatMap(({ batches }) => batches.map(({ id }) => id));
    expect(ids).not.toContain('b1');
    expect(addBatch(addEntry(start, entry({ batch: 'b2' }))).batches[1]?.id).toBe('b3');
  });

  test('is forgotten as a teacher and asked again', () => {
    const taught = addEntry(start, entry());
    const forgotten = forgetPace(taught);
    expect(forgotten).toEqual({ ...taught, yours: {} });
    expect(takeLearnedPace(forgotten)).toEqual(taught);
  });

  test('is one step to undo', () => {
    const store = createStore(start);
    store.takeEdit(addEntry(store.document.value, entry()), 'Log it');
    expect(store.undoName.value).toBe('Log it');
    store.undo();
    expect(store.document.value).toEqual(start);
    expect(store.undoName.value).toBeNull();
  });

  test('whatever is added, changed and removed, the pace is what the log teaches', () => {
    const any = fc.record({
      batch: fc.constantFrom('b1', 'b2'),
      name: fc.constant('x'),
      at: fc.constantFrom('2026-11-24T08:00', '2026-11-24T12:00', '2026-12-01T23:59'),
      found: fc.constantFrom('flat', 'ready', 'sour', 'looked'),
      hours: fc.option(fc.double({ min: 0, max: 10000, noNaN: true })),
      expected: fc.option(fc.double({ min: 1e-3, max: 1e4, noNaN: true })),
      temperature: fc.constant(null),
      acidity: fc.option(fc.double({ min: 0, max: 14, noNaN: true })),
      note: fc.string(),
    });
    const edit = fc.tuple(fc.constantFrom('add', 'change', 'remove'), fc.nat(5), any);
    fc.assert(
      fc.property(fc.array(edit, { maxLength: 10 }), (edits) => {
        const document = edits.reduce<SheetDocument>((all, [what, place, one]) => {
          if (what === 'add') return addEntry(all, one);
          return what === 'change' ? changeEntry(all, place, one) : removeEntry(all, place);
        }, start);
        const learned = learnPaces(looksOf(document.log, start.batches));
        const pace = learned?.factors.get(paceKey);
        expect(document.yours[paceKey]?.value ?? null).toBe(
          pace === undefined ? null : Math.min(5, Math.max(0.2, pace)),
        );
        const saved: unknown = JSON.parse(JSON.stringify(document));
        expect(readDocument(saved)).toEqual({ ok: true, document });
      }),
    );
  });
});

describe('what is found at a carton', () => {
  const carton: SheetDocument = {
    ...start,
    batches: [first(start), { ...first(start), id: 'b2', source: 'cartonPlain' }],
  };
  const stubborn = [24, 71].map((hours) =>
    entry({ batch: 'b2', found: 'flat', hours, at: `2026-11-2${hours % 7}T08:00` }),
  );

  test('teaches nothing of the kitchen, however long it stays flat', () => {
    const document = stubborn.reduce<SheetDocument>((all, one) => addEntry(all, { ...one, carton: true }), carton);
    expect([document.log.length, document.yours]).toEqual([2, {}]);
    expect(readyOf(document)).toBe(readyOf(start));
    expect(takeLearnedPace(document).yours).toEqual({});
  });

  test('is known by its batch where the entry does not say, as one of an earlier page', () => {
    const document = stubborn.reduce<SheetDocument>((all, one) => addEntry(all, one), carton);
    expect(document.yours).toEqual({});
    expect(teachersOf({ ...document, batches: start.batches })).toHaveLength(2);
    expect(cartonFinder(document)(entry())).toBe(false);
  });

  test('stays so when its batch is made of something else, or goes; and homemade stays homemade', () => {
    const marked = addEntry(carton, entry({ batch: 'b2', found: 'flat', hours: 24, carton: true }));
    expect(teachersOf({ ...marked, batches: start.batches })).toEqual([]);
    const homemade = addEntry(start, entry({ carton: false }));
    const turned: SheetDocument = { ...homemade, batches: [{ ...first(start), source: 'cartonPlain' }] };
    expect(teachersOf(turned)).toHaveLength(1);
  });

  test('and what it teaches not takes nothing from what homemade milk teaches', () => {
    const taught = addEntry(carton, entry());
    const both = stubborn.reduce<SheetDocument>((all, one) => addEntry(all, one), taught);
    expect(both.yours).toEqual(taught.yours);
    const saved: unknown = JSON.parse(JSON.stringify(addEntry(both, entry({ carton: true }))));
    expect(readDocument(saved).ok).toBe(true);
  });
});

describe('expectedHours', () => {
  test('is the ready time of the sheet at the usual pace, whatever was learned or typed', () => {
    const usual = readyOf(start);
    expect(expectedHours(start, first(start), null)).toBe(usual);
    const fast = correct(start, paceKey, 2, 'typed');
    expect(expectedHours(fast, first(fast), null)).toBe(usual);
  });

  test('is that of the room it stood in: less where it was warmer, none outside the models', () => {
    const [cool, warm] = [18, 26].map((celsius) => expectedHours(start, first(start), celsius));
    expect(Number(cool)).toBeGreaterThan(Number(warm));
    expect(expectedHours(start, first(start), 21)).toBeCloseTo(Number(readyOf(start)), 9);
    expect(expectedHours(start, first(start), 12)).toBeNull();
  });
});

describe('openCarton', () => {
  test('is kept with its days, changed and taken back', () => {
    const opened = openCarton(start, 'b1', 3);
    expect(first(opened).opened).toEqual({ days: 3 });
    expect(openCarton(opened, 'b1', 3)).toBe(opened);
    expect(first(openCarton(opened, 'b1', 5)).opened).toEqual({ days: 5 });
    expect(openCarton(opened, 'b1', null)).toEqual(start);
  });

  test('takes whole days from 1 to 14', () => {
    for (const days of [0, 15, 2.5, Number.NaN]) expect(openCarton(start, 'b1', days)).toBe(start);
    expect(readDocument(openCarton(start, 'b1', 14)).ok).toBe(true);
  });
});
