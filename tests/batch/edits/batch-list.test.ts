import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { mostBatches, recipeOf, type SheetDocument } from '../../../src/batch/document/document';
import { addBatch, copyBatch, moveBatch, removeBatch, renameBatch } from '../../../src/batch/edits/batch-list';
import { correct, typeCell } from '../../../src/batch/edits/edits';
import { formulate } from '../../../src/formula/engine/formulate';
import { jars } from '../../../src/reference/jars';
import { anyDocument, first, freeze } from '../any-edit';

const one = freeze(demo);
const three = freeze(addBatch(addBatch(one)));

function ids(document: SheetDocument): readonly string[] {
  return document.batches.map(({ id }) => id);
}

function names(document: SheetDocument): readonly string[] {
  return document.batches.map(({ name }) => name);
}

test('ids stay unique through any edits', () => {
  fc.assert(
    fc.property(anyDocument, (document) => {
      expect(new Set(ids(document)).size).toBe(document.batches.length);
    }),
  );
});

test('renaming trims, cuts what is too long and passes over a blank', () => {
  expect(names(renameBatch(one, 'b1', '  Sunday hemp '))).toEqual(['Sunday hemp']);
  expect(first(renameBatch(one, 'b1', 'n'.repeat(300))).name).toHaveLength(200);
  expect(renameBatch(one, 'b1', ' ')).toBe(one);
  expect(renameBatch(one, 'b1', 'Saturday almond')).toBe(one);
});

describe('addBatch', () => {
  test('adds at the end, or after another, with the next id and name', () => {
    expect(ids(three)).toEqual(['b1', 'b2', 'b3']);
    expect(names(three)).toEqual(['Saturday almond', 'Almonds', 'Almonds 2']);
    expect(ids(addBatch(three, 'b1'))).toEqual(['b1', 'b4', 'b2', 'b3']);
  });

  test('gives no id and no name that is taken', () => {
    const gap = removeBatch(three, 'b2');
    expect(ids(addBatch(gap))).toEqual(['b1', 'b3', 'b4']);
    expect(names(addBatch(gap))).toEqual(['Saturday almond', 'Almonds 2', 'Almonds']);
  });

  test('leaves a full sheet as it is', () => {
    const full = {
      ...one,
      batches: Array.from({ length: mostBatches }, (_, at) => ({ ...first(one), id: `b${at}` })),
    };
    expect(addBatch(full)).toBe(full);
    expect(copyBatch(full, 'b1')).toBe(full);
  });
});

test('a copy is the batch under its own id and name, beside it', () => {
  const typed = typeCell(three, 'b1', 'sourceMass', '300 g');
  const copied = copyBatch(copyBatch(typed, 'b1'), 'b1');
  expect(ids(copied)).toEqual(['b1', 'b5', 'b4', 'b2', 'b3']);
  expect(names(copied).slice(0, 3)).toEqual(['Saturday almond', 'Saturday almond, copy 2', 'Saturday almond, copy']);
  expect(copied.batches[1]).toEqual({ ...first(typed), id: 'b5', name: 'Saturday almond, copy 2' });
  expect(copyBatch(one, 'b9')).toBe(one);
});

test('copies of a name as long as may be are told apart', () => {
  const long = renameBatch(one, 'b1', 'n'.repeat(200));
  const copied = names(copyBatch(copyBatch(long, 'b1'), 'b1'));
  expect(new Set(copied).size).toBe(3);
  expect(copied.map(({ length }) => length)).toEqual([200, 200, 200]);
});

test('moving goes to a place, to the end beyond the ends, and nowhere for no number', () => {
  expect(ids(moveBatch(three, 'b1', 1))).toEqual(['b2', 'b1', 'b3']);
  expect(ids(moveBatch(three, 'b3', -5))).toEqual(['b3', 'b1', 'b2']);
  expect(ids(moveBatch(three, 'b1', 99))).toEqual(['b2', 'b3', 'b1']);
  expect(moveBatch(three, 'b2', 1)).toBe(three);
  expect(moveBatch(three, 'b2', Number.NaN)).toBe(three);
  expect(moveBatch(three, 'b9', 0)).toBe(three);
});

describe('the shape of a jar of one’s own', () => {
  const shaped = freeze(
    (['own@b2.neckHeight', 'own@b2.bodyDiameter', 'own@b20.neckHeight', 'almond.uptake'] as const).reduce(
      (document, key) => correct(document, key, 1.5, 'typed'),
      three,
    ),
  );
  const keys = (document: SheetDocument) => Object.keys(document.yours).toSorted();

  test('is its batch’s alone', () => {
    const own = { ...shaped, batches: shaped.batches.map((batch) => ({ ...batch, vessel: 'own' as const })) };
    const necks = own.batches.map((batch) => formulate(recipeOf(own, batch)).evaluation.c('neckHeight'));
    expect(necks).toEqual([jars.own.neckHeight.value, 1.5, jars.own.neckHeight.value]);
  });

  test('is copied with its batch', () => {
    const copied = copyBatch(shaped, 'b2');
    expect(keys(copied)).toEqual([...keys(shaped), 'own@b4.bodyDiameter', 'own@b4.neckHeight'].toSorted());
    expect(copied.yours['own@b4.neckHeight']).toEqual({ value: 1.5, how: 'typed' });
    expect(copyBatch(shaped, 'b1').yours).toBe(shaped.yours);
  });

  test('goes with its batch, and comes back with it', () => {
    expect(keys(removeBatch(shaped, 'b2'))).toEqual(['almond.uptake', 'own@b20.neckHeight']);
    expect(removeBatch(shaped, 'b1').yours).toEqual(shaped.yours);
    const last = removeBatch(correct(one, 'own@b1.neckHeight', 1.5, 'typed'), 'b1');
    expect([ids(last), keys(last)]).toEqual([['b1'], []]);
  });
});

describe('removeBatch', () => {
  test('takes the batch away', () => {
    expect(ids(removeBatch(three, 'b2'))).toEqual(['b1', 'b3']);
    expect(removeBatch(three, 'b9')).toBe(three);
  });

  test('puts a fresh batch in place of the last one', () => {
    const emptied = removeBatch(typeCell(one, 'b1', 'sourceMass', '300 g'), 'b1');
    expect(emptied.batches).toEqual([{ ...first(one), id: 'b1', name: 'Almonds' }]);
  });
});
