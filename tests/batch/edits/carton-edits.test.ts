import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import type { Logged, SheetDocument } from '../../../src/batch/document/document';
import { readDocument } from '../../../src/batch/document/read-document';
import {
  cartonRecords,
  cartonWarning,
  labelProblem,
  nameCarton,
  noteCarton,
  removeCarton,
} from '../../../src/batch/edits/carton-edits';
import { addEntry, recipeThen } from '../../../src/batch/edits/log-edits';
import { first, freeze } from '../any-edit';

const carton: SheetDocument = freeze({ ...demo, batches: [{ ...first(demo), source: 'cartonPlain' }] });

function refuse(document: SheetDocument, at: string, changes: Partial<Logged> = {}): SheetDocument {
  return addEntry(document, {
    ...{ batch: 'b1', name: 'Carton', at, found: 'flat', hours: 120, expected: 24, temperature: null, acidity: null },
    ...{ note: '', carton: true, was: recipeThen(document, first(document)), gaveUp: true },
    ...changes,
  });
}

describe('a carton', () => {
  test('is named once for all its batches, taken back by a blank, and cut to what can be saved', () => {
    const named = nameCarton(carton, 'b1', '  Blue soy ');
    expect(first(named).carton).toBe('Blue soy');
    expect(named.cartons).toEqual([{ name: 'Blue soy' }]);
    expect(nameCarton(named, 'b1', 'Blue soy')).toBe(named);
    const blank = nameCarton(named, 'b1', ' ');
    expect(first(blank).carton).toBeUndefined();
    expect(blank.cartons).toEqual([{ name: 'Blue soy' }]);
    const long = nameCarton(carton, 'b1', 'x'.repeat(900));
    expect(readDocument(JSON.parse(JSON.stringify(long)))).toEqual({ ok: true, document: long });
  });

  test('has the sugar of its label counted, when that is written down and when it is chosen again', () => {
    const noted = noteCarton(nameCarton(carton, 'b1', 'Blue'), 'Blue', { sugar: '6 g', serving: '200 ml', kind: ' ' });
    expect(noted.cartons).toEqual([{ name: 'Blue', sugar: '6 g', serving: '200 ml' }]);
    expect(noted.yours).toEqual({
      'cartonPlain.labelSugar': { value: 6, how: 'typed' },
      'cartonPlain.labelServing': { value: 200, how: 'typed' },
    });
    const other = noteCarton(nameCarton(noted, 'b1', 'Green'), 'Green', { sugar: '2' });
    expect(other.yours['cartonPlain.labelSugar']?.value).toBe(2);
    expect(nameCarton(other, 'b1', 'Blue').yours['cartonPlain.labelSugar']?.value).toBe(6);
    expect(noteCarton(noted, 'nobody', { sugar: '1' })).toBe(noted);
    expect(labelProblem('labelSugar', 'lots', false)).not.toBeNull();
    expect(labelProblem('labelSugar', ' ', false)).toBeNull();
  });

  test('that refused is warned of by name, also in another batch, and never a homemade milk', () => {
    const named = nameCarton(carton, 'b1', 'Blue');
    expect(cartonWarning(named, first(named))).toBeNull();
    const twice = refuse(refuse(named, '2026-11-02T08:00'), '2026-11-12T08:00');
    expect(cartonRecords(twice).get('Blue')).toMatchObject({ worked: 0, refused: 2 });
    expect(cartonWarning(twice, first(twice))).toContain('either time');
    const green = nameCarton(twice, 'b1', 'Green');
    expect(cartonWarning(green, first(green))).toBeNull();
    expect(cartonWarning(green, { ...first(green), id: 'b7', carton: 'Blue' })).toContain('“Blue”');
    expect(cartonWarning(twice, { ...first(twice), source: 'almond' })).toBeNull();
    const { carton: _, ...unnamed } = first(twice);
    expect(cartonWarning(twice, { ...unnamed, id: 'b7' })).toBe(
      'Here “Blue” did not ferment. Say in the log which carton this is.',
    );
    expect(cartonWarning(named, unnamed)).toBeNull();
    expect(cartonWarning(twice, { ...unnamed, source: 'cartonSweetened' })).toBeNull();
    const homemade = refuse({ ...named, batches: demo.batches }, '2026-11-02T08:00', { carton: false });
    expect(cartonRecords(homemade).get('Blue')).toMatchObject({ worked: 0, refused: 0 });
  });

  test('leaves the register, and stays in the log', () => {
    const once = refuse(nameCarton(carton, 'b1', 'Blue'), '2026-11-02T08:00');
    const removed = removeCarton(once, 'Blue');
    expect(removed.cartons).toBeUndefined();
    expect(cartonRecords(removed).get('Blue')).toMatchObject({ refused: 1 });
    expect(removeCarton(removed, 'Blue')).toBe(removed);
  });
});
