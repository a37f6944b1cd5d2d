import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo, startBatch } from '../../../src/batch/document/demo';
import type { Batch, Logged, SheetDocument } from '../../../src/batch/document/document';
import {
  longestName,
  mostBatches,
  mostCorrections,
  mostLogged,
  mostOwnFoods,
} from '../../../src/batch/document/document-limits';
import { readDocument } from '../../../src/batch/document/read-document';
import { partsOf, type SheetParts } from '../../../src/batch/document/salvage';
import { typeCell } from '../../../src/batch/edits/edits';
import { addEntry, removeEntry } from '../../../src/batch/edits/log-edits';
import { mergeInto as mergeAll, replaceWith } from '../../../src/batch/edits/merge';
import { paceKey } from '../../../src/formula/time/pace-keys';
import { anyDocument, first, freeze } from '../any-edit';

const entry: Logged = {
  batch: 'b1',
  name: 'Saturday almond',
  at: '2026-11-28T08:00',
  found: 'ready',
  hours: 14,
  expected: 12,
  temperature: 21,
  acidity: 4.2,
  note: '',
};

function sheet(changes: Partial<SheetDocument>): SheetDocument {
  return freeze({ ...demo, ...changes });
}

function priced(id: string, price: string) {
  return { food: `sweetener.${id}`, amount: { text: '1 kg', amount: 1000, kind: 'mass' as const }, price };
}

function mergeInto(document: SheetDocument, parts: SheetParts): SheetDocument {
  return mergeAll(document, parts).document;
}

/** The figures without what the log teaches, which another log teaches anew. */
function ownFigures({ yours }: SheetDocument): SheetDocument['yours'] {
  return Object.fromEntries(Object.entries(yours).filter(([, { how }]) => how !== 'learned'));
}

function names({ batches }: SheetDocument): readonly string[] {
  return batches.map(({ name }) => name);
}

/** Everything of a batch but where it stands: its content, and the shape of its jar. */
function contents(document: SheetDocument): readonly string[] {
  return document.batches.map(({ id, name: _, ...rest }) =>
    JSON.stringify([
      rest.given.map(({ text }) => text),
      rest.source,
      rest.vessel,
      Object.entries(document.yours).flatMap(([key, value]) =>
        key.startsWith(`own@${id}.`) ? [[key.slice(key.indexOf('.')), value]] : [],
      ),
    ]),
  );
}

describe('merging', () => {
  test('adds a batch beside yours, never over it, where both have one id and differ', () => {
    const mine = typeCell(demo, 'b1', 'sourceMass', '200 g');
    const theirs = typeCell(demo, 'b1', 'sourceMass', '300 g');
    const merged = mergeInto(mine, partsOf(theirs));
    expect(names(merged)).toEqual(['Saturday almond', 'Saturday almond (from file)']);
    expect(merged.batches[0]).toBe(mine.batches[0]);
    expect(merged.batches[1]?.id).not.toBe('b1');
    expect(merged.batches[1]?.given[0]?.text).toBe('300 g');
  });

  test('leaves out a batch that is here already, also under another id', () => {
    const theirs = sheet({ batches: [{ ...first(demo), id: 'b7' }] });
    expect(mergeInto(demo, partsOf(theirs))).toBe(demo);
  });

  test('keeps both where a file has two batches alike and the sheet one', () => {
    const theirs = sheet({ batches: [first(demo), { ...first(demo), id: 'b2' }] });
    expect(mergeInto(demo, partsOf(theirs)).batches).toHaveLength(2);
  });

  test('lets your figures stay and takes those you have none of', () => {
    const mine = sheet({ yours: { 'almond.uptake': { value: 0.4, how: 'typed' } } });
    const theirs = sheet({
      yours: { 'almond.uptake': { value: 0.9, how: 'typed' }, 'hemp.uptake': { value: 0.2, how: 'measured' } },
    });
    expect(mergeInto(mine, partsOf(theirs)).yours).toEqual({
      'almond.uptake': { value: 0.4, how: 'typed' },
      'hemp.uptake': { value: 0.2, how: 'measured' },
    });
  });

  test('brings the shape of a jar along under the batch’s new id', () => {
    const own: Batch = { ...startBatch('b1', 'In my crock'), vessel: 'own' };
    const theirs = sheet({ batches: [own], yours: { 'own@b1.neckHeight': { value: 3, how: 'typed' } } });
    const merged = mergeInto(demo, partsOf(theirs));
    const added = merged.batches[1]?.id ?? expect.fail('nothing was added');
    expect(merged.yours).toEqual({ [`own@${added}.neckHeight`]: { value: 3, how: 'typed' } });
  });

  test('joins the log without doubles, and moves lines to where their batch went', () => {
    const theirs = sheet({
      batches: [{ ...first(demo), source: 'hemp' }],
      log: [entry, { ...entry, at: '2026-11-29T08:00', found: 'sour' }],
    });
    const merged = mergeInto(sheet({ log: [entry] }), partsOf(theirs));
    expect(merged.log).toHaveLength(2);
    expect(merged.log[1]?.batch).toBe(merged.batches[1]?.id);
  });

  test('never gives a batch the id of another that is only in the log', () => {
    const mine = sheet({ log: [{ ...entry, batch: 'b2', name: 'Long gone' }] });
    const theirs = sheet({ batches: [{ ...first(demo), id: 'b2', name: 'New one', source: 'hemp' }] });
    const merged = mergeInto(mine, partsOf(theirs));
    expect(names(merged)).toEqual(['Saturday almond', 'New one']);
    expect(['b1', 'b2']).not.toContain(merged.batches[1]?.id);
    const differing = sheet({ batches: [{ ...first(demo), source: 'hemp' }] });
    expect(mergeInto(mine, partsOf(differing)).batches.map(({ id }) => id)).toEqual(['b1', 'b3']);
  });

  test('brings a batch that was removed back to its lines of the log', () => {
    const gone = { ...entry, batch: 'b2', name: 'Friday' };
    const mine = sheet({ log: [gone, { ...gone, at: '2026-11-29T08:00', name: 'Renamed' }] });
    const batches = [first(demo), { ...first(demo), id: 'b2', name: 'Friday', source: 'hemp' as const }];
    const merged = mergeInto(mine, partsOf(sheet({ batches, log: [gone] })));
    expect(merged.batches[1]?.id).toBe('b2');
    expect(merged.log).toEqual(mine.log);
  });

  test('keeps lines of a batch that is gone in the file from a batch of yours under its id', () => {
    const theirs = sheet({
      batches: [{ ...first(demo), id: 'b5', source: 'hemp' }],
      log: [{ ...entry, name: 'Gone' }],
    });
    const merged = mergeInto(demo, partsOf(theirs));
    expect(merged.batches.map(({ id }) => id)).not.toContain(merged.log[0]?.batch);
    expect(mergeInto(merged, partsOf(theirs))).toBe(merged);
  });

  test('adds own foods and prices that are new and leaves yours', () => {
    const flour = { name: 'Flour', grams: 120, millilitres: 240 };
    const mine = sheet({ ownFoods: [flour], packages: [priced('honey', '9')] });
    const theirs = sheet({
      ownFoods: [
        { ...flour, grams: 1 },
        { ...flour, name: 'Cocoa' },
      ],
      packages: [priced('honey', '1'), priced('mapleSyrup', '20')],
    });
    const merged = mergeInto(mine, partsOf(theirs));
    expect(merged.ownFoods?.map(({ name, grams }) => [name, grams])).toEqual([
      ['Flour', 120],
      ['Cocoa', 120],
    ]);
    expect(merged.packages).toEqual([priced('honey', '9'), priced('mapleSyrup', '20')]);
  });

  test('stops at the most a sheet can hold, with all of yours in it', () => {
    const many = Array.from({ length: mostBatches }, (_, at) => startBatch(`x${at}`, `Batch ${at} of the file`));
    const merged = mergeInto(demo, partsOf(sheet({ batches: many })));
    expect(merged.batches).toHaveLength(mostBatches);
    expect(merged.batches[0]).toBe(first(demo));
    expect(readDocument(merged).ok).toBe(true);
  });

  test('tells what there is no room for, and of a sheet with room that all is in it', () => {
    const many = Array.from({ length: mostBatches + 1 }, (_, at) => startBatch(`x${at}`, `Batch ${at} of the file`));
    const lines = Array.from({ length: mostLogged }, (_, at) => ({ ...entry, note: `${at}` }));
    const figures = (count: number, what: string) =>
      Object.fromEntries(
        Array.from({ length: count }, (_, at) => [`${what}.${at}`, { value: 1, how: 'typed' as const }]),
      );
    const food = (name: string) => ({ name, grams: 1, millilitres: 2 });
    const mine = sheet({
      log: [entry],
      yours: figures(1, 'mine'),
      ownFoods: Array.from({ length: mostOwnFoods - 1 }, (_, at) => food(`Food ${at}`)),
    });
    const theirs = sheet({
      batches: [first(demo), ...many.slice(0, mostBatches)],
      log: [...lines, entry],
      yours: figures(mostCorrections + 1, 'theirs'),
      ownFoods: [food('Food 1'), food('Cocoa'), food('Flour')],
    });
    const { document, leftOut } = mergeAll(mine, partsOf(theirs));
    expect(readDocument(document).ok).toBe(true);
    expect(leftOut.batches).toEqual([`Batch ${mostBatches - 1} of the file`]);
    expect(leftOut.log.map(({ note }) => note)).toEqual([`${mostLogged - 1}`]);
    expect(leftOut.yours).toEqual([`theirs.${mostCorrections - 1}`, `theirs.${mostCorrections}`]);
    expect(leftOut.ownFoods).toEqual(['Flour']);
    const none = { ownFoods: [], stocks: [], cartons: [], packages: [], classes: [], blends: [] };
    const nothing = { batches: [], log: [], yours: [], ...none };
    expect(mergeAll(demo, partsOf(sheet({ log: [entry] }))).leftOut).toEqual(nothing);
  });

  test('cuts the longest name so that it can still be saved', () => {
    const long = sheet({ batches: [{ ...first(demo), name: 'x'.repeat(longestName), source: 'hemp' }] });
    const merged = mergeInto(demo, partsOf(long));
    expect(readDocument(merged).ok).toBe(true);
    expect(mergeInto(merged, partsOf(long))).toBe(merged);
  });

  test('of any two sheets: a sound sheet with everything of yours as it was, and a second time nothing more', () => {
    fc.assert(
      fc.property(anyDocument, anyDocument, (mine, theirs) => {
        const merged = mergeInto(freeze(mine), partsOf(freeze(theirs)));
        expect(readDocument(merged).ok).toBe(true);
        expect(merged.batches.slice(0, mine.batches.length)).toEqual(mine.batches);
        expect(merged.log.slice(0, mine.log.length)).toEqual(mine.log);
        expect(merged.yours).toMatchObject(ownFigures(mine));
        expect(merged.settings).toBe(mine.settings);
        expect(contents(merged)).toEqual(expect.arrayContaining([...contents(theirs)]));
        expect(mergeInto(merged, partsOf(theirs))).toBe(merged);
      }),
    );
  });
});

describe('a learned pace', () => {
  const mine = freeze(addEntry(demo, { ...entry, hours: 9 }));
  const theirs = freeze(addEntry(demo, { ...entry, at: '2026-11-29T08:00', hours: 8 }));
  const both = freeze(theirs.log.reduce(addEntry, mine));

  test('after merging is what both logs teach', () => {
    expect(mine.yours[paceKey]?.how).toBe('learned');
    expect(both.yours).not.toEqual(mine.yours);
    expect(mergeInto(mine, partsOf(theirs)).yours).toEqual(both.yours);
    expect(mergeInto(demo, partsOf(theirs)).yours).toEqual(theirs.yours);
  });

  test('does not come in without the lines that taught it', () => {
    const taught = partsOf({ ...theirs, log: [] });
    expect(mergeInto(demo, taught)).toBe(demo);
    expect(mergeInto(mine, taught)).toBe(mine);
  });

  test('leaves a pace that the cook typed', () => {
    const typed = sheet({ yours: { [paceKey]: { value: 1.5, how: 'typed' } } });
    expect(mergeInto(typed, partsOf(theirs)).yours).toEqual(typed.yours);
    expect(mergeInto(typed, partsOf(theirs)).log).toEqual(theirs.log);
  });

  test('after replacing is what the log of the file teaches', () => {
    expect(replaceWith(mine, partsOf(theirs)).yours).toEqual(theirs.yours);
    expect(replaceWith(mine, { ...partsOf(both), log: theirs.log }).yours).toEqual(theirs.yours);
    expect(replaceWith(mine, partsOf(removeEntry(mine, 0))).yours).toEqual({});
  });

  test('is learned on a sheet full of figures without putting one too many into it', () => {
    const yours = Object.fromEntries(
      Array.from({ length: mostCorrections }, (_, at) => [`mine.${at}`, { value: 1, how: 'typed' as const }]),
    );
    expect(readDocument(addEntry(sheet({ yours }), { ...entry, hours: 9 })).ok).toBe(true);
  });
});

describe('replacing', () => {
  test('of any two sheets gives the file’s batches, log and figures with your settings', () => {
    fc.assert(
      fc.property(anyDocument, anyDocument, (mine, theirs) => {
        const replaced = replaceWith(freeze(mine), partsOf(freeze(theirs)));
        expect(readDocument(replaced).ok).toBe(true);
        expect(replaced.batches).toEqual(theirs.batches);
        expect(replaced.log).toEqual(theirs.log);
        expect(replaced.settings).toBe(mine.settings);
        expect(theirs.yours).toMatchObject(replaced.yours);
      }),
    );
  });

  test('with a file that has no batch changes nothing', () => {
    expect(replaceWith(demo, { ...partsOf(demo), batches: [] })).toBe(demo);
  });
});
