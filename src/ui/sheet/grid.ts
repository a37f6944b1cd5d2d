import type { RowId } from '../../formula/recipe/order';
import type { Place } from './grid-keys';
import type { Column, Spot } from './sheet-state';
import type { VisibleLine } from './visible-lines';

/** A row of the grid: what its label is, and the cell in each of the two columns of a batch, which may be the same. */
export interface GridRow {
  readonly label: Spot['at'];
  readonly how: RowId;
  readonly much: RowId;
}

/** The rows of the grid from the top: each line, and under it the details that show. */
export function gridRows(visible: readonly VisibleLine[]): readonly GridRow[] {
  return visible.flatMap(({ id, how, much, shown }): GridRow[] => [
    { label: `line:${id}`, how: how ?? much, much },
    ...shown.map((row) => ({ label: row, how: row, much: row })),
  ]);
}

/** Where a spot stands: column 0 is the label, then come *how* and *how much* of each batch. Null where it is not drawn. */
export function placeIn(rows: readonly GridRow[], batches: readonly string[], spot: Spot): Place | null {
  const row = rows.findIndex(({ label, how, much }) => [label, how, much].includes(spot.at));
  const found = rows[row];
  const batch = batches.indexOf(spot.batch);
  if (found === undefined || batch < 0) return null;
  const { how, much } = found;
  const column = spot.at.startsWith('line:') ? 'label' : how !== much && spot.at === much ? 'much' : spot.column;
  return { row, column: column === 'label' ? 0 : 2 * batch + (column === 'much' ? 2 : 1) };
}

/** The spot at a place; of a cell over both columns also in which of them, so that the keys leave it in the same one. */
export function spotAt(rows: readonly GridRow[], batches: readonly string[], place: Place): Spot | null {
  const row = rows[place.row];
  const batch = batches[Math.max(0, Math.ceil(place.column / 2) - 1)];
  if (row === undefined || batch === undefined) return null;
  const column: Column = place.column === 0 ? 'label' : place.column % 2 === 0 ? 'much' : 'how';
  const at = row[column];
  return at.startsWith('line:') || row.how !== row.much ? { at, batch } : { at, batch, column };
}

/** A cell over both columns of its batch is left at its far edge. */
export function edgeOf(rows: readonly GridRow[], from: Place, key: string): Place {
  const row = rows[from.row];
  if (row === undefined || row.how !== row.much) return from;
  const isLabel = from.column === 0 && row.label !== row.how;
  if (isLabel) return from;
  const first = from.column === 0 ? 1 : from.column - ((from.column + 1) % 2);
  if (key === 'ArrowRight') return { ...from, column: first + 1 };
  return key === 'ArrowLeft' ? { ...from, column: first } : from;
}
