import { useRef } from 'preact/hooks';
import type { Batch } from '../batch/document';
import type { Store } from '../batch/store';
import { labelOf } from '../formula/labels';
import type { ChoiceRowId } from '../formula/order';
import { Problems } from './Cell';
import { menus } from './choices';
import { typesCharacter } from './grid-keys';
import type { SheetState } from './sheet-state';

interface Props {
  readonly id: ChoiceRowId;
  readonly batch: Batch;
  readonly store: Store;
  readonly state: SheetState;
}

/** A cell with a menu. The cell itself is a stop of the grid; Enter, F2 or a letter goes into the menu, Escape out. */
export function ChoiceCell({ id, batch, store, state }: Props) {
  const menu = useRef<HTMLSelectElement>(null);
  const cell = useRef<HTMLTableCellElement>(null);
  const here = state.spot.value.line === id && state.spot.value.batch === batch.id;
  const result = store.formulationOf(batch).rows[id];
  const spot = { line: id, batch: batch.id };

  const enter = (event: KeyboardEvent) => {
    if (event.target !== cell.current) return;
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
      class="cell given-choice"
      role="gridcell"
      ref={cell}
      data-quantity={id}
      data-batch={batch.id}
      data-spot={here}
      aria-selected={here}
      aria-labelledby={`label-${id} ${id}-${batch.id}`}
      tabIndex={here ? 0 : -1}
      onFocus={() => state.select(spot)}
      onClick={() => state.select(spot)}
      onKeyDown={enter}
    >
      <select
        class="choice"
        id={`${id}-${batch.id}`}
        ref={menu}
        aria-label={labelOf(id)}
        tabIndex={-1}
        value={String(result.value)}
        onChange={(event) => store.choose(batch.id, id, event.currentTarget.value)}
        onKeyDown={leave}
      >
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
      {result.problems.length > 0 && (
        <div class="cell-body">
          <Problems result={result} kitchen={store.settings.value} unreadable={null} />
        </div>
      )}
    </td>
  );
}
