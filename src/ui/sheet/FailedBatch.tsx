import { dayHere } from '../../batch/document/calendar-day';
import type { Batch } from '../../batch/document/document';
import type { Store } from '../../batch/store/store';
import { onlyBatches, writeCopy } from '../../interchange/json-file';
import { downloadText } from '../paper/download-text';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
}

/** What stands in place of a batch that can't be worked out or shown, so that nothing of it is lost, nor the page. */
export default function FailedBatch({ batch, store }: Props) {
  const save = () => {
    const only = onlyBatches(store.document.value, new Set([batch.id]));
    downloadText(writeCopy(only), `jarwright-${dayHere(new Date())}.json`, 'application/json;charset=utf-8');
  };
  return (
    <section class="head-words" aria-label={`${batch.name} can’t be worked out`}>
      <p role="alert">
        <bdi>{batch.name}</bdi> can’t be worked out. Everything in it is kept, and the rest of the sheet stands. Save a
        copy of it, undo the last change, or remove it.
      </p>
      <button type="button" class="quiet" onClick={save}>
        Save a copy of this batch
      </button>
      <button type="button" class="quiet" onClick={() => store.removeBatch(batch.id)}>
        Remove this batch
      </button>
    </section>
  );
}
