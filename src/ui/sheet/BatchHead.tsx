import { useComputed } from '@preact/signals';
import { isExample } from '../../batch/document/demo';
import type { Batch } from '../../batch/document/document';
import type { Store } from '../../batch/store/store';
import type { Formulation } from '../../formula/engine/formulate';
import { rowOrder } from '../../formula/recipe/order';
import { severities } from '../../formula/recipe/problem';
import { labelOf } from '../../formula/words/labels';
import { Guarded } from '../page/Guarded';
import { lazyPiece } from '../page/lazy-piece';
import { BatchTools } from './BatchTools';
import type { SheetState } from './sheet-state';
import { isTrouble } from './telling';

interface Props {
  readonly id: string;
  readonly store: Store;
  readonly state: SheetState;
  /** Whether one batch is shown at a time. */
  readonly phone: boolean;
}

const JarOf = lazyPiece(() => import('../jar/JarOf'));
const FailedBatch = lazyPiece(() => import('./FailedBatch'));

/** The head of a batch; of one that can't be worked out or drawn, that it can't. */
export function BatchHead(props: Props) {
  const { id, store } = props;
  const batch = store.batchOf(id).value;
  if (batch === undefined) return null;
  const failed = <FailedBatch batch={batch} store={store} />;
  return store.formulationOf(batch).failed ? (
    failed
  ) : (
    <Guarded store={store} instead={failed}>
      <Head {...props} batch={batch} />
    </Guarded>
  );
}

/** Its name, its jar to scale, what it is sized from, and what is to be mended first. */
function Head({ id, batch, store, state, phone }: Props & { readonly batch: Batch }) {
  const example = useComputed(() => isExample(store.document.value)).value;
  const compared = useComputed(() => state.comparedWith.value === id).value;
  const formulation = store.formulationOf(batch);
  return (
    <>
      <div class="head-jar">
        <JarOf formulation={store.lastGoodOf(batch) ?? formulation} kitchen={store.settings.value} />
      </div>
      <div class="head-words">
        <BatchTools id={id} name={batch.name} store={store} state={state} phone={phone} />
        {isWaiting(formulation) && <Slip batch={batch} formulation={formulation} store={store} state={state} />}
        <p>
          {example && <span class="example">An example: choose or type, and it is yours. </span>}
          {compared ? 'Compared with this' : sizedBy(formulation)}
        </p>
      </div>
    </>
  );
}

function isWaiting({ rows }: Formulation): boolean {
  return rowOrder.some((row) => rows[row].problems.some(({ code }) => code === 'waits'));
}

function sizedBy({ sizedFrom }: Formulation): string {
  return sizedFrom === 'jar' ? 'Fills the jar' : `Sized from ${labelOf(sizedFrom).toLowerCase()}`;
}

interface SlipProps extends Omit<Props, 'id' | 'phone'> {
  readonly batch: Batch;
  readonly formulation: Formulation;
}

/** Said once where cells wait for one that is refused, with the way there. */
function Slip({ batch, formulation: { rows }, store, state }: SlipProps) {
  const root = rowOrder.find((row) =>
    rows[row].problems.some((problem) => isTrouble(problem) && severities[problem.code] === 'refusal'),
  );
  if (root === undefined) return null;
  const before = store.lastGoodOf(batch) === null ? '' : ' Grey figures are from before.';
  return (
    <p class="slip">
      <button type="button" class="quiet" onClick={() => state.goTo({ at: root, batch: batch.id })}>
        Mend {labelOf(root).toLowerCase()}.
      </button>
      {before}
    </p>
  );
}
