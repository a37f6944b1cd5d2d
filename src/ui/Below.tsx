import type { Batch } from '../batch/document';
import type { Store } from '../batch/store';
import { Cautions } from './Cautions';
import { Flows } from './Flows';
import { OnHand } from './OnHand';
import { Recipes } from './Recipes';
import { Steps } from './Steps';
import type { SheetState } from './sheet-state';
import { usePrinting } from './use-printing';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
}

/** What stands under the sheet for the batch that is looked at; on paper for every batch. */
export function Below({ store, state }: Props) {
  const printing = usePrinting();
  const { batches } = store.document.value;
  const current = batches.find(({ id }) => id === state.spot.value.batch) ?? batches[0];
  const shown = printing ? batches : batches.filter((batch) => batch === current);
  return (
    <>
      {current !== undefined && <Recipes batch={current} store={store} state={state} />}
      {shown.map((batch) => (
        <BelowBatch key={batch.id} batch={batch} store={store} />
      ))}
    </>
  );
}

function BelowBatch({ batch, store }: { batch: Batch; store: Store }) {
  const formulation = store.formulationOf(batch);
  return (
    <div class="below">
      <Steps batch={batch} store={store} />
      <div class="beside-steps">
        <OnHand batch={batch} store={store} />
        <Flows formulation={formulation} kitchen={store.settings.value} name={batch.name} />
        <Cautions formulation={formulation} name={batch.name} />
      </div>
    </div>
  );
}
