import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Batch } from '../../batch/document';
import type { Store } from '../../batch/store';
import type { SheetState } from './sheet-state';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  readonly state: SheetState;
}

/** A batch's name, and what can be done with the batch as a whole. */
export function BatchTools({ batch, store, state }: Props) {
  const [naming, setNaming] = useState(false);
  const summary = useRef<HTMLElement>(null);
  const { batches } = store.document.value;
  const at = batches.indexOf(batch);
  const go = (id: string | null) => {
    if (id !== null) state.select({ ...state.spot.value, batch: id });
  };
  const leave = (byKey: boolean) => {
    setNaming(false);
    if (byKey) summary.current?.focus();
  };
  return (
    <>
      {naming ? <Rename batch={batch} store={store} onDone={leave} /> : <h2>{batch.name}</h2>}
      <details class="batch-tools">
        <summary ref={summary} aria-label={`This batch: change ${batch.name} as a whole`}>
          This batch
        </summary>
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

interface RenameProps {
  readonly batch: Batch;
  readonly store: Store;
  readonly onDone: (byKey: boolean) => void;
}

function Rename({ batch, store, onDone }: RenameProps) {
  const input = useRef<HTMLInputElement>(null);
  const done = useRef(false);
  const [name, setName] = useState(batch.name);
  // Before the next key can come: one typed in between would be lost.
  useLayoutEffect(() => {
    input.current?.focus();
    input.current?.select();
  }, []);
  // Taking the field away blurs it, which must not keep what Escape has given up.
  const leave = (keep: boolean, byKey: boolean) => {
    if (done.current) return;
    done.current = true;
    if (keep && name.trim() !== '') store.renameBatch(batch.id, name);
    onDone(byKey);
  };
  return (
    <input
      class="rename"
      ref={input}
      aria-label="Name of the batch"
      value={name}
      maxLength={200}
      onInput={(event) => setName(event.currentTarget.value)}
      onBlur={() => leave(true, false)}
      onKeyDown={(event) => {
        event.stopPropagation();
        if (event.key === 'Enter') leave(true, true);
        if (event.key === 'Escape') leave(false, true);
      }}
    />
  );
}
