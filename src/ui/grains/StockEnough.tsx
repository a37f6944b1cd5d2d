import { useMemo, useState } from 'preact/hooks';
import type { Batch, Settings, Stock } from '../../batch/document/document';
import { isKeyOf } from '../../batch/document/table-keys';
import type { Formulation } from '../../formula/engine/formulate';
import { askedBy, batchesUntil, largerJars, paceOf, withGrains } from '../../formula/stock/carries';
import { type GrowthLine, growthIn } from '../../formula/stock/growth';
import type { Ledger } from '../../formula/stock/ledger';
import { mediumWords, writeGrains } from '../../formula/stock/line-words';
import { describePaceOf, describeUntil, nameOf } from '../../formula/stock/stock-words';
import { lowerFirst } from '../../formula/words/lower-first';
import { jars } from '../../reference/jars';

interface Props {
  readonly stock: Stock;
  readonly ledger: Ledger;
  readonly kitchen: Settings;
  readonly lines: readonly GrowthLine[];
  readonly batch: Batch;
  readonly formulation: Formulation;
}

/** When there will be enough for a larger jar, by how they grow in this milk and by feeding them alone. */
export function StockEnough({ stock, ledger, kitchen, lines, batch, formulation }: Props) {
  const { grains } = stock;
  const { total } = ledger;
  const [chosen, setChosen] = useState<string | null>(null);
  const larger = useMemo(
    () => largerJars(withGrains(formulation.recipe, grains), total),
    [formulation.recipe, grains, total],
  );
  const asked = askedBy(grains, formulation);
  const isShort = asked !== null && asked > total;
  const [first] = larger;
  const isOffered = chosen === 'batch' ? isShort : larger.some(({ id }) => id === chosen);
  const picked = chosen !== null && isOffered ? chosen : isShort ? 'batch' : first?.id;
  if (picked === undefined || !(total > 0)) return null;
  const wanted = picked === 'batch' ? asked : (larger.find(({ id }) => id === picked)?.asked ?? null);
  const medium = grains === 'milk' ? 'dairy' : 'sugarWater';
  const isSame = batch.grains === grains;
  const inMilk = batchesUntil(total, wanted ?? 0, growthIn(grains, lines, { source: batch.source }));
  const inRest = batchesUntil(total, wanted ?? 0, growthIn(grains, lines, { medium }));
  const pace = paceOf(ledger.points.map(({ entry }) => entry));
  return (
    <section class="stock-enough" aria-label="Enough for a larger jar">
      <h3>Enough for a larger jar</h3>
      <label class="grains-pick">
        <span class="unseen">For which</span>
        <select value={picked} onChange={(event) => setChosen(event.currentTarget.value)}>
          {isShort && <option value="batch">{batch.name}</option>}
          {larger.map(({ id }) => (
            <option key={id} value={id}>
              {jars[id].name}
            </option>
          ))}
        </select>
      </label>
      {wanted !== null && (
        <>
          <p>
            {isKeyOf(jars, picked) ? `A ${lowerFirst(jars[picked].name)}` : batch.name} takes{' '}
            <b>{writeGrains(wanted, kitchen)}</b>.
          </p>
          <ul>
            {isSame && (
              <li>
                In {nameOf({ source: batch.source })}: {lowerFirst(describeUntil(inMilk))}
                {inMilk.likely !== null && inMilk.likely > 0 && pace !== null && (
                  <span class="hint">At your pace that is {describePaceOf(inMilk.likely, pace)}.</span>
                )}
              </li>
            )}
            <li>
              By feeding them in {mediumWords[medium]} on the worktop, a round each time:{' '}
              {lowerFirst(describeUntil(inRest, 'round'))}
            </li>
          </ul>
        </>
      )}
    </section>
  );
}
