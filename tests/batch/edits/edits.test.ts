import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import type { SheetDocument } from '../../../src/batch/document/document';
import { hottestHeat, longestHeat } from '../../../src/batch/document/document-limits';
import * as edits from '../../../src/batch/edits/edits';
import type { NumericRowId } from '../../../src/formula/recipe/order';
import { numericRowIds } from '../../batches';
import { anyChange, anyDocument, anyText, first, freeze } from '../any-edit';

const start = freeze(demo);

function type(document: SheetDocument, row: NumericRowId, text: string): SheetDocument {
  return edits.typeCell(document, 'b1', row, text);
}

function given(document: SheetDocument): readonly string[] {
  return first(document).given.map(({ row, text }) => `${row}: ${text}`);
}

test('no edit changes the document it is made on', () => {
  fc.assert(
    fc.property(anyDocument, anyChange, (document, change) => {
      const before = JSON.stringify(document);
      change(freeze(document));
      expect(JSON.stringify(document)).toBe(before);
    }),
  );
});

test('an edit leaves the batches that it is not about as the same objects', () => {
  const two = { ...start, batches: [first(start), { ...first(start), id: 'b2' }] };
  const typed = edits.typeCell(two, 'b2', 'sourceMass', '300 g');
  expect(typed.batches[0]).toBe(two.batches[0]);
  expect(typed.batches[1]).not.toBe(two.batches[1]);
});

test('an edit of a batch that is not there changes nothing', () => {
  expect(edits.typeCell(start, 'b9', 'sourceMass', '300 g')).toBe(start);
});

describe('typeCell', () => {
  test('keeps the text and how it was read', () => {
    const typed = type(start, 'sourceMass', ' 1½ kg');
    expect(first(typed).given).toEqual([{ row: 'sourceMass', text: ' 1½ kg', amount: 1500, kind: 'mass' }]);
  });

  test('keeps the order of typing, and a row typed anew its place', () => {
    const typed = type(type(type(start, 'sourceMass', '300 g'), 'milkVolume', '1 L'), 'sourceMass', '200 g');
    expect(given(typed)).toEqual(['sourceMass: 200 g', 'milkVolume: 1 L']);
  });

  test('gives the same document for an unchanged text, read or not', () => {
    fc.assert(
      fc.property(anyDocument, fc.constantFrom(...numericRowIds), anyText, (document, row, text) => {
        const { id } = first(document);
        const typed = edits.typeCell(document, id, row, text);
        expect(edits.typeCell(typed, id, row, text)).toBe(typed);
      }),
    );
  });

  test('clears a row by a blank text', () => {
    expect(given(type(type(start, 'sourceMass', '300 g'), 'sourceMass', ' '))).toEqual([]);
    expect(type(start, 'sourceMass', '')).toBe(start);
  });

  test('measures a row that is only measured', () => {
    const typed = type(start, 'pulpMass', '120 g');
    expect(first(typed)).toMatchObject({ given: [], measured: { pulpMass: { text: '120 g', amount: 120 } } });
    expect(first(type(typed, 'pulpMass', '')).measured).toEqual({});
  });

  test('leaves a row that can’t be typed as it is', () => {
    expect(type(start, 'blenderLoads', '3')).toBe(start);
  });

  test('keeps that a mass is what there is when the mass is typed anew', () => {
    const onHand = edits.setUse(type(start, 'grainMass', '55 g'), 'b1', 'grainMass', 'onHand');
    expect(first(type(onHand, 'grainMass', '60 g')).given).toMatchObject([{ text: '60 g', amount: 60, use: 'onHand' }]);
  });
});

test('clearing gives a row back and leaves the others', () => {
  const typed = type(type(start, 'sourceMass', '300 g'), 'milkVolume', '1 L');
  expect(given(edits.clearCell(typed, 'b1', 'sourceMass'))).toEqual(['milkVolume: 1 L']);
  expect(edits.clearCell(start, 'b1', 'sourceMass')).toBe(start);
  expect(first(edits.clearCell(type(start, 'finalPH', '4.4'), 'b1', 'finalPH')).measured).toEqual({});
});

describe('measureCell', () => {
  test('stands beside what was typed', () => {
    const measured = edits.measureCell(type(start, 'milkVolume', '1 L'), 'b1', 'milkVolume', '940 mL');
    expect(given(measured)).toEqual(['milkVolume: 1 L']);
    expect(first(measured).measured.milkVolume).toEqual({ text: '940 mL', amount: 940, kind: 'volume' });
  });

  test('gives the same document for an unchanged text', () => {
    const measured = edits.measureCell(start, 'b1', 'milkVolume', '940 mL');
    expect(edits.measureCell(measured, 'b1', 'milkVolume', '940 mL')).toBe(measured);
  });

  test('is forgotten by a blank text', () => {
    const measured = edits.measureCell(start, 'b1', 'milkVolume', '940 mL');
    expect(edits.measureCell(measured, 'b1', 'milkVolume', ' ')).toEqual(start);
    expect(edits.clearMeasured(start, 'b1', 'milkVolume')).toBe(start);
  });
});

describe('choose', () => {
  test('switches the choice and keeps everything typed', () => {
    const typed = type(start, 'sourceMass', '300 g');
    const chosen = edits.choose(edits.choose(typed, 'b1', 'source', 'hemp'), 'b1', 'vessel', 'twoLitre');
    // The example’s name speaks of almonds; a name of the cook’s own stays.
    expect(first(chosen)).toEqual({ ...first(typed), name: 'Hemp hearts', source: 'hemp', vessel: 'twoLitre' });
    expect(first(edits.choose(start, 'b1', 'grains', 'milk')).grains).toBe('milk');
  });

  test('puts one sweetener in place of a blend', () => {
    const blended = edits.blendSweeteners(start, 'b1', [
      { id: 'honey', share: 0.5 },
      { id: 'caneWhite', share: 0.5 },
    ]);
    expect(first(edits.choose(blended, 'b1', 'sweetener', 'honey')).sweetener).toEqual([{ id: 'honey', share: 1 }]);
  });

  test.each([
    ['source', 'almond'],
    ['source', 'gravel'],
    ['source', 'constructor'],
    ['vessel', 'almond'],
    ['sweetener', 'caneWhite'],
    ['sweetener', 'honey + caneWhite'],
    ['grains', '__proto__'],
  ] as const)('changes nothing for %s: %s', (row, id) => {
    expect(edits.choose(start, 'b1', row, id)).toBe(start);
  });
});

test('a blend that is empty or has an impossible share changes nothing; one that is off is kept', () => {
  expect(edits.blendSweeteners(start, 'b1', [])).toBe(start);
  expect(edits.blendSweeteners(start, 'b1', [{ id: 'honey', share: Number.NaN }])).toBe(start);
  expect(edits.blendSweeteners(start, 'b1', [{ id: 'honey', share: -0.1 }])).toBe(start);
  expect(first(edits.blendSweeteners(start, 'b1', [{ id: 'honey', share: 0.9 }])).sweetener).toEqual([
    { id: 'honey', share: 0.9 },
  ]);
});

test('what there is can be said of a typed mass, and taken back', () => {
  const typed = type(start, 'grainMass', '55 g');
  const onHand = edits.setUse(typed, 'b1', 'grainMass', 'onHand');
  expect(first(onHand).given[0]?.use).toBe('onHand');
  expect(edits.setUse(onHand, 'b1', 'grainMass', undefined)).toEqual(typed);
  expect(edits.setUse(typed, 'b1', 'grainMass', undefined)).toBe(typed);
  expect(edits.setUse(start, 'b1', 'grainMass', 'onHand')).toBe(start);
});

test('a heat step is set once and left out again', () => {
  const heat = { what: 'milk', temperature: 80, minutes: 10 } as const;
  const heated = edits.setHeat(start, 'b1', heat);
  expect(first(heated).heat).toEqual(heat);
  expect(edits.setHeat(heated, 'b1', { ...heat })).toBe(heated);
  expect(edits.setHeat(heated, 'b1', null)).toEqual(start);
  expect(edits.setHeat(start, 'b1', null)).toBe(start);
  expect(edits.setHeat(start, 'b1', { ...heat, minutes: Number.NaN })).toBe(start);
});

describe('correct', () => {
  test('keeps the figure with how it came, until it is given back', () => {
    const corrected = edits.correct(start, 'almond.uptake', 0.9, 'typed');
    expect(corrected.yours).toEqual({ 'almond.uptake': { value: 0.9, how: 'typed' } });
    expect(edits.keepMeasured(corrected, 'almond.uptake', 0.8).yours['almond.uptake']).toEqual({
      value: 0.8,
      how: 'measured',
    });
    expect(edits.giveBack(corrected, 'almond.uptake')).toEqual(start);
  });

  test.each<[string, number]>([
    ['almond.uptake', 99],
    ['almond.uptake', Number.NaN],
    ['almond.colour', 1],
    ['gravel.uptake', 1],
    ['kitchen.uptake', 1],
    ['constructor.uptake', 1],
    ['almond.uptake.more', 1],
    ['__proto__', 1],
  ])('changes nothing for %s: %d', (key, value) => {
    expect(edits.correct(start, key, value, 'typed')).toBe(start);
  });

  test('the same figure again, or giving back what was not taken, changes nothing', () => {
    const corrected = edits.correct(start, 'kitchen.servingUsual', 300, 'typed');
    expect(edits.correct(corrected, 'kitchen.servingUsual', 300, 'typed')).toBe(corrected);
    expect(edits.giveBack(start, 'toString')).toBe(start);
  });
});

test('a key names its coefficient, of a batch’s own jar and source too', () => {
  expect(edits.coefficientAt('own@b1.uptake')).toBe('uptake');
  expect(edits.coefficientAt('own@b1.neckHeight')).toBe('neckHeight');
  for (const key of ['own@b1.usualDose', 'quartWide@b1.neckHeight', 'own@.neckHeight', 'own@b1.x.neckHeight'])
    expect(edits.coefficientAt(key), key).toBeNull();
});

describe('clearCells', () => {
  const both = ['b1', 'b2'];
  const two = { ...start, batches: [first(start), { ...first(start), id: 'b2' }] };

  test('clears every row of every batch that is named, and no other', () => {
    const rows = ['sourceMass', 'pulpMass', 'servings'] as const;
    let typed: SheetDocument = two;
    for (const id of both) {
      for (const row of [...rows, 'soakTime'] as const) typed = edits.typeCell(typed, id, row, '5');
    }
    const cleared = edits.clearCells(typed, ['b2'], rows);
    expect(cleared.batches[0]).toBe(typed.batches[0]);
    expect(cleared.batches[1]).toMatchObject({ given: [{ row: 'soakTime' }], measured: {} });
  });

  test('gives the same document where nothing was typed', () => {
    expect(edits.clearCells(two, both, ['sourceMass', 'servings'])).toBe(two);
  });
});

test('a heat step is above nothing, and no hotter or longer than a saved one may be', () => {
  const heat = (temperature: number, minutes: number) =>
    first(edits.setHeat(demo, 'b1', { what: 'milk', temperature, minutes })).heat;
  expect(heat(hottestHeat, longestHeat)).toEqual({ what: 'milk', temperature: 100, minutes: 1000 });
  for (const refused of [heat(-0, 10), heat(80, 0), heat(101, 10), heat(80, 1e300), heat(Number.NaN, 1)]) {
    expect(refused).toBeNull();
  }
});
