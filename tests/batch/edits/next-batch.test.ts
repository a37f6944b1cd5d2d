import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { type Logged, recipeOf, type SheetDocument } from '../../../src/batch/document/document';
import { readDocument } from '../../../src/batch/document/read-document';
import { measureCell } from '../../../src/batch/edits/edits';
import { addEntry, teachersByEntry, whatLogTeaches } from '../../../src/batch/edits/log-edits';
import { searchLog } from '../../../src/batch/edits/log-search';
import { addNext, adviceFor } from '../../../src/batch/edits/next-batch';
import { formulate } from '../../../src/formula/engine/formulate';
import { learnPaces } from '../../../src/formula/time/learn-pace';
import { first, freeze } from '../any-edit';

const start = freeze(demo);

function entry(changes: Partial<Logged> = {}): Logged {
  return {
    ...{ batch: 'b1', name: 'Saturday almond', at: '2026-11-24T08:00', found: 'ready', hours: 12, expected: 12 },
    ...{ temperature: null, acidity: null, note: '' },
    ...changes,
  };
}

function advise(document: SheetDocument) {
  const teachers = teachersByEntry(document);
  return adviceFor(document, first(document), { paces: learnPaces([...teachers.values()]), teachers });
}

const hoursOf = (document: SheetDocument) =>
  Number(formulate(recipeOf(document, first(document))).rows.readyTime.value);

describe('adviceFor', () => {
  test('is none without a result, after a look alone, and for a carton', () => {
    expect(advise(start)).toBeNull();
    expect(advise(addEntry(start, entry({ found: 'looked', acidity: 4.4 })))).toBeNull();
    const carton: SheetDocument = { ...start, batches: [{ ...first(start), source: 'cartonPlain' }] };
    expect(advise(addEntry(carton, entry({ carton: true })))).toBeNull();
  });

  test('goes by the last result of the last make, and by none that is left out', () => {
    const later = { at: '2026-11-26T08:00' };
    const both = [entry({ found: 'sour', hours: 20 }), entry({ ...later, found: 'flat', hours: 9 }), entry(later)];
    const document = both.reduce<SheetDocument>(addEntry, start);
    expect(advise(document)?.result).toEqual(both[2]);
    expect(advise(document)?.next[0]?.do).toBe('asItIs');
    const left = {
      ...document,
      log: document.log.map((one, at) => (at === 0 ? one : { ...one, leftOut: true as const })),
    };
    expect(advise(left)?.result.found).toBe('sour');
  });

  test('says what the sheet said before that result', () => {
    const one = addEntry(start, entry({ found: 'flat', hours: 15 }));
    const two = addEntry(one, entry({ at: '2026-11-26T08:00', found: 'flat', hours: 18 }));
    expect(advise(one)?.was).toBeCloseTo(hoursOf(start), 6);
    expect(advise(two)?.was).toBeCloseTo(hoursOf(one), 6);
    expect(whatLogTeaches(two)?.makes).toHaveLength(2);
  });
});

describe('addNext', () => {
  test('adds the batch with its change and nothing measured, under a name of its own', () => {
    const measured = measureCell(start, 'b1', 'milkVolume', '700 mL');
    const slow = ['20', '22', '24'].reduce(
      (all, day) => addEntry(all, entry({ found: 'flat', hours: 22, at: `2026-11-${day}T08:00` })),
      measured,
    );
    const [next] = advise(slow)?.next ?? [];
    if (next?.do !== 'change') throw new Error('nothing is changed');
    const made = addNext(slow, 'b1', next);
    expect(made.batches.map(({ name }) => name)).toEqual(['Saturday almond', 'Saturday almond, next']);
    expect(made.batches[0]).toEqual(slow.batches[0]);
    expect(made.batches[1]?.measured).toEqual({});
    expect(made.batches[1]?.given.map(({ row, text }) => [row, text])).toContainEqual([
      'roomTemperature',
      next.way.text,
    ]);
    const again = addNext(made, made.batches[1]?.id ?? '', next);
    expect(again.batches[2]?.name).toBe('Saturday almond, next 2');
    expect(readDocument(JSON.parse(JSON.stringify(again)))).toEqual({ ok: true, document: again });
    expect(addNext(slow, 'b9', next)).toBe(slow);
  });
});

describe('searchLog', () => {
  test('finds every word anywhere in an entry, in any case, and all where nothing is typed', () => {
    const log = [entry({ note: 'Thick, smells of bread' }), entry({ batch: 'gone', name: 'Old oat', found: 'sour' })];
    expect(searchLog(log, '  ', start)).toBe(log);
    expect(searchLog(log, 'BREAD almond', start)).toEqual([log[0]]);
    expect(searchLog(log, 'oat too sour', start)).toEqual([log[1]]);
    expect(searchLog(log, 'bread oat', start)).toEqual([]);
  });
});
