import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Batch } from '../../batch/document';
import type { SheetStore } from '../../batch/sheet-store';
import { labelOf } from '../../formula/labels';
import type { NumericRowId } from '../../formula/order';
import { placeOf, type SheetState } from './sheet-state';

interface Props {
  readonly id: NumericRowId;
  readonly batch: Batch;
  readonly store: SheetStore;
  readonly state: SheetState;
}

/** The open cell. Enter, Tab and leaving commit; Escape restores; what was not touched commits nothing. */
export function CellEditor({ id, batch, store, state }: Props) {
  const input = useRef<HTMLInputElement>(null);
  const done = useRef(false);
  const editing = state.editing.value;

  // Before the next key can come: one typed in between would be lost.
  useLayoutEffect(() => {
    input.current?.focus();
    if (editing?.touched === false) input.current?.select();
  }, []);

  if (editing === null) return null;
  const close = (focusCell: boolean) => {
    done.current = true;
    if (focusCell) input.current?.closest('td')?.focus();
    state.editing.value = null;
  };
  const commit = (focusCell: boolean) => {
    if (done.current) return;
    const { touched, text } = state.editing.value ?? editing;
    close(focusCell);
    if (touched) store.edit((edits) => edits.typeCell(batch.id, id, text), { [placeOf(batch.id, id)]: text });
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
