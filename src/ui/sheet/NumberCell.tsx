import { useComputed } from '@preact/signals';
import type { Batch } from '../../batch/document';
import type { SheetStore } from '../../batch/sheet-store';
import { isMeasuredRow, type NumericRowId } from '../../formula/order';
import { numericRows } from '../../formula/sheet';
import { writeRow } from '../../formula/write-row';
import { leading } from '../jar/leading';
import { afterPaint } from '../page/after-paint';
import { CellBody } from './Cell';
import { CellEditor } from './CellEditor';
import { typesCharacter } from './grid-keys';
import { placeOf, type SheetState } from './sheet-state';

interface Props {
  readonly id: NumericRowId;
  readonly batch: Batch;
  readonly store: SheetStore;
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
  const waiting = store.waiting.value[placeOf(batch.id, id)];
  const later = afterPaint.value;
  const spot = { line: id, batch: batch.id };

  const start = (text: string, touched: boolean) => {
    if (typed === 'never' || store.readOnly.value) return;
    state.editing.value = { row: id, batch: batch.id, text, touched };
  };
  const openWithWhatStands = () => {
    const written = writeRow(formulation, id, settings);
    start(waiting ?? given?.text ?? (written === null ? '' : leading(written, settings.leads).first), false);
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
          {waiting !== undefined ? (
            <WaitingText text={waiting} />
          ) : (
            <CellBody id={id} formulation={formulation} kitchen={settings} typed={given?.text ?? null}>
              {later !== null && (
                <later.NumberRemarks
                  id={id}
                  given={given}
                  batch={batch}
                  store={later.withEdits(store)}
                  state={state}
                  here={here}
                />
              )}
            </CellBody>
          )}
        </div>
      )}
    </td>
  );
}

/** What was typed while the page can't take it yet. */
function WaitingText({ text }: { text: string }) {
  return (
    <div class="cell-body">
      <span class="lead">{text.trim() === '' ? '–' : text}</span>
      <span class="second">kept, and taken as soon as the rest of the page is there</span>
    </div>
  );
}
