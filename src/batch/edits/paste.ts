import { isRow } from '../../formula/engine/evaluate';
import type { ChoiceRowId, RowId } from '../../formula/recipe/order';
import { numericRows } from '../../formula/rows/sheet';
import { grains } from '../../reference/grains';
import { jars } from '../../reference/jars';
import { sources } from '../../reference/sources';
import { sweeteners } from '../../reference/sweeteners';
import type { SheetDocument } from '../document/document';
import { isBlank, readCell, textsMeant } from '../reading/read-cell';
import { choose, typeCell } from './edits';

/** Where a paste goes: the rows downwards and the batches to the right of the selected cell, and what cells show. */
export interface PasteTarget {
  readonly rows: readonly RowId[];
  readonly batches: readonly string[];
  /** The text a cell would be copied as: pasting that back changes nothing. */
  readonly shown: (row: RowId, batchId: string) => string;
}

/** A pasted text that could not go into its cell. */
export interface Refusal {
  readonly row: RowId;
  readonly batchId: string;
  readonly text: string;
  readonly why: 'unreadable' | 'notTyped' | 'onlyMeasured' | 'noSuchChoice';
}

/** A pasted text that may be read in several ways: it stands in its cell, which asks. */
export type Asking = Omit<Refusal, 'why'>;

export interface Pasted {
  readonly document: SheetDocument;
  readonly refused: readonly Refusal[];
  readonly asking: readonly Asking[];
  /** How many cells changed. */
  readonly cells: number;
  /** How many texts had no cell to go to. */
  readonly outside: number;
}

/**
 * Types each pasted text into its cell, from the target's first cell on. What a cell shows already, and what is blank,
 * leaves it as it is; what can't be read goes nowhere and is reported with its place, while the rest goes in. What may
 * be read in several ways goes in as it is, and its cell asks. Texts beyond the sheet are counted and left out.
 */
export function pasteInto(
  document: SheetDocument,
  lines: readonly (readonly string[])[],
  { rows, batches, shown }: PasteTarget,
): Pasted {
  const refused: Refusal[] = [];
  const asking: Asking[] = [];
  let pasted = document;
  let cells = 0;
  let outside = 0;
  for (const [down, line] of lines.entries()) {
    for (const [across, text] of line.entries()) {
      const row = rows[down];
      const batchId = batches[across];
      if (isBlank(text)) continue;
      if (row === undefined || batchId === undefined) {
        outside += 1;
        continue;
      }
      if (text === shown(row, batchId)) continue;
      const why = refusalOf(row, text, document);
      if (why !== null) {
        refused.push({ row, batchId, text, why });
        continue;
      }
      const next = isRow(row) ? typeCell(pasted, batchId, row, text) : chooseByName(pasted, batchId, row, text);
      if (next !== pasted) cells += 1;
      if (isRow(row) && textsMeant(row, text, document.settings).length > 0) asking.push({ row, batchId, text });
      pasted = next;
    }
  }
  return { document: pasted, refused, asking, cells, outside };
}

function refusalOf(row: RowId, text: string, { settings }: SheetDocument): Refusal['why'] | null {
  if (!isRow(row)) return findChoice(row, text) === null ? 'noSuchChoice' : null;
  const { typed } = numericRows[row];
  if (typed === 'never') return 'notTyped';
  // A copied expectation is no measurement.
  if (typed === 'measured') return 'onlyMeasured';
  const isRead = readCell(row, text, settings).amount !== null || textsMeant(row, text, settings).length > 0;
  return isRead ? null : 'unreadable';
}

const tables: Readonly<Record<ChoiceRowId, Readonly<Record<string, { readonly name: string }>>>> = {
  vessel: jars,
  source: sources,
  sweetener: sweeteners,
  grains,
};

function findChoice(row: ChoiceRowId, text: string): string | null {
  const wanted = text.trim().toLowerCase();
  const found = Object.entries(tables[row]).find(([id, { name }]) => id === wanted || name.toLowerCase() === wanted);
  return found?.[0] ?? null;
}

function chooseByName(document: SheetDocument, batchId: string, row: ChoiceRowId, text: string): SheetDocument {
  const id = findChoice(row, text);
  return id === null ? document : choose(document, batchId, row, id);
}
