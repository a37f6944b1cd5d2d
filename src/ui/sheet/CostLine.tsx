import type { ReadonlySignal } from '@preact/signals';
import type { Store } from '../../batch/store/store';
import { batchCost, hasPrice } from '../../formula/cost/batch-cost';
import { describeMissing, tellCost } from '../../formula/cost/cost-words';
import { currencyOf } from '../../formula/cost/money';
import { columnIndex, type Drawn } from './columns-on-screen';
import { Spacer } from './Spacer';

interface Props {
  readonly batches: readonly string[];
  readonly store: Store;
  readonly drawn: ReadonlySignal<Drawn>;
}

/** What each batch costs, under the lines of the work, for as long as there is a price of anything in one of them. */
export default function CostLine({ batches, store, drawn }: Props) {
  const { packages = [], settings } = store.document.value;
  const currency = currencyOf(settings.currency);
  const told = batches.map((id) => {
    const batch = store.batchOf(id).value;
    if (batch === undefined) return null;
    const cost = batchCost(store.formulationOf(batch), packages, batch.carton);
    return hasPrice(cost) ? { ...tellCost(cost, currency, settings), missing: describeMissing(cost) } : null;
  });
  if (told.every((one) => one === null)) return null;
  return (
    <div class="line" role="row" aria-level={1}>
      <div class="label" role="rowheader">
        Cost
      </div>
      <Spacer />
      {told.map((cost, at) => [
        <div
          class="cell how"
          role="gridcell"
          key={`${batches[at]} how`}
          aria-colindex={columnIndex(drawn.value, at)}
          data-quantity="litreCost"
          data-batch={batches[at]}
        >
          <span class="aside">{cost === null || cost.litre === null ? '–' : `${cost.litre} a litre`}</span>
        </div>,
        <div
          class="cell much"
          role="gridcell"
          key={`${batches[at]} much`}
          aria-colindex={columnIndex(drawn.value, at, 'much')}
          data-quantity="batchCost"
          data-batch={batches[at]}
        >
          <div class="cell-body">
            <span class="lead">{cost === null ? '–' : cost.batch}</span>
            {cost !== null && cost.missing !== null && <span class="second">so far: not all has a price</span>}
          </div>
        </div>,
      ])}
      <Spacer />
    </div>
  );
}
