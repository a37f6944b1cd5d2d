import { useEffect, useRef, useState } from 'preact/hooks';
import type { Batch } from '../batch/document';
import type { Store } from '../batch/store';
import type { SheetState } from './sheet-state';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  readonly state: SheetState;
}

/** A batch's name, and what can be done with the batch as a whole. */
export function BatchTools({ batch, store, state }: Props) {
  const [naming, setNaming] = useState(false);
  const { batches } = store.document.value;
  const at = batches.indexOf(batch);
  const go = (id: string | null) => {
    if (id !== null) state.select({ ...state.spot.value, batch: id });
  };
  return (
    <>
      {naming ? <Rename batch={batch} store={store} onDone={() => setNaming(false)} /> : <h2>{batch.name}</h2>}
      <details class="batch-tools">
        <summary aria-label={`This batch: change ${batch.name} as a whole`}>This batch</summary>
        <div>
          <button type="button" class="follow" onClick={() => setNaming(true)}>
            Rename
          </button>
          <button type="button" class="follow" onClick={() => go(store.copyBatch(batch.id))}>
            Copy
          </button>
          <button type="button" class="follow" disabled={at === 0} onClick={() => store.moveBatch(batch.id, at - 1)}>
            Move left
          </button>
          <button
            type="button"
            class="follow"
            disabled={at === batches.length - 1}
            onClick={() => store.moveBatch(batch.id, at + 1)}
          >
            Move right
          </button>
          <button type="button" class="follow" onClick={() => store.removeBatch(batch.id)}>
            Remove
          </button>
        </div>
      </details>
    </>
  );
}

function Rename({ batch, store, onDone }: { batch: Batch; store: Store; onDone: () => void }) {
  const input = useRef<HTMLInputElement>(null);
  const [name, setName] = useState(batch.name);
  useEffect(() => input.current?.select(), []);
  const keep = () => {
    if (name.trim() !== '') store.renameBatch(batch.id, name);
    onDone();
  };
  return (
    <input
      class="rename"
      ref={input}
      aria-label="Name of the batch"
      value={name}
      maxLength={200}
      onInput={(event) => setName(event.currentTarget.value)}
      onBlur={keep}
      onKeyDown={(event) => {
        event.stopPropagation();
        if (event.key === 'Enter') keep();
        if (event.key === 'Escape') onDone();
      }}
    />
  );
}
