import type { ReadonlySignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { Batch } from '../../batch/document';
import type { Store } from '../../batch/store';
import { labelOf } from '../../formula/labels';
import type { ChoiceRowId } from '../../formula/order';
import { sweeteners } from '../../reference/sweeteners';
import { media, useMedia } from '../page/use-media';
import { menus } from './choices';
import { typesCharacter } from './grid-keys';
import type { Range } from './grid-range';
import { HowSo } from './HowSo';
import type { SheetState } from './sheet-state';
import { type CellPlace, useCell } from './use-cell';

interface Props {
  readonly id: ChoiceRowId;
  readonly batch: string;
  readonly store: Store;
  readonly state: SheetState;
  readonly column: number;
  readonly place: CellPlace;
  readonly range: ReadonlySignal<Range>;
}

/**
 * A cell with a menu. The cell itself is a stop of the grid; Enter, F2 or a letter goes into the menu, Escape out. The
 * menu lies over the name of what is chosen, which wraps as a menu can't.
 */
export function ChoiceCell({ id, batch: batchId, store, state, column, place, range }: Props) {
  const menu = useRef<HTMLSelectElement>(null);
  const thumb = useMedia(media.thumb);
  const { element, here, picked } = useCell(id, batchId, state, range);
  const batch = store.batchOf(batchId).value;
  if (batch === undefined) return null;
  const chosen = String(store.formulationOf(batch).rows[id].value);
  const name = nameOf(id, batch, chosen);
  const spot = { at: id, batch: batchId };

  const enter = (event: KeyboardEvent) => {
    if (event.target !== element.current || store.readOnly.value || event.key === '?') return;
    if (event.key !== 'Enter' && event.key !== 'F2' && event.key !== ' ' && !typesCharacter(event)) return;
    event.preventDefault();
    menu.current?.focus();
    menu.current?.showPicker?.();
  };
  const leave = (event: KeyboardEvent) => {
    event.stopPropagation();
    if (event.key === 'Escape' || event.key === 'Enter') {
      event.preventDefault();
      element.current?.focus();
    }
  };

  return (
    <div
      class={`cell choice-cell ${place}${picked ? ' picked' : ''}`}
      role="gridcell"
      ref={element}
      data-quantity={id}
      data-batch={batchId}
      data-spot={here}
      aria-colindex={column}
      aria-selected={here || picked}
      aria-label={`${labelOf(id)}, ${batch.name}: ${name}, chosen`}
      aria-describedby={`remarks-${id}-${batchId}`}
      tabIndex={here ? 0 : -1}
      onFocus={() => !here && state.select(spot)}
      onMouseDown={(event) => (event.shiftKey ? state.extendTo(spot, true) : state.select(spot))}
      onMouseEnter={(event) => event.buttons === 1 && state.editing.value === null && state.extendTo(spot, false)}
      onKeyDown={enter}
    >
      <span class="chosen" aria-hidden="true">
        {name}
      </span>
      <select
        class="choice"
        ref={menu}
        aria-label={labelOf(id)}
        tabIndex={-1}
        value={chosen}
        onChange={({ currentTarget: { value } }) => store.choose(batchId, id, value)}
        onKeyDown={leave}
      >
        {id === 'sweetener' && batch.sweetener.length > 1 && <option value={chosen}>{name}</option>}
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
      {here && !thumb && <HowSo spot={spot} label={labelOf(id)} state={state} />}
    </div>
  );
}

/** What is chosen by its name; a blend by its parts and their shares: "50 % Honey, 50 % Cane sugar, white". */
function nameOf(id: ChoiceRowId, { sweetener }: Batch, chosen: string): string {
  if (id === 'sweetener' && sweetener.length > 1) {
    const percent = new Intl.NumberFormat('en', { style: 'percent', maximumFractionDigits: 0 });
    return sweetener.map((part) => `${percent.format(part.share)} ${sweeteners[part.id].name}`).join(', ');
  }
  const options = menus[id].flatMap(({ options }) => options);
  return options.find(({ value }) => value === chosen)?.label ?? chosen;
}
