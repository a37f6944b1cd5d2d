import type { RowId } from '../../formula/recipe/order';
import { type Line, type LineId, lines, rowsOf } from './lines';

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
