import { type ReadonlySignal, useComputed } from '@preact/signals';
import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { RowId } from '../../formula/order';
import type { Range } from './grid-range';
import type { SheetState } from './sheet-state';

/** Where a cell stands in its line. */
export type CellPlace = 'how' | 'much' | 'detail';

interface Cell {
  readonly element: RefObject<HTMLDivElement | null>;
  readonly here: boolean;
  readonly picked: boolean;
}

/** Whether a cell is looked at or in the range, and its focus: it takes it itself, once it is drawn. */
export function useCell(row: RowId, batch: string, state: SheetState, range: ReadonlySignal<Range>): Cell {
  const element = useRef<HTMLDivElement>(null);
  const isHere = (): boolean => state.spot.value.at === row && state.spot.value.batch === batch;
  const here = useComputed(isHere).value;
  const picked = useComputed(() => {
    const { rows, batches } = range.value;
    return state.anchor.value !== state.spot.value && rows.includes(row) && batches.includes(batch);
  }).value;
  const wanted = useComputed(() => isHere() && state.wantsFocus.value).value;
  useLayoutEffect(() => {
    if (!here || !state.wantsFocus.peek()) return;
    state.wantsFocus.value = false;
    element.current?.focus({ preventScroll: true });
    element.current?.scrollIntoView?.({ block: 'nearest', inline: 'nearest' });
  }, [here, wanted]);
  return { element, here, picked };
}
