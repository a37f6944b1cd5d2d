import type { RowId } from '../../formula/order';
import { type Line, type LineId, lines, rowsOf } from './lines';
import type { Spot } from './sheet-state';

/** A line as it is drawn: its first row of cells, and the details that show under it. */
export interface VisibleLine extends Line {
  readonly id: LineId;
  readonly shown: readonly Line['details'][number][];
  /** Whether it was unfolded, so that all of its details show. */
  readonly open: boolean;
}

interface Asked {
  readonly unfolded: ReadonlySet<LineId>;
  readonly all: boolean;
  /** Details that show without being asked for: typed, measured, in trouble. */
  readonly telling: ReadonlySet<RowId>;
  /** Rows in which the batches differ, where only those are asked for. */
  readonly only: ReadonlySet<RowId> | null;
}

/** The lines to draw and which of their details. */
export function visibleLines({ unfolded, all, telling, only }: Asked): readonly VisibleLine[] {
  return lines
    .filter((line) => only === null || rowsOf(line).some((row) => only.has(row)))
    .map((line: Line & { readonly id: LineId }) => {
      const open = all || unfolded.has(line.id);
      const tells = (row: RowId): boolean => telling.has(row) || only?.has(row) === true;
      return { ...line, open, shown: open ? line.details : line.details.filter(tells) };
    });
}

/** The cells of the sheet by row and column: column 0 the label, then *how* and *how much* of each batch. */
export function gridOf(visible: readonly VisibleLine[], batches: readonly string[]): readonly (readonly Spot[])[] {
  const [first = ''] = batches;
  return visible.flatMap(({ id, how, much, shown }) => [
    [
      { at: `line:${id}` as const, batch: first },
      ...batches.flatMap((batch) => [
        { at: how ?? much, batch },
        { at: much, batch },
      ]),
    ],
    ...shown.map((row) => [
      { at: row, batch: first },
      ...batches.flatMap((batch) => [
        { at: row, batch },
        { at: row, batch },
      ]),
    ]),
  ]);
}

/** Where a spot stands in the grid; null where it is not drawn. */
export function placeIn(grid: readonly (readonly Spot[])[], spot: Spot): { row: number; column: number } | null {
  for (const [row, cells] of grid.entries()) {
    const isLabel = spot.at.startsWith('line:');
    const from = isLabel ? 0 : 1;
    const column = cells.findIndex(
      (cell, at) => at >= from && cell.at === spot.at && (isLabel || cell.batch === spot.batch),
    );
    if (column >= 0) return { row, column };
  }
  return null;
}
