import type { Store } from '../../batch/store';
import { media, useMedia } from '../page/use-media';
import type { SheetState } from './sheet-state';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
}

/** Under the lines: unfolding them all, going through the batches on a phone, telling batches apart. */
export function SheetTools({ store, state }: Props) {
  const phone = useMedia(media.phone);
  const { batches } = store.document.value;
  const several = batches.length > 1;
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
          {!phone && <Compare store={store} state={state} />}
        </>
      )}
    </div>
  );
}

function Compare({ store, state }: Props) {
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
        {store.document.value.batches.map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}
