import { useComputed } from '@preact/signals';
import type { Store } from '../../batch/store/store';
import type { SheetState } from './sheet-state';
import { useAlike } from './use-alike';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
}

/** Under the lines: unfolding them all, going through the batches on a phone, telling batches apart. */
export function SheetTools({ store, state }: Props) {
  const several = useComputed(() => store.document.value.batches.length > 1).value;
  return (
    <div class="sheet-tools">
      <label class="toggle">
        <input
          type="checkbox"
          checked={state.allFigures.value}
          onChange={(event) => {
            state.allFigures.value = event.currentTarget.checked;
          }}
        />
        All figures
      </label>
      {several && (
        <>
          <label class="toggle">
            <input
              type="checkbox"
              checked={state.onlyDifferent.value}
              onChange={(event) => {
                state.onlyDifferent.value = event.currentTarget.checked;
              }}
            />
            Only what differs
          </label>
          <Compare store={store} state={state} />
        </>
      )}
    </div>
  );
}

function Compare({ store, state }: Omit<Props, 'phone'>) {
  const batches = useAlike(() => store.document.value.batches.map(({ id, name }) => ({ id, name }))).value;
  return (
    <label class="toggle">
      Compare with{' '}
      <select
        value={state.comparedWith.value ?? ''}
        onChange={(event) => {
          state.comparedWith.value = event.currentTarget.value === '' ? null : event.currentTarget.value;
        }}
      >
        <option value="">nothing</option>
        {batches.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}
