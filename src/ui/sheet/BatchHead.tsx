import type { Batch } from '../../batch/document';
import type { SheetStore } from '../../batch/sheet-store';
import { labelOf } from '../../formula/labels';
import { afterPaint } from '../page/after-paint';
import { InShort } from './InShort';
import type { SheetState } from './sheet-state';

interface Props {
  readonly batch: Batch;
  readonly store: SheetStore;
  readonly state: SheetState;
}

/** The head of a batch's card: its name, what it is sized from, its jar to scale, and the batch in short. */
export function BatchHead({ batch, store, state }: Props) {
  const kitchen = store.settings.value;
  const formulation = store.formulationOf(batch);
  const { sizedFrom } = formulation;
  const later = afterPaint.value;
  return (
    <>
      {later === null ? (
        <h2>{batch.name}</h2>
      ) : (
        <later.BatchTools batch={batch} store={later.withEdits(store)} state={state} />
      )}
      <p>{sizedFrom === 'jar' ? 'Fills the jar to its headspace' : `Sized from “${labelOf(sizedFrom)}”`}</p>
      <div class="at-a-glance">
        <div class="jar-room">{later !== null && <later.JarOf formulation={formulation} kitchen={kitchen} />}</div>
        <InShort formulation={formulation} kitchen={kitchen} />
      </div>
    </>
  );
}
