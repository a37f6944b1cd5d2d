import type { Store } from '../batch/store';
import { Cautions } from './Cautions';
import { Flows } from './Flows';
import { Steps } from './Steps';

interface Props {
  readonly store: Store;
}

/** What stands under the sheet, for each batch: its steps, where its mass goes, what to take care of. */
export function Below({ store }: Props) {
  const { batches } = store.document.value;
  return (
    <>
      {batches.map((batch) => {
        const formulation = store.formulationOf(batch);
        return (
          <div class="below" key={batch.id}>
            <Steps batch={batch} store={store} />
            <div class="beside-steps">
              <Flows formulation={formulation} kitchen={store.settings.value} name={batch.name} />
              <Cautions formulation={formulation} name={batch.name} />
            </div>
          </div>
        );
      })}
    </>
  );
}
