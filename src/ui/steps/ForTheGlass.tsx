import type { Batch } from '../../batch/document/document';
import { extrasStep, typeExtras, writeExtras } from '../../batch/edits/extras-edits';
import type { Store } from '../../batch/store/store';
import { KeptTyped } from '../page/Typed';

interface Props {
  readonly batch: Batch;
  readonly store: Pick<Store, 'document' | 'takeEdit'>;
}

/** What flavours the glass, typed by hand; the step of keeping says it, and the recipe that is written out. */
export function ForTheGlass({ batch, store }: Props) {
  return (
    <details class="fold-panel for-the-glass">
      <summary>For the glass</summary>
      <label>
        <span>Flavours, with ; between them</span>
        <KeptTyped
          kept={writeExtras(batch)}
          placeholder="a pinch of salt; vanilla"
          onKeep={(text) => store.takeEdit(typeExtras(store.document.peek(), batch.id, text), extrasStep(text))}
        />
      </label>
    </details>
  );
}
