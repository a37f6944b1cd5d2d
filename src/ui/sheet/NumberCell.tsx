import { useComputed } from '@preact/signals';
import type { NumericRowId } from '../../formula/recipe/order';
import { numericRows } from '../../formula/rows/sheet';
import { labelOf } from '../../formula/words/labels';
import { leadingInShort } from '../../formula/words/leading';
import { writeRow } from '../../formula/words/write-row';
import { CellEditor } from './CellEditor';
import { typedText, viewCell } from './cell-view';
import { typesCharacter } from './grid-keys';
import { HowSo } from './HowSo';
import { useAlike } from './use-alike';
import { type CellProps, useCell } from './use-cell';

interface Props extends CellProps<NumericRowId> {
  /** Whether it is typed into at the thumb, not where it stands. */
  readonly thumb: boolean;
}

/**
 * A cell that is typed into: typing replaces, Enter or F2 opens what stands there, Escape restores, Delete gives it back.
 * It is drawn anew where what it says changes, and where it gains or loses the frame.
 */
export function NumberCell({ id, batch: batchId, store, state, column, place, range, thumb }: Props) {
  const { here, picked } = useCell(id, batchId, state, range);
  const open = useComputed(() => state.editing.value?.row === id && state.editing.value.batch === batchId).value;
  const view = useAlike(() => {
    const batch = store.batchOf(batchId).value;
    return batch === undefined ? null : viewCell(id, place, batch, store);
  }).value;
  if (view === null) return null;
  const { first, second, how, name, status, isWrong } = view;
  const spot = { at: id, batch: batchId };

  const start = (text: string, touched: boolean) => {
    if (store.readOnly.value) return;
    if (numericRows[id].typed === 'never') state.working.value = spot;
    else state.editing.value = { row: id, batch: batchId, text, touched };
  };
  const openWithWhatStands = () => {
    const batch = store.batchOf(batchId).value;
    if (batch === undefined) return;
    const kitchen = store.settings.value;
    const written = writeRow(store.formulationOf(batch), id, kitchen);
    start(typedText(id, batch) ?? (written === null ? '' : leadingInShort(written, kitchen.leads).first), false);
  };
  const press = (event: KeyboardEvent) => {
    if (open || event.target !== event.currentTarget || event.key === '?') return;
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
    } else if (here && event.currentTarget === document.activeElement && !thumb) {
      event.preventDefault();
      openWithWhatStands();
    } else state.select(spot);
  };

  return (
    <div
      class={`cell ${place} ${status}${picked ? ' picked' : ''}`}
      role="gridcell"
      data-quantity={id}
      data-batch={batchId}
      data-spot={here}
      aria-colindex={column}
      aria-colspan={place === 'detail' ? 2 : undefined}
      aria-selected={here || picked}
      aria-label={name}
      aria-describedby={`remarks-${id}-${batchId}`}
      aria-invalid={isWrong ? 'true' : undefined}
      tabIndex={here ? 0 : -1}
      onFocus={(event) => event.target === event.currentTarget && !here && state.select(spot)}
      onKeyDown={press}
      onMouseDown={point}
      onClick={() => thumb && !open && openWithWhatStands()}
      onMouseEnter={(event) => event.buttons === 1 && state.editing.value === null && state.extendTo(spot, false)}
    >
      {open && !thumb ? (
        <CellEditor id={id} batch={batchId} store={store} state={state} />
      ) : (
        <div class={`cell-body ${how}`}>
          <span class="lead">
            <span>{first}</span>
            {how === 'given' && pencil()}
            {how === 'measured' && <span class="tag">measured</span>}
          </span>
          {second !== null && <span class="second">{second}</span>}
        </div>
      )}
      {here && !thumb && !open && <HowSo spot={spot} label={labelOf(id)} state={state} />}
    </div>
  );
}

function pencil() {
  return (
    <svg class="pencil" viewBox="0 0 16 16" aria-hidden="true">
      <path d="m2 14 1-4L11 2l3 3-8 8-4 1Zm8-11 3 3" />
    </svg>
  );
}
