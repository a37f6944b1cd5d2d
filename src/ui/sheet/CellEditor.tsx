import type { Store } from '../../batch/store/store';
import type { NumericRowId } from '../../formula/recipe/order';
import { labelOf } from '../../formula/words/labels';
import type { SheetState } from './sheet-state';
import { useEditor } from './use-editor';

interface Props {
  readonly id: NumericRowId;
  readonly batch: string;
  readonly store: Store;
  readonly state: SheetState;
}

/** The open cell where it stands. */
export function CellEditor({ id, batch, store, state }: Props) {
  const { input, type, press, leave } = useEditor(id, batch, store, state);
  return (
    <input
      class="editor"
      ref={input}
      aria-label={labelOf(id)}
      aria-describedby={`remarks-${id}-${batch}`}
      value={state.editing.value?.text ?? ''}
      enterkeyhint="done"
      autocomplete="off"
      autocapitalize="off"
      spellcheck={false}
      onInput={(event) => type(event.currentTarget.value)}
      onKeyDown={press}
      onBlur={leave}
    />
  );
}
