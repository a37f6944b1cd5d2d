import type { ComponentChildren } from 'preact';
import type { Store } from '../../batch/store/store';
import { isRow } from '../../formula/engine/evaluate';
import type { NumericRowId } from '../../formula/recipe/order';
import { numericRows } from '../../formula/rows/sheet';
import { labelOf } from '../../formula/words/labels';
import { Remarks } from './RemarksLater';
import type { SheetState } from './sheet-state';
import { fractionKeys, keypadFor, unitKeys } from './unit-keys';
import { useEditor } from './use-editor';
import './thumb-editor.css';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
}

/** The open cell at the thumb: its text, the units of its kind and the usual fractions within reach, and its working. */
export default function ThumbEditor({ store, state }: Props) {
  const editing = state.editing.value;
  if (editing === null || !isRow(editing.row)) return null;
  const batch = store.batchOf(editing.batch).value;
  if (batch === undefined) return null;
  return (
    <Editor
      key={`${editing.batch} ${editing.row}`}
      id={editing.row}
      batch={editing.batch}
      name={batch.name}
      store={store}
      state={state}
    />
  );
}

interface EditorProps extends Props {
  readonly id: NumericRowId;
  readonly batch: string;
  readonly name: string;
}

function Editor({ id, batch, name, store, state }: EditorProps) {
  const { input, type, commit, press, leave } = useEditor(id, batch, store, state);
  const { kind } = numericRows[id];
  const text = state.editing.value?.text ?? '';
  const put = (key: string) => type(/^[½⅓⅔¼¾⅛]/u.test(key) ? withFraction(text, key) : withUnit(text, key));
  return (
    <section
      class="thumb-editor"
      aria-label={`Type ${labelOf(id)}`}
      onMouseDown={(event) => event.target !== input.current && event.preventDefault()}
    >
      <div class="thumb-head">
        <b>{labelOf(id)}</b> <bdi>{name}</bdi>
        <button
          type="button"
          class="quiet"
          onClick={() => {
            leave();
            state.working.value = { at: id, batch };
          }}
        >
          How it comes about
        </button>
      </div>
      <Remarks rows={[id]} batch={batch} store={store} state={state} />
      <div class="thumb-line">
        <input
          class="editor"
          ref={input}
          aria-label={labelOf(id)}
          value={text}
          inputMode={keypadFor(kind)}
          enterkeyhint="done"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          onInput={(event) => type(event.currentTarget.value)}
          onKeyDown={press}
          onBlur={leave}
        />
        <button type="button" class="button next" onClick={commit}>
          Done
        </button>
      </div>
      <div class="thumb-keys">
        <Keys keys={unitKeys[kind]} put={put} />
        {keypadFor(kind) === 'decimal' && <Keys keys={fractionKeys} put={put} />}
        <Key put={() => type('')}>clear</Key>
      </div>
    </section>
  );
}

function Keys({ keys, put }: { readonly keys: readonly string[]; readonly put: (key: string) => void }) {
  return (
    <>
      {keys.map((key) => (
        <Key key={key} put={() => put(key)}>
          {key}
        </Key>
      ))}
    </>
  );
}

function Key({ put, children }: { readonly put: () => void; readonly children: ComponentChildren }) {
  return (
    <button type="button" class="key" tabIndex={-1} onClick={put}>
      {children}
    </button>
  );
}

/** The unit behind the number that stands there, in place of another. */
function withUnit(text: string, unit: string): string {
  const [number = ''] = text.match(/^[\d\s.,/½⅓⅔¼¾⅛×x+-]*/u) ?? [];
  return `${number.trim()} ${unit}`.trim();
}

/** The fraction behind a whole number, in front of its unit. */
function withFraction(text: string, fraction: string): string {
  const [, whole = '', rest = ''] = text.match(/^\s*(\d*)[½⅓⅔¼¾⅛]?\s*(.*)$/u) ?? [];
  return `${whole}${fraction} ${rest}`.trim();
}
