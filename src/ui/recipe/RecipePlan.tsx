import { useState } from 'preact/hooks';
import type { PlannedBatch } from '../../batch/add-planned';
import type { Store } from '../../batch/store';
import { labelOf } from '../../formula/labels';
import { type Swap, swapsFor } from '../../formula/swap';
import { writeValue } from '../../formula/write-row';
import type { BatchPlan } from '../../interchange/recipe-batch';
import { describeRecipeProblem } from '../../interchange/recipe-text';
import { writeGrams } from '../../interchange/typed-texts';
import type { SweetenerId } from '../../reference/sweeteners';
import { savePrice } from './Swap';
import { SwapTable } from './SwapTable';

interface Props {
  readonly plan: BatchPlan;
  readonly store: Store;
  readonly onMake: (planned: PlannedBatch) => void;
}

const verdicts = { below: 'below the usual', above: 'above the usual' } as const;

/** What a batch made of the text would be given, compared with what is usual; made only when asked for. */
export function RecipePlan({ plan, store, onMake }: Props) {
  const [swappedFor, setSwappedFor] = useState<SweetenerId | null>(null);
  const settings = store.settings.value;
  const { prices = {} } = store.document.value;
  const { source, jar, grain, sweetener } = plan.formulation.choices;
  const swaps = swapsFor(plan.formulation, prices);
  // Looked up anew: a food corrected since changes how much of it there must be.
  const swapped = swaps?.find(({ id }) => id === swappedFor) ?? null;
  const planned = withSwap(plan, swapped, settings.decimalComma);
  const names = [
    jar.name,
    source.name,
    swapped?.name ?? sweetener.map(({ entry }) => entry.name).join(' and '),
    grain.name,
  ];
  return (
    <section aria-label="The batch this makes">
      <h3>The batch this makes</h3>
      <p>{names.join(' · ')}</p>
      <ul>
        {planned.cells.map(({ row, text }) => (
          <li key={row}>
            {labelOf(row)}: <b>{text}</b>
          </li>
        ))}
        {plan.compared.map(({ row, kind, value, usual, verdict }) => (
          <li key={row}>
            {labelOf(row)}: <b>{writeValue(value, kind, null, settings).metric}</b>
            {usual !== null && (
              <>
                {verdict === null || verdict === 'usual' ? ', ' : `, ${verdicts[verdict]}; `}
                usual is {writeValue(usual.low, kind, null, settings).metric} to{' '}
                {writeValue(usual.high, kind, null, settings).metric}
              </>
            )}
          </li>
        ))}
      </ul>
      {plan.remarks.length > 0 && (
        <ul aria-label="Worth knowing">
          {plan.remarks.map((remark, place) => (
            <li key={place}>{describeRecipeProblem(remark, settings.decimalComma)}</li>
          ))}
        </ul>
      )}
      {plan.extras.length > 0 && (
        <>
          <h4>Left over, for you to remember</h4>
          <ul>
            {plan.extras.map((extra, place) => (
              <li key={place}>{extra}</li>
            ))}
          </ul>
        </>
      )}
      <p>
        <button type="button" class="button" onClick={() => onMake(planned)}>
          Make this batch
        </button>
      </p>
      {swaps !== null && (
        <details class="settings">
          <summary>Swap its sweetener first</summary>
          <SwapTable
            swaps={swaps}
            used={new Set(swapped === null ? plan.formulation.recipe.sweetener.map(({ id }) => id) : [swapped.id])}
            kitchen={settings}
            prices={prices}
            onUse={({ id }) => setSwappedFor(id)}
            onPrice={(id, text) => savePrice(store, id, text)}
          />
        </details>
      )}
    </section>
  );
}

/** The plan with its sweetener swapped at equal fermentable sugar. */
function withSwap(plan: BatchPlan, swapped: Swap | null, decimalComma: boolean): PlannedBatch {
  const { name, choices, cells } = plan;
  const { mass } = swapped ?? { mass: null };
  if (swapped === null || mass === null) return { name, choices, cells };
  const text = writeGrams(mass.value, decimalComma);
  return {
    name,
    choices: { ...choices, sweetener: [{ id: swapped.id, share: 1 }] },
    cells: cells.map((cell) => (cell.row === 'sweetenerMass' ? { ...cell, text } : cell)),
  };
}
