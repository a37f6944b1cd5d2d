import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Batch } from '../../batch/document';
import type { Store } from '../../batch/store';
import { media, useMedia } from '../page/use-media';
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
  const menu = useMenu();
  const phone = useMedia(media.phone);
  const { batches } = store.document.value;
  const at = batches.indexOf(batch);
  const go = (id: string | null) => {
    if (id !== null) state.landOn(id, `A copy of ${batch.name}.`);
  };
  const remove = () => {
    const next = batches[at + 1] ?? batches[at - 1];
    store.removeBatch(batch.id);
    const left = next ?? store.document.peek().batches[0];
    if (left !== undefined) state.landOn(left.id, `${batch.name} is removed. Undo brings it back.`);
  };
  const leave = (byKey: boolean) => {
    setNaming(false);
    if (byKey) summary.current?.focus();
  };
  const act = (deed: () => void) => {
    if (summary.current?.parentElement instanceof HTMLDetailsElement) summary.current.parentElement.open = false;
    summary.current?.focus();
    deed();
  };
  const step = (next: Batch | undefined) => {
    if (next !== undefined) state.goTo({ at: 'vessel', batch: next.id });
  };
  return (
    <div class="batch-name">
      {naming ? (
        <Rename batch={batch} store={store} onDone={leave} />
      ) : (
        <h2 id={`name-of-${batch.id}`}>
          <button
            type="button"
            class="name"
            title={`${batch.name}: rename`}
            disabled={store.readOnly.value}
            onClick={() => setNaming(true)}
          >
            <bdi>{batch.name}</bdi>
          </button>
        </h2>
      )}
      {phone && batches.length > 1 && (
        <span class="neighbours">
          <button
            type="button"
            class="quiet"
            aria-label="Batch before"
            disabled={at === 0}
            onClick={() => step(batches[at - 1])}
          >
            ‹
          </button>
          {at + 1}/{batches.length}
          <button
            type="button"
            class="quiet"
            aria-label="Next batch"
            disabled={at === batches.length - 1}
            onClick={() => step(batches[at + 1])}
          >
            ›
          </button>
        </span>
      )}
      <details
        class="batch-tools"
        ref={menu}
        onKeyDown={(event) => {
          if (event.key !== 'Escape' || menu.current?.open !== true) return;
          menu.current.open = false;
          summary.current?.focus();
        }}
      >
        <summary ref={summary} aria-label={`${batch.name}: copy, move, remove`}>
          ⋯
        </summary>
        <div>
          <button type="button" onClick={() => act(() => setNaming(true))}>
            Rename
          </button>
          <button type="button" onClick={() => act(() => go(store.copyBatch(batch.id)))}>
            Copy
          </button>
          <button type="button" disabled={at === 0} onClick={() => act(() => store.moveBatch(batch.id, at - 1))}>
            Move left
          </button>
          <button
            type="button"
            disabled={at === batches.length - 1}
            onClick={() => act(() => store.moveBatch(batch.id, at + 1))}
          >
            Move right
          </button>
          <button type="button" onClick={remove}>
            Remove
          </button>
        </div>
      </details>
    </div>
  );
}

/** A menu that closes when the cook presses or goes elsewhere. */
function useMenu(): RefObject<HTMLDetailsElement | null> {
  const menu = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    const leave = ({ target }: Event) => {
      if (menu.current?.open === true && target instanceof Node && !menu.current.contains(target))
        menu.current.open = false;
    };
    for (const way of ['pointerdown', 'focusin']) document.addEventListener(way, leave);
    return () => {
      for (const way of ['pointerdown', 'focusin']) document.removeEventListener(way, leave);
    };
  }, []);
  return menu;
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
