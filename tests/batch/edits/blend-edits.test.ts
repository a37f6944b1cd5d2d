import { describe, expect, test } from 'vitest';
import { demo, startBatch } from '../../../src/batch/document/demo';
import { recipeOf, type SheetDocument } from '../../../src/batch/document/document';
import { mostBlended, mostBlends } from '../../../src/batch/document/document-limits';
import { readDocument } from '../../../src/batch/document/read-document';
import { renameBatch } from '../../../src/batch/edits/batch-list';
import * as edits from '../../../src/batch/edits/blend-edits';
import { readBlend } from '../../../src/batch/reading/read-blend';
import { changeSettings } from '../../../src/batch/reading/settings';
import { formulate } from '../../../src/formula/engine/formulate';

const sheet: SheetDocument = { ...demo, batches: [...demo.batches, startBatch('b2', 'Monday oat')] };
const two = edits.addBlend(sheet, ['b1', 'b2']);
const only = ({ blends }: SheetDocument) => blends?.[0] ?? expect.fail('there is no blend');
const open = (document: SheetDocument) => readDocument(JSON.parse(JSON.stringify(document)));
const read = (document: SheetDocument) =>
  readBlend(only(document), {
    batches: document.batches,
    settings: document.settings,
    formulationOf: (batch) => formulate(recipeOf(document, batch)),
  });

describe('a blend', () => {
  test('begins with half a glass of each, and a sheet with it can be saved', () => {
    expect(only(two)).toMatchObject({ key: 'k1', name: 'Blend' });
    expect(only(two).parts.map(({ of, name, volume }) => [of, name, volume.kind])).toEqual([
      ['b1', 'Saturday almond', 'volume'],
      ['b2', 'Monday oat', 'volume'],
    ]);
    for (const { part, poured, why } of read(two)) {
      expect(why).toBeNull();
      const half = (poured?.formulation.of('servingSize') ?? Number.NaN) / 2;
      expect(part.volume.amount).toBeCloseTo(half, 0);
    }
    expect(open(two)).toMatchObject({ ok: true, document: two });
    const comma = changeSettings(sheet, { decimalComma: true, leads: 'us' });
    expect(read(edits.addBlend(comma, ['b1', 'b2'])).map(({ why }) => why)).toEqual([null, null]);
  });

  test('is renamed, poured anew, added to and taken away', () => {
    expect(edits.addBlend(two, ['b1']).blends?.[1]).toMatchObject({ key: 'k2', name: 'Blend 2' });
    expect(only(edits.renameBlend(two, 'k1', ' Sunday\nmix ')).name).toBe('Sunday mix');
    const poured = edits.pourPart(two, 'k1', 1, '200 mL');
    expect(only(poured).parts[1]?.volume).toEqual({ text: '200 mL', amount: 200, kind: 'volume' });
    expect(only(poured).parts[0]).toBe(only(two).parts[0]);
    expect(only(edits.choosePart(poured, 'k1', 0, 'b2')).parts[0]).toMatchObject({ of: 'b2', name: 'Monday oat' });
    expect(only(edits.addPart(two, 'k1', 'b1')).parts).toHaveLength(3);
    expect(only(edits.removePart(two, 'k1', 0)).parts.map(({ of }) => of)).toEqual(['b2']);
    expect(edits.removeBlend(two, 'k1').blends).toEqual([]);
  });

  test('stays the same object where nothing changes', () => {
    const text = only(two).parts[0]?.volume.text ?? '';
    const same = [
      edits.renameBlend(two, 'k1', ' '),
      edits.renameBlend(two, 'k1', 'Blend'),
      edits.pourPart(two, 'k1', 0, text),
      edits.pourPart(two, 'k1', 5, '1 mL'),
      edits.choosePart(two, 'k1', 0, 'b1'),
      edits.choosePart(two, 'k1', 0, 'gone'),
      edits.addPart(two, 'k1', 'gone'),
      edits.addPart(two, 'k9', 'b1'),
      edits.removePart(two, 'k1', 2),
      edits.removeBlend(two, 'k9'),
    ];
    for (const one of same) expect(one).toBe(two);
  });

  test('holds no more parts and a sheet no more blends than can be saved', () => {
    let full = two;
    for (let one = 0; one < 9; one += 1) full = edits.addPart(full, 'k1', 'b1');
    expect(only(full).parts).toHaveLength(mostBlended);
    let many = sheet;
    for (let one = 0; one <= mostBlends; one += 1) many = edits.addBlend(many, []);
    expect(many.blends).toHaveLength(mostBlends);
    expect(open(many)).toMatchObject({ ok: true });
  });
});

describe('what is poured', () => {
  const why = (text: string) => read(edits.pourPart(two, 'k1', 0, text))[0]?.why;

  test('is refused with what to do where it is no volume or nothing', () => {
    for (const text of ['', '0 mL', '-5 mL', '100 g']) expect(why(text)).toMatch(/Type how much|less than|below|mL/);
    expect(why('a splash of it')).toBeTruthy();
    expect(only(edits.pourPart(two, 'k1', 0, 'a splash of it')).parts[0]?.volume.text).toBe('a splash of it');
  });

  test('is no more than the batch gives to drink, counted over the whole blend', () => {
    const gives = formulate(recipeOf(two, demo.batches[0] ?? expect.fail('there is no batch'))).of('drinkVolume');
    expect(why(`${Math.floor(gives)} mL`)).toBeNull();
    expect(why(`${Math.ceil(gives)} mL`)).toContain('more than the');
    const twice = edits.addPart(edits.pourPart(two, 'k1', 0, `${Math.floor(gives)} mL`), 'k1', 'b1');
    expect(read(twice).map((one) => one.why !== null)).toEqual([true, false, true]);
  });

  test('is told by its name where its batch is gone, and by its new name where it was renamed', () => {
    const gone = { ...two, batches: two.batches.slice(0, 1) };
    expect(read(gone)[1]).toMatchObject({
      batch: null,
      poured: null,
      why: '“Monday oat” is no longer on the sheet. Choose another, or take it out.',
    });
    expect(read(renameBatch(two, 'b2', 'Tuesday'))[1]?.poured?.name).toBe('Tuesday');
  });
});
