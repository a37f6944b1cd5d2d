import { useComputed } from '@preact/signals';
import type { Batch } from '../batch/document';
import type { Store } from '../batch/store';
import { isMeasuredRow, type NumericRowId } from '../formula/order';
import type { NumericRow } from '../formula/row';
import { numericRows } from '../formula/sheet';
import { writeRow } from '../formula/write-row';
import { afterPaint } from './after-paint';
import { CellBody } from './Cell';
import { CellEditor } from './CellEditor';
import { typesCharacter } from './grid-keys';
import { leading } from './leading';
import type { SheetState } from './sheet-state';

interface Props {
  readonly id: NumericRowId;
  readonly batch: Batch;
  readonly store: Store;
  readonly state: SheetState;
  readonly column: number;
  /** Whether the cell is in the selected range. */
  readonly picked: boolean;
}

/** A cell that is typed into: typing replaces, Enter or F2 opens what stands there, Escape restores, Delete gives it back. */
export function NumberCell({ id, batch, store, state, column, picked }: Props) {
  const isHere = () => state.spot.value.line === id && state.spot.value.batch === batch.id;
  const here = useComputed(isHere).value;
  const open = useComputed(() => state.editing.value?.row === id && state.editing.value.batch === batch.id).value;
  const settings = store.settings.value;
  const formulation = store.formulationOf(batch);
  const { typed } = numericRows[id];
  const onlyMeasured = typed === 'measured' && isMeasuredRow(id) ? (batch.measured[id] ?? null) : null;
  const given = batch.given.find(({ row }) => row === id) ?? onlyMeasured;
  const unreadable = given === null ? null : (afterPaint.value?.cellProblem(id, given, settings) ?? null);
  const spot = { line: id, batch: batch.id };

  const start = (text: string, touched: boolean) => {
    if (typed === 'never') return;
    state.editing.value = { row: id, batch: batch.id, text, touched };
  };
  const openWithWhatStands = () => {
    const written = writeRow(formulation, id, settings);
    start(given?.text ?? (written === null ? '' : leading(written, settings.leads).first), false);
  };
  const press = (event: KeyboardEvent) => {
    if (open || event.target !== event.currentTarget) return;
    if (event.key === 'Enter' || event.key === 'F2') openWithWhatStands();
    else if (typesCharacter(event)) start(event.key, true);
    else return;
    event.preventDefault();
  };
  const point = (event: MouseEvent) => {
    if (open || (event.target instanceof Element && event.target.closest('button') !== null)) return;
    if (event.shiftKey) {
      event.preventDefault();
      state.extendTo(spot, true);
    } else if (here && event.currentTarget === document.activeElement) {
      event.preventDefault();
      openWithWhatStands();
    } else state.select(spot);
  };

  return (
    <td
      class={picked ? 'cell picked' : 'cell'}
      role="gridcell"
      data-quantity={id}
      data-batch={batch.id}
      data-spot={here}
      aria-colindex={column}
      aria-selected={picked}
      aria-labelledby={`label-${id} ${id}-${batch.id}`}
      aria-invalid={formulation.rows[id].status === 'refused' ? 'true' : undefined}
      tabIndex={here ? 0 : -1}
      onFocus={(event) => event.target === event.currentTarget && !isHere() && state.select(spot)}
      onKeyDown={press}
      onMouseDown={point}
      onMouseEnter={(event) => event.buttons === 1 && state.editing.value === null && state.extendTo(spot, false)}
    >
      {open ? (
        <CellEditor id={id} batch={batch} store={store} state={state} />
      ) : (
        <div id={`${id}-${batch.id}`}>
          <CellBody
            id={id}
            formulation={formulation}
            kitchen={settings}
            typed={given?.text ?? null}
            unreadable={unreadable}
            remark={given === null ? null : (afterPaint.value?.cellRemark(id, given, settings) ?? null)}
            onWayOut={(way) => store.takeWayOut(batch.id, way)}
            here={here}
            hint={here ? (hints[typed] ?? null) : null}
            compared={compared(id, batch, store, state)}
          />
        </div>
      )}
    </td>
  );
}

/** What can be done with a cell that can't simply be typed into, said while it is the current one. */
const hints: Readonly<Partial<Record<NumericRow['typed'], string>>> = {
  never: 'Can’t be typed; the figures behind it can be changed in its working.',
  measured: 'Takes only what was measured: what you type counts as that.',
};

/** How far this batch is from the one it is compared with. */
function compared(id: NumericRowId, batch: Batch, store: Store, state: SheetState): string | null {
  const comparedWith = state.comparedWith.value;
  if (comparedWith === null) return null;
  const other = store.document.value.batches.find((one) => one.id === comparedWith);
  if (other === undefined || other === batch) return null;
  const compareRow = afterPaint.value?.compareRow;
  return compareRow?.(id, store.formulationOf(batch), store.formulationOf(other), store.settings.value) ?? null;
}
