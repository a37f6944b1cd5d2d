import type { Batch } from '../../batch/document/document';
import type { Store } from '../../batch/store/store';
import { batchCost } from '../../formula/cost/batch-cost';
import { compareSources } from '../../formula/cost/compare-sources';
import { describeThrownAway, tellAmount } from '../../formula/cost/cost-words';
import { foodOfKey } from '../../formula/cost/food-of-key';
import { currencyOf, inCoins, writeMoney } from '../../formula/cost/money';
import { pulpOf } from '../../formula/glass/in-the-bag';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
}

/** What of the price stays in the bag, and what as much kefir costs of the other sources that have a price. */
export function Compared({ batch, store }: Props) {
  const { packages = [], settings } = store.document.value;
  const currency = currencyOf(settings.currency);
  const formulation = store.formulationOf(batch);
  const [source] = batchCost(formulation, packages, batch.carton).lines;
  const pulp = pulpOf(formulation);
  const compared = compareSources(formulation, packages, batch.carton);
  return (
    <>
      {pulp !== null && source?.need.part === 'source' && source.cost !== null && (
        <p>
          {describeThrownAway(
            { likely: pulp.share, least: pulp.shareLeast, most: pulp.shareMost },
            source.cost,
            formulation.choices.source.plural,
            currency,
            settings,
          )}
        </p>
      )}
      {compared.length > 0 && (
        <table class="cost-table">
          <caption>As much kefir of another source</caption>
          <thead>
            <tr>
              <th scope="col">Source</th>
              <th scope="col">Takes</th>
              <th scope="col">A litre costs</th>
            </tr>
          </thead>
          <tbody>
            {compared.map(({ food, name, grams, isThis, perLitre }) => (
              <tr key={food} class={isThis ? 'used' : ''}>
                <th scope="row">
                  {name} {isThis && <span class="tag">this batch</span>}
                </th>
                <td>{tellAmount(foodOfKey(food, name), grams, settings)}</td>
                <td>
                  <b>{writeMoney(inCoins(perLitre, currency), currency, settings.decimalComma)}</b>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </>
  );
}
