import type { RefObject } from 'preact';
import type { Store } from '../../batch/store';
import type { RowId } from '../../formula/order';
import type { Range } from './grid-range';
import type { SheetState } from './sheet-state';
import { useClipboard } from './use-clipboard';

interface Props {
  readonly frame: RefObject<HTMLElement | null>;
  readonly store: Store;
  readonly state: SheetState;
  readonly range: () => Range;
  readonly rows: readonly RowId[];
  readonly batchIds: readonly string[];
}

/** Copying and pasting in the grid; draws nothing. */
export function Clipboard({ frame, store, state, range, rows, batchIds }: Props) {
  useClipboard(frame, store, state, range, rows, batchIds);
  return null;
}
