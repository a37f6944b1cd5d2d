import { signal, useComputed } from '@preact/signals';
import type { FunctionComponent } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Store } from '../../batch/store/store';
import type { SheetState } from '../sheet/sheet-state';
import { Guarded } from './Guarded';
import type { PageState, Side } from './page-state';
import type { PartId } from './part-ids';
import { partList } from './part-list';
import type { PartProps } from './part-props';
import { useAfterPaint } from './use-after-paint';
import { WhoseName } from './Whose';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
  readonly page: PageState;
  readonly side: Side;
}

const loaded = signal<ReadonlyMap<PartId, FunctionComponent<PartProps>>>(new Map());
const missing = signal(false);
const nextTry = 3000;

/** Loads a part, and tries again, for as long as the page is open, where it can't. */
export async function loadPart(id: PartId): Promise<void> {
  while (!loaded.peek().has(id)) {
    const part = await partList[id].load().catch(() => null);
    missing.value = part === null;
    if (part !== null) loaded.value = new Map([...loaded.peek(), [id, part.default]]);
    else await new Promise((resolve) => setTimeout(resolve, nextTry));
  }
}

/** The part that is open, for the batch that is looked at. */
export function PartPane({ store, state, page, side }: Props) {
  const id = page.parts[side].value;
  const pane = useRef<HTMLElement>(null);
  const now = useComputed(() => {
    const { batches } = store.document.value;
    return batches.find((one) => one.id === state.spot.value.batch) ?? batches[0];
  });
  // What is typed into the part itself is answered by it first of all.
  const batch = useAfterPaint(now, () => pane.current?.contains(document.activeElement) === true).value;
  const isOneOfSeveral = useComputed(() => store.document.value.batches.length > 1).value;
  const Part = loaded.value.get(id);
  useEffect(() => {
    void loadPart(id);
  }, [id]);
  useEffect(() => {
    if (page.wantsFocus.peek() !== page.parts[side].peek()) return;
    page.wantsFocus.value = null;
    pane.current?.focus({ preventScroll: true });
  }, [page.wantsFocus.value]);
  if (batch === undefined) return null;
  return (
    <section
      class="part-pane"
      id={`part-${side}`}
      ref={pane}
      tabIndex={-1}
      role="tabpanel"
      aria-label={partList[id].name}
      aria-busy={Part === undefined}
    >
      {Part === undefined ? (
        <p class="part-missing">{missing.value ? partMissing : ''}</p>
      ) : (
        <WhoseName.Provider value={isOneOfSeveral ? batch.name : null}>
          <Guarded key={`${id} ${batch.id}`} store={store} instead={<p class="part-missing">{partFailed}</p>}>
            <Part key={id} batch={batch} store={store} state={state} page={page} />
          </Guarded>
        </WhoseName.Provider>
      )}
    </section>
  );
}

const partFailed = 'This part can’t be shown for what is in the sheet now. Everything in it is kept.';
const partMissing = 'This part could not be loaded. It is tried again every few seconds.';
