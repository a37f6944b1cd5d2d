import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Store } from '../../batch/store/store';
import type { NumericRowId } from '../../formula/recipe/order';
import type { SheetState } from './sheet-state';

interface Editor {
  readonly input: RefObject<HTMLInputElement | null>;
  readonly type: (text: string) => void;
  readonly commit: () => void;
  readonly press: (event: KeyboardEvent) => void;
  readonly leave: () => void;
}

/** An open cell's text: Enter, Tab and leaving commit, Escape restores, what was not touched commits nothing. */
export function useEditor(id: NumericRowId, batch: string, store: Store, state: SheetState): Editor {
  const input = useRef<HTMLInputElement>(null);
  const done = useRef(false);

  // Before the next key can come: one typed in between would be lost.
  useLayoutEffect(() => {
    input.current?.focus();
    if (state.editing.peek()?.touched === false) input.current?.select();
  }, []);

  const close = (focusCell: boolean) => {
    done.current = true;
    // While it is still there: a field that is taken away with the focus in it makes the browser lay out all anew.
    if (focusCell) input.current?.closest<HTMLElement>('[data-spot]')?.focus({ preventScroll: true });
    state.editing.value = null;
    if (focusCell) state.goTo({ at: id, batch });
  };
  const commit = (focusCell: boolean) => {
    const editing = state.editing.peek();
    if (done.current || editing === null) return;
    const { touched, text } = editing;
    close(focusCell);
    if (touched) store.typeCell(batch, id, text);
  };
  return {
    input,
    type(text) {
      const editing = state.editing.peek();
      if (editing !== null) state.editing.value = { ...editing, touched: true, text };
    },
    commit: () => commit(true),
    press(event) {
      if (event.key === 'Enter') commit(true);
      else if (event.key === 'Escape') close(true);
      else if (event.key === 'Tab') commit(false);
      event.stopPropagation();
      if (event.key === 'Enter' || event.key === 'Escape') event.preventDefault();
    },
    leave: () => commit(false),
  };
}
