import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { recipeOf, type SheetDocument } from '../../../src/batch/document/document';
import { copyBatch } from '../../../src/batch/edits/batch-list';
import { copyRange, copyText } from '../../../src/batch/edits/copy';
import { typeCell } from '../../../src/batch/edits/edits';
import { readCell } from '../../../src/batch/reading/read-cell';
import { isRow } from '../../../src/formula/engine/evaluate';
import { formulate } from '../../../src/formula/engine/formulate';
import { type RowId, rowOrder } from '../../../src/formula/recipe/order';
import { numericRows } from '../../../src/formula/rows/sheet';
import { copyCell } from '../../../src/formula/words/copy-cell';
import { parseTable } from '../../../src/interchange/table';
import { agrees } from '../../results';
import { anyDocument } from '../any-edit';

function copyAll(document: SheetDocument, rows: readonly RowId[]): string {
  return copyRange(document.batches, rows, (batch) => formulate(recipeOf(document, batch)), document.settings);
}

describe('a copied range', () => {
  test('is a line a row and a tab between batches', () => {
    const two = copyBatch(typeCell(demo, 'b1', 'sourceMass', '200 g'), 'b1');
    const typed = typeCell(two, 'b2', 'sourceMass', '8 oz');
    expect(copyAll(typed, ['source', 'sourceMass'])).toBe('Almonds, whole\tAlmonds, whole\n200 g\t8 oz');
  });

  test('holds what was typed, as typed, read or not', () => {
    for (const text of ['1½ c', '2 x 150g', 'some almonds', '=A1']) {
      expect(copyAll(typeCell(demo, 'b1', 'sourceMass', text), ['sourceMass'])).toBe(text);
    }
  });

  test('keeps each cell in its place, whatever was typed', () => {
    expect(copyAll(typeCell(demo, 'b1', 'sourceMass', '1\t2\r\n3'), ['sourceMass'])).toBe('1 2  3');
    expect(copyAll(typeCell(demo, 'b1', 'sourceMass', '"6" oz'), ['sourceMass'])).toBe('"""6"" oz"');
  });

  test('reads back as the texts of its cells', () => {
    fc.assert(
      fc.property(anyDocument, (document) => {
        const { lines, isCut } = parseTable(copyAll(document, rowOrder));
        const shown = rowOrder.map((row) =>
          document.batches.map((batch) =>
            copyText(batch, formulate(recipeOf(document, batch)), row, document.settings),
          ),
        );
        expect(lines).toEqual(shown);
        expect(isCut).toBe(false);
      }),
    );
  });

  test('of an amount comes back the same, however this cook reads and writes', () => {
    fc.assert(
      fc.property(anyDocument, (document) => {
        for (const batch of document.batches) {
          const formulation = formulate(recipeOf(document, batch));
          for (const row of rowOrder.filter(isRow)) {
            const { value } = formulation.rows[row];
            const { typed, kind } = numericRows[row];
            if (typeof value !== 'number' || typed === 'never') continue;
            const cell = readCell(row, copyCell(formulation, row, document.settings), document.settings);
            expect([cell.kind, agrees(cell.amount ?? Number.NaN, value)], `${row} ${cell.text}`).toEqual([kind, true]);
          }
        }
      }),
    );
  });

  test('of nothing is empty', () => {
    expect(copyRange([], ['source'], () => expect.fail('there is no batch'), demo.settings)).toBe('');
    expect(copyAll(demo, [])).toBe('');
  });
});
