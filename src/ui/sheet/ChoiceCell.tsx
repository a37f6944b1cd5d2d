import { useComputed } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { Batch } from '../../batch/document';
import type { SheetStore } from '../../batch/sheet-store';
import { labelOf } from '../../formula/labels';
import type { ChoiceRowId } from '../../formula/order';
import { sweeteners } from '../../reference/sweeteners';
import { afterPaint } from '../page/after-paint';
import { menus } from './choices';
import { typesCharacter } from './grid-keys';
import { placeOf, type SheetState } from './sheet-state';

interface Props {
  readonly id: ChoiceRowId;
  readonly batch: Batch;
  readonly store: SheetStore;
  readonly state: SheetState;
  readonly column: number;
  readonly picked: boolean;
}

/** A cell with a menu. The cell itself is a stop of the grid; Enter, F2 or a letter goes into the menu, Escape out. */
export function ChoiceCell({ id, batch, store, state, column, picked }: Props) {
  const menu = useRef<HTMLSelectElement>(null);
  const cell = useRef<HTMLTableCellElement>(null);
  const isHere = () => state.spot.value.line === id && state.spot.value.batch === batch.id;
  const here = useComputed(isHere).value;
  const chosen = String(store.formulationOf(batch).rows[id].value);
  const place = placeOf(batch.id, id);
  const later = afterPaint.value;
  const spot = { line: id, batch: batch.id };

  const enter = (event: KeyboardEvent) => {
    if (event.target !== cell.current || store.readOnly.value) return;
    if (event.key !== 'Enter' && event.key !== 'F2' && event.key !== ' ' && !typesCharacter(event)) return;
    event.preventDefault();
    menu.current?.focus();
    menu.current?.showPicker?.();
  };
  const leave = (event: KeyboardEvent) => {
    event.stopPropagation();
    if (event.key === 'Escape' || event.key === 'Enter') {
      event.preventDefault();
      cell.current?.focus();
    }
  };

  return (
    <td
      class={picked ? 'cell given-choice picked' : 'cell given-choice'}
      role="gridcell"
      ref={cell}
      data-quantity={id}
      data-batch={batch.id}
      data-spot={here}
      aria-colindex={column}
      aria-selected={picked}
      aria-labelledby={`label-${id} ${id}-${batch.id}`}
      tabIndex={here ? 0 : -1}
      onFocus={() => !isHere() && state.select(spot)}
      onMouseDown={(event) => (event.shiftKey ? state.extendTo(spot, true) : state.select(spot))}
      onMouseEnter={(event) => event.buttons === 1 && state.editing.value === null && state.extendTo(spot, false)}
      onKeyDown={enter}
    >
      <select
        class="choice"
        id={`${id}-${batch.id}`}
        ref={menu}
        aria-label={labelOf(id)}
        tabIndex={-1}
        value={store.waiting.value[place] ?? chosen}
        onChange={({ currentTarget: { value } }) =>
          store.edit((edits) => edits.choose(batch.id, id, value), { [place]: value })
        }
        onKeyDown={leave}
      >
        {id === 'sweetener' && batch.sweetener.length > 1 && <option value={chosen}>{blendName(batch)}</option>}
        {menus[id].map(({ label, options }) => (
          <optgroup key={label} label={label}>
            {options.map((option) => (
              <option key={option.value} value={option.value}>
                {option.label}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
      <div class="cell-body under-choice">
        {later !== null && <later.ChoiceRemarks id={id} batch={batch} store={later.withEdits(store)} here={here} />}
      </div>
    </td>
  );
}

/** A blend by its parts and their shares: "50 % Honey, 50 % Cane sugar, white". */
function blendName({ sweetener }: Batch): string {
  const percent = new Intl.NumberFormat('en', { style: 'percent', maximumFractionDigits: 0 });
  return sweetener.map(({ id, share }) => `${percent.format(share)} ${sweeteners[id].name}`).join(', ');
}
