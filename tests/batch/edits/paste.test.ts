import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { type Batch, recipeOf, type SheetDocument } from '../../../src/batch/document/document';
import { copyBatch } from '../../../src/batch/edits/batch-list';
import { copyRange, copyText } from '../../../src/batch/edits/copy';
import { typeCell } from '../../../src/batch/edits/edits';
import { type Pasted, pasteInto } from '../../../src/batch/edits/paste';
import { createStore } from '../../../src/batch/store/store';
import { formulate } from '../../../src/formula/engine/formulate';
import { type ChoiceRowId, choiceRows, type RowId, rowOrder } from '../../../src/formula/recipe/order';
import { parseTable } from '../../../src/interchange/table';
import { grains } from '../../../src/reference/grains';
import { jars } from '../../../src/reference/jars';
import { sources } from '../../../src/reference/sources';
import { sweeteners } from '../../../src/reference/sweeteners';
import { anyDocument, anyText, first, freeze } from '../any-edit';

const start = freeze(demo);

/** Pastes from a row of the first batch on. */
function paste(document: SheetDocument, from: RowId, lines: readonly (readonly string[])[]): Pasted {
  const work = (batch: Batch) => formulate(recipeOf(document, batch));
  return pasteInto(document, lines, {
    rows: rowOrder.slice(rowOrder.indexOf(from)),
    batches: document.batches.map(({ id }) => id),
    shown: (row, id) => {
      const batch = document.batches.find((one) => one.id === id);
      return batch === undefined ? '' : copyText(batch, work(batch), row, document.settings);
    },
  });
}

test('a copied range pasted where it came from changes nothing', () => {
  fc.assert(
    fc.property(anyDocument, fc.constantFrom(...rowOrder), (document, row) => {
      const rows = rowOrder.slice(rowOrder.indexOf(row));
      const work = (batch: Batch) => formulate(recipeOf(document, batch));
      const { lines } = parseTable(copyRange(document.batches, rows, work, document.settings));
      const pasted = paste(freeze(document), row, lines);
      expect(pasted).toEqual({ document, refused: [], asking: [], cells: 0, outside: 0 });
      expect(pasted.document).toBe(document);
    }),
  );
});

describe('a paste', () => {
  test('types down the rows and across the batches', () => {
    const two = copyBatch(start, 'b1');
    const { document, refused, cells } = paste(two, 'sourceMass', [['200 g', '8 oz'], ['1 L'], ['', '9 h']]);
    expect(document).toEqual(
      [
        ['b1', 'sourceMass', '200 g'],
        ['b2', 'sourceMass', '8 oz'],
        ['b1', 'soakWater', '1 L'],
        ['b2', 'soakTime', '9 h'],
      ].reduce((typed, [id = '', row, text = '']) => {
        const at = rowOrder.find((one) => one === row);
        return at === 'sourceMass' || at === 'soakWater' || at === 'soakTime' ? typeCell(typed, id, at, text) : typed;
      }, two),
    );
    expect([refused, cells]).toEqual([[], 4]);
  });

  test('leaves a blank cell as it is, and what lies beyond the sheet out', () => {
    const typed = typeCell(start, 'b1', 'servings', '4');
    const { document, cells } = paste(typed, 'bottleSugarMost', [['', '9'], [' '], ['7'], ['8']]);
    expect([document, cells]).toEqual([typed, 0]);
  });

  test('reports what can’t be read with its place, and takes the rest', () => {
    const { document, refused, cells } = paste(start, 'sourceMass', [['some'], ['700 mL'], ['a while']]);
    expect(refused).toEqual([
      { row: 'sourceMass', batchId: 'b1', text: 'some', why: 'unreadable' },
      { row: 'soakTime', batchId: 'b1', text: 'a while', why: 'unreadable' },
    ]);
    expect(cells).toBe(1);
    expect(document).toEqual(typeCell(start, 'b1', 'soakWater', '700 mL'));
  });

  test('puts what may be read in several ways into its cell, which asks', () => {
    const { document, refused, asking, cells } = paste(start, 'sourceMass', [['1,250 kg'], ['1,5 L']]);
    expect(refused).toEqual([]);
    expect(asking).toEqual([{ row: 'sourceMass', batchId: 'b1', text: '1,250 kg' }]);
    expect(cells).toBe(2);
    expect(first(document).given).toMatchObject([
      { row: 'sourceMass', text: '1,250 kg', amount: null },
      { row: 'soakWater', text: '1,5 L', amount: 1500 },
    ]);
  });

  test('reports a row that can’t be typed', () => {
    expect(paste(start, 'blenderLoads', [['3']])).toEqual({
      document: start,
      refused: [{ row: 'blenderLoads', batchId: 'b1', text: '3', why: 'notTyped' }],
      asking: [],
      cells: 0,
      outside: 0,
    });
  });

  test('takes no copied expectation for a measurement', () => {
    const { document, refused } = paste(start, 'pulpMass', [['120 g']]);
    expect(document).toBe(start);
    expect(refused).toMatchObject([{ row: 'pulpMass', text: '120 g', why: 'onlyMeasured' }]);
  });

  test('counts what is beyond the last row and the last batch', () => {
    expect(paste(start, 'bottleLimit', [['4', '5'], [''], [''], ['6']])).toMatchObject({ cells: 1, outside: 2 });
  });

  test('is one step, which undo takes back', () => {
    const store = createStore(start);
    const { document } = paste(start, 'source', [['Cashews'], ['200 g'], ['1 L']]);
    store.takeEdit(document, 'Paste 3 cells');
    expect(store.undoName.value).toBe('Paste 3 cells');
    store.undo();
    expect(store.document.value).toEqual(start);
    expect(store.undoName.value).toBeNull();
  });
});

describe('a choice', () => {
  const tables = { vessel: jars, source: sources, sweetener: sweeteners, grains };
  const chosen = (batch: Batch, row: ChoiceRowId) => (row === 'sweetener' ? batch.sweetener[0]?.id : batch[row]);

  test.each(choiceRows)('is pasted by its name, in any case, and by its id: %s', (row) => {
    for (const [id, { name }] of Object.entries(tables[row])) {
      for (const text of [name, name.toUpperCase(), ` ${name} `]) {
        const { document, refused } = paste(start, row, [[text]]);
        expect([chosen(first(document), row), refused], text).toEqual([id, []]);
      }
    }
  });

  test.each(['Sawdust', 'constructor', '__proto__', 'toString', 'hasOwnProperty'])(
    'that is not on the menu is reported: %s',
    (text) => {
      for (const row of choiceRows) {
        expect(paste(start, row, [[text]])).toEqual({
          document: start,
          refused: [{ row, batchId: 'b1', text, why: 'noSuchChoice' }],
          asking: [],
          cells: 0,
          outside: 0,
        });
      }
    },
  );
});

describe('hostile text', () => {
  test.each([
    'x'.repeat(10_000_000),
    '9'.repeat(10_000_000),
    '"'.repeat(10_000_000),
    '=HYPERLINK("a")',
    '\u202E170 g\u202C',
    '\u0000170 g',
    '__proto__',
  ])('goes nowhere, or is kept as typed (%#)', (text) => {
    const { lines } = parseTable(text);
    for (const row of ['source', 'sourceMass', 'blenderLoads', 'pulpMass'] as const) {
      const { document, refused } = paste(start, row, lines);
      if (document === start) expect(refused.length, row).toBeGreaterThan(0);
      else expect(first(document), row).not.toEqual(first(start));
      expect(Object.getPrototypeOf(first(document))).toBe(Object.prototype);
    }
  });

  test('never makes a paste throw, nor change a cell that it is not pasted into', () => {
    fc.assert(
      fc.property(
        anyDocument,
        fc.constantFrom(...rowOrder),
        fc.array(fc.array(anyText, { maxLength: 4 }), { maxLength: 5 }),
        (document, row, lines) => {
          const { document: pasted, refused, cells } = paste(freeze(document), row, lines);
          const texts = lines.flat();
          expect(cells + refused.length).toBeLessThanOrEqual(texts.length);
          for (const refusal of refused) expect(texts).toContain(refusal.text);
          const rows: readonly string[] = rowOrder.slice(rowOrder.indexOf(row)).slice(0, lines.length);
          for (const [at, batch] of pasted.batches.entries()) {
            const others = (given: Batch['given'] = []) => given.filter((cell) => !rows.includes(cell.row));
            expect(others(batch.given)).toEqual(others(document.batches[at]?.given));
          }
        },
      ),
    );
  });
});
