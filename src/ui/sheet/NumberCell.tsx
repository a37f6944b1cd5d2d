import { type ReadonlySignal, useComputed } from '@preact/signals';
import type { Batch } from '../../batch/document';
import type { Store } from '../../batch/store';
import { labelOf } from '../../formula/labels';
import { isMeasuredRow, type NumericRowId } from '../../formula/order';
import { type Problem, severities } from '../../formula/problem';
import { numericRows } from '../../formula/sheet';
import { writeRow } from '../../formula/write-row';
import { leading } from '../jar/leading';
import { media, useMedia } from '../page/use-media';
import { CellBody, sayCell } from './CellBody';
import { CellEditor } from './CellEditor';
import { typesCharacter } from './grid-keys';
import type { Range } from './grid-range';
import { HowSo } from './HowSo';
import type { SheetState } from './sheet-state';
import { type CellPlace, useCell } from './use-cell';

interface Props {
  readonly id: NumericRowId;
  readonly batch: string;
  readonly store: Store;
  readonly state: SheetState;
  readonly column: number;
  readonly place: CellPlace;
  readonly range: ReadonlySignal<Range>;
}

/** A cell that is typed into: typing replaces, Enter or F2 opens what stands there, Escape restores, Delete gives it back. */
export function NumberCell({ id, batch: batchId, store, state, column, place, range }: Props) {
  const { element, here, picked } = useCell(id, batchId, state, range);
  const open = useComputed(() => state.editing.value?.row === id && state.editing.value.batch === batchId).value;
  const thumb = useMedia(media.thumb);
  const batch = store.batchOf(batchId).value;
  const kitchen = store.settings.value;
  if (batch === undefined) return null;
  const formulation = store.formulationOf(batch);
  const typed = typedText(id, batch);
  const body = { id, place, formulation, good: store.lastGoodOf(batch), kitchen, typed };
  const { status } = formulation.rows[id];
  const spot = { at: id, batch: batchId };

  const start = (text: string, touched: boolean) => {
    if (store.readOnly.value) return;
    if (numericRows[id].typed === 'never') state.working.value = spot;
    else state.editing.value = { row: id, batch: batchId, text, touched };
  };
  const openWithWhatStands = () => {
    const written = writeRow(formulation, id, kitchen);
    start(typed ?? (written === null ? '' : leading(written, kitchen.leads).first), false);
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
      ref={element}
      data-quantity={id}
      data-batch={batchId}
      data-spot={here}
      aria-colindex={column}
      aria-colspan={place === 'detail' ? 2 : undefined}
      aria-selected={here || picked}
      aria-label={`${labelOf(id)}, ${batch.name}: ${sayCell(body)}`}
      aria-describedby={`remarks-${id}-${batchId}`}
      aria-invalid={formulation.rows[id].problems.some(isOwnRefusal) ? 'true' : undefined}
      tabIndex={here ? 0 : -1}
      onFocus={(event) => event.target === event.currentTarget && !here && state.select(spot)}
      onKeyDown={press}
      onMouseDown={point}
      onClick={() => thumb && !open && openWithWhatStands()}
      onMouseEnter={(event) => event.buttons === 1 && state.editing.value === null && state.extendTo(spot, false)}
    >
      {open && !thumb ? <CellEditor id={id} batch={batchId} store={store} state={state} /> : <CellBody {...body} />}
      {here && !thumb && !open && <HowSo spot={spot} label={labelOf(id)} state={state} />}
    </div>
  );
}

/** What was typed into a cell or, in a row that is only measured, measured; null where nothing was. */
export function typedText(id: NumericRowId, batch: Batch): string | null {
  const given = batch.given.find(({ row }) => row === id);
  if (given !== undefined) return given.text;
  return numericRows[id].typed === 'measured' && isMeasuredRow(id) ? (batch.measured[id]?.text ?? null) : null;
}

/** What can't stand is wrong where it stands, not in the cells that wait for it. */
function isOwnRefusal({ code }: Problem): boolean {
  return code !== 'waits' && (severities[code] === 'refusal' || severities[code] === 'conflict');
}
