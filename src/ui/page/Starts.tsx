import type { Store } from '../../batch/store/store';
import type { SheetState } from '../sheet/sheet-state';
import type { PageState } from './page-state';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
  readonly page: PageState;
}

/** The ways to begin: the sheet itself fills a jar; else from a recipe, from what there is, or with one batch more. */
export function Starts({ store, state, page }: Props) {
  const add = () => {
    const id = store.addBatch(state.spot.peek().batch);
    if (id === null) state.notice.value = 'The sheet is full: remove a batch first.';
    else state.landOn(id, 'A new batch, which fills one jar.');
    page.shown.value = 'batch';
  };
  return (
    <>
      <button type="button" class="button" onClick={() => page.goTo('recipe')}>
        From a recipe
      </button>
      <button type="button" class="button" onClick={() => page.goTo('onHand')}>
        From what I have
      </button>
      <button type="button" class="button" disabled={store.readOnly.value} onClick={add}>
        + Batch
      </button>
    </>
  );
}
