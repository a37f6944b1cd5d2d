import { useEffect, useRef } from 'preact/hooks';
import type { Batch } from '../batch/document';
import type { Store } from '../batch/store';
import { labelOf } from '../formula/labels';
import type { NumericRowId } from '../formula/order';
import { writeRow } from '../formula/write-row';
import { CellBody } from './Cell';
import { typesCharacter } from './grid-keys';
import { leading } from './leading';
import { sentences } from './sentences';
import type { SheetState } from './sheet-state';

interface Props {
  readonly id: NumericRowId;
  readonly batch: Batch;
  readonly store: Store;
  readonly state: SheetState;
}

/** A cell that is typed into: typing replaces, Enter or F2 opens what stands there, Escape restores, Delete gives it back. */
export function NumberCell({ id, batch, store, state }: Props) {
  const here = state.spot.value.line === id && state.spot.value.batch === batch.id;
  const editing = state.editing.value;
  const open = here && editing !== null && editing.row === id && editing.batch === batch.id;
  const settings = store.settings.value;
  const formulation = store.formulationOf(batch);
  const given = batch.given.find(({ row }) => row === id) ?? null;
  const unreadable = given === null ? null : (sentences.value?.cellProblem(id, given, settings) ?? null);
  const spot = { line: id, batch: batch.id };

  const start = (text: string, touched: boolean) => {
    state.editing.value = { row: id, batch: batch.id, text, touched };
  };
  const openWithWhatStands = () => {
    const written = writeRow(formulation, id, settings);
    start(given?.text ?? (written === null ? '' : leading(written, settings.leads).first), false);
  };
  const press = (event: KeyboardEvent) => {
    if (open) return;
    if (event.key === 'Enter' || event.key === 'F2') openWithWhatStands();
    else if (event.key === 'Delete' || event.key === 'Backspace') store.clearCell(batch.id, id);
    else if (typesCharacter(event)) start(event.key, true);
    else return;
    event.preventDefault();
  };
  const touch = () => {
    if (here && document.activeElement?.getAttribute('data-spot') === 'true') openWithWhatStands();
    else state.select(spot);
  };

  return (
    <td
      class="cell"
      role="gridcell"
      data-quantity={id}
      data-batch={batch.id}
      data-spot={here}
      aria-selected={here}
      aria-labelledby={`label-${id} ${id}-${batch.id}`}
      aria-invalid={formulation.rows[id].status === 'refused' ? 'true' : undefined}
      tabIndex={here ? 0 : -1}
      onFocus={() => state.select(spot)}
      onDblClick={openWithWhatStands}
      onKeyDown={press}
      onMouseDown={(event) => {
        if (!open && here && event.currentTarget === document.activeElement) {
          event.preventDefault();
          touch();
        }
      }}
    >
      {open ? (
        <Editor id={id} batch={batch} store={store} state={state} />
      ) : (
        <div id={`${id}-${batch.id}`}>
          <CellBody
            id={id}
            formulation={formulation}
            kitchen={settings}
            typed={given?.text ?? null}
            unreadable={unreadable}
          />
        </div>
      )}
    </td>
  );
}

function Editor({ id, batch, store, state }: Props) {
  const input = useRef<HTMLInputElement>(null);
  const done = useRef(false);
  const editing = state.editing.value;

  useEffect(() => {
    input.current?.focus();
    if (editing?.touched === false) input.current?.select();
  }, []);

  if (editing === null) return null;
  const close = (focusCell: boolean) => {
    done.current = true;
    state.editing.value = null;
    if (focusCell) state.wantsFocus.value = true;
  };
  const commit = (focusCell: boolean) => {
    if (done.current) return;
    const { touched, text } = editing;
    close(focusCell);
    if (touched) store.typeCell(batch.id, id, text);
  };

  return (
    <input
      class="editor"
      ref={input}
      aria-label={labelOf(id)}
      value={editing.text}
      enterkeyhint="done"
      autocomplete="off"
      autocapitalize="off"
      spellcheck={false}
      onInput={(event) => {
        state.editing.value = { ...editing, touched: true, text: event.currentTarget.value };
      }}
      onKeyDown={(event) => {
        if (event.key === 'Enter') commit(true);
        else if (event.key === 'Escape') close(true);
        else if (event.key === 'Tab') commit(false);
        event.stopPropagation();
        if (event.key === 'Enter' || event.key === 'Escape') event.preventDefault();
      }}
      onBlur={() => commit(false)}
    />
  );
}
