import { isRow } from '../engine/evaluate';
import type { Formulation } from '../engine/formulate';
import type { NumericRowId, RowId } from '../recipe/order';
import { labelOf } from '../words/labels';
import type { Change } from './typed-change';

/** A way out of a problem, as a button: it does what it says and nothing else. */
export interface WayOut {
  readonly label: string;
  readonly changes: readonly Change[];
}

/** The rows that are typed into, in the order of typing. */
export function typedRows({ recipe }: Formulation): readonly NumericRowId[] {
  return recipe.given.map(({ row }) => row);
}

/** Clearing each of these rows, of those that are typed. */
export function letGo(rows: readonly RowId[], formulation: Formulation): readonly WayOut[] {
  const typed = typedRows(formulation);
  return [...new Set(rows)]
    .filter((row): row is NumericRowId => isRow(row) && typed.includes(row))
    .map((row) => ({ label: `Clear “${labelOf(row)}”`, changes: [{ do: 'clear', row }] }));
}
