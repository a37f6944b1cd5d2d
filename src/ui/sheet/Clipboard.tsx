import type { ReadonlySignal } from '@preact/signals';
import type { RefObject } from 'preact';
import type { Store } from '../../batch/store/store';
import type { RowId } from '../../formula/recipe/order';
import type { Range } from './grid-range';
import type { SheetState } from './sheet-state';
import { useClipboard } from './use-clipboard';

interface Props {
  readonly frame: RefObject<HTMLElement | null>;
  readonly store: Store;
  readonly state: SheetState;
  readonly range: ReadonlySignal<Range>;
  readonly rows: ReadonlySignal<readonly RowId[]>;
  readonly batchIds: ReadonlySignal<readonly string[]>;
}

/** Copying and pasting in the grid; draws nothing. */
export default function Clipboard({ frame, store, state, range, rows, batchIds }: Props) {
  useClipboard(frame, store, state, range, rows, batchIds);
  return null;
}
