import { type ReadonlySignal, useComputed } from '@preact/signals';
import type { Store } from '../../batch/store/store';
import type { RowId } from '../../formula/recipe/order';
import type { Range } from './grid-range';
import type { SheetState } from './sheet-state';

/** Where a cell stands in its line. */
export type CellPlace = 'how' | 'much' | 'detail';

/** What every cell of the sheet is drawn of. */
export interface CellProps<Id extends RowId> {
  readonly id: Id;
  readonly batch: string;
  readonly store: Store;
  readonly state: SheetState;
  readonly column: number;
  readonly place: CellPlace;
  readonly range: ReadonlySignal<Range>;
}

interface Cell {
  readonly here: boolean;
  readonly picked: boolean;
}

/** Whether a cell is looked at or in the range. */
export function useCell(row: RowId, batch: string, state: SheetState, range: ReadonlySignal<Range>): Cell {
  const here = useComputed(() => state.spot.value.at === row && state.spot.value.batch === batch).value;
  const picked = useComputed(() => {
    if (state.anchor.value === state.spot.value) return false;
    const { rows, batches } = range.value;
    return rows.includes(row) && batches.includes(batch);
  }).value;
  return { here, picked };
}
