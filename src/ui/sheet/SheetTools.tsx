import type { Store } from '../../batch/store';
import { media, useMedia } from '../page/use-media';
import { openPaste } from '../recipe/Recipes';
import type { SheetState } from './sheet-state';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
}

/** What is done with batches together: adding one, going through them on a phone, telling them apart. */
export function SheetTools({ store, state }: Props) {
  const phone = useMedia(media.phone);
  const { batches } = store.document.value;
  const several = batches.length > 1;
  const go = (batch: string | undefined | null) => {
    if (batch !== undefined && batch !== null) state.select({ ...state.spot.value, batch });
  };
  return (
    <div class="sheet-tools">
      {phone && several && (
        <label>
          Batch{' '}
          <select value={state.spot.value.batch} onChange={(event) => go(event.currentTarget.value)}>
            {batches.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </label>
      )}
      <button type="button" class="button" onClick={() => go(store.addBatch(state.spot.value.batch))}>
        Add a batch
      </button>
      <button type="button" class="button" onClick={openPaste}>
        Start from a recipe
      </button>
      {several && (
        <>
          <label>
            <input
              type="checkbox"
              checked={state.onlyDifferent.value}
              onChange={(event) => {
                state.onlyDifferent.value = event.currentTarget.checked;
              }}
            />
            Only rows that differ
          </label>
          <label>
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
        </>
      )}
      <p class="notice" role="status">
        {state.notice.value}
      </p>
    </div>
  );
}
