import { useMemo, useRef } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import type { Store } from '../../batch/store/store';
import type { ChoiceRowId } from '../../formula/recipe/order';
import { labelOf } from '../../formula/words/labels';
import { sweeteners } from '../../reference/sweeteners';
import { menus } from './choices';
import { typesCharacter } from './grid-keys';
import { HowSo } from './HowSo';
import { MenuOptions } from './MenuOptions';
import { useAlike } from './use-alike';
import { type CellProps, useCell } from './use-cell';

interface Props extends CellProps<ChoiceRowId> {
  /** Whether it is pressed with a thumb, for whom the way to the working is elsewhere. */
  readonly thumb: boolean;
}

/**
 * A cell with a menu. The cell itself is a stop of the grid; Enter, F2 or a letter goes into the menu, Escape out. The
 * menu lies over the name of what is chosen, which wraps as a menu can't.
 */
export function ChoiceCell({ id, batch: batchId, store, state, column, place, range, thumb }: Props) {
  const element = useRef<HTMLDivElement>(null);
  const menu = useRef<HTMLSelectElement>(null);
  const { here, picked } = useCell(id, batchId, state, range);
  const view = useAlike(() => {
    const batch = store.batchOf(batchId).value;
    return batch === undefined ? null : viewChoice(id, batch, store);
  }).value;
  const options = useMemo(() => <MenuOptions groups={menus[id]} />, [id]);
  if (view === null) return null;
  const { chosen, name, of, isBlend } = view;
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
      aria-label={`${labelOf(id)}, ${of}: ${name}, chosen`}
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
        onChange={({ currentTarget: { value } }) => {
          store.choose(batchId, id, value);
          // What a source of one's own is stands in its working.
          if (id === 'source' && value === 'own') state.working.value = spot;
        }}
        onKeyDown={leave}
      >
        {isBlend && <option value={chosen}>{name}</option>}
        {options}
      </select>
      {here && !thumb && <HowSo spot={spot} label={labelOf(id)} state={state} />}
    </div>
  );
}

interface ChoiceView {
  readonly chosen: string;
  readonly name: string;
  /** The name of the batch. */
  readonly of: string;
  readonly isBlend: boolean;
}

function viewChoice(id: ChoiceRowId, batch: Batch, store: Store): ChoiceView {
  const chosen = String(store.formulationOf(batch).rows[id].value);
  const isBlend = id === 'sweetener' && batch.sweetener.length > 1;
  return { chosen, name: nameOf(id, batch, chosen), of: batch.name, isBlend };
}

/** What is chosen by its name; a blend by its parts and their shares: "50 % Honey, 50 % Cane sugar, white". */
export function nameOf(id: ChoiceRowId, { sweetener }: Batch, chosen: string): string {
  if (id === 'sweetener' && sweetener.length > 1) {
    const percent = new Intl.NumberFormat('en', { style: 'percent', maximumFractionDigits: 0 });
    return sweetener.map((part) => `${percent.format(part.share)} ${sweeteners[part.id].name}`).join(', ');
  }
  const options = menus[id].flatMap(({ options }) => options);
  return options.find(({ value }) => value === chosen)?.label ?? chosen;
}
