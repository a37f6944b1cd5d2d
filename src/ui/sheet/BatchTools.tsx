import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import type { Store } from '../../batch/store/store';
import type { SheetState } from './sheet-state';
import { useAlike } from './use-alike';

interface Props {
  readonly id: string;
  readonly name: string;
  readonly store: Store;
  readonly state: SheetState;
  /** Whether one batch is shown at a time. */
  readonly phone: boolean;
}

/** A batch's name, and what can be done with the batch as a whole. */
export function BatchTools({ id, name, store, state, phone }: Props) {
  const [naming, setNaming] = useState(false);
  const summary = useRef<HTMLElement>(null);
  const menu = useMenu();
  const { at, count } = useAlike(() => {
    const { batches } = store.document.value;
    return { at: batches.findIndex((batch) => batch.id === id), count: batches.length };
  }).value;
  const go = (copy: string | null) => {
    if (copy !== null) state.landOn(copy, `A copy of ${name}.`);
  };
  const batchAt = (place: number) => store.document.peek().batches[place];
  const remove = () => {
    const next = batchAt(at + 1) ?? batchAt(at - 1);
    store.removeBatch(id);
    const left = next ?? store.document.peek().batches[0];
    if (left !== undefined) state.landOn(left.id, `${name} is removed. Undo brings it back.`);
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
        <Rename id={id} before={name} store={store} onDone={leave} />
      ) : (
        <h2 id={`name-of-${id}`}>
          <button
            type="button"
            class="name"
            title={`${name}: rename`}
            disabled={store.readOnly.value}
            onClick={() => setNaming(true)}
          >
            <bdi>{name}</bdi>
          </button>
        </h2>
      )}
      {phone && count > 1 && (
        <span class="neighbours">
          <button
            type="button"
            class="quiet"
            aria-label="Batch before"
            disabled={at === 0}
            onClick={() => step(batchAt(at - 1))}
          >
            ‹
          </button>
          {at + 1}/{count}
          <button
            type="button"
            class="quiet"
            aria-label="Next batch"
            disabled={at === count - 1}
            onClick={() => step(batchAt(at + 1))}
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
        <summary ref={summary} aria-label={`${name}: copy, move, remove`}>
          ⋯
        </summary>
        <div>
          <button type="button" onClick={() => act(() => setNaming(true))}>
            Rename
          </button>
          <button type="button" onClick={() => act(() => go(store.copyBatch(id)))}>
            Copy
          </button>
          <button type="button" disabled={at === 0} onClick={() => act(() => store.moveBatch(id, at - 1))}>
            Move left
          </button>
          <button type="button" disabled={at === count - 1} onClick={() => act(() => store.moveBatch(id, at + 1))}>
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
  readonly id: string;
  readonly before: string;
  readonly store: Store;
  readonly onDone: (byKey: boolean) => void;
}

function Rename({ id, before, store, onDone }: RenameProps) {
  const input = useRef<HTMLInputElement>(null);
  const done = useRef(false);
  const [name, setName] = useState(before);
  // Before the next key can come: one typed in between would be lost.
  useLayoutEffect(() => {
    input.current?.focus();
    input.current?.select();
  }, []);
  // Taking the field away blurs it, which must not keep what Escape has given up.
  const leave = (keep: boolean, byKey: boolean) => {
    if (done.current) return;
    done.current = true;
    if (keep && name.trim() !== '') store.renameBatch(id, name);
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
