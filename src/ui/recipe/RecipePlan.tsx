import type { Signal } from '@preact/signals';
import type { PlannedBatch } from '../../batch/edits/add-planned';
import type { Store } from '../../batch/store/store';
import { type Swap, swapsFor } from '../../formula/advice/swap';
import { currencyOf } from '../../formula/cost/money';
import { sweetenerCosts } from '../../formula/cost/sweetener-cost';
import type { Formulation } from '../../formula/engine/formulate';
import { labelOf } from '../../formula/words/labels';
import { writeValue } from '../../formula/words/write-row';
import type { BatchPlan, Chosen } from '../../interchange/recipe-batch';
import { describeRecipeProblem } from '../../interchange/recipe-text';
import { writeGrams } from '../../interchange/typed-texts';
import { grains } from '../../reference/grains';
import { sources } from '../../reference/sources';
import type { SweetenerId } from '../../reference/sweeteners';
import { savePrice } from './Swap';
import { SwapTable } from './SwapTable';

interface Props {
  readonly plan: BatchPlan;
  readonly store: Store;
  /** The sweetener it is swapped for before it is made; null where it is as the text has it. */
  readonly swappedFor: Signal<SweetenerId | null>;
  /** Where the text names none. */
  readonly onChoose: (choice: Chosen) => void;
  readonly onMake: (planned: PlannedBatch) => void;
}

const verdicts = { below: 'below the usual', above: 'above the usual' } as const;

/** What a batch made of the text would be given, compared with what is usual; made only when asked for. */
export function RecipePlan({ plan, store, swappedFor, onChoose, onMake }: Props) {
  const settings = store.settings.value;
  const { packages = [] } = store.document.value;
  const { formulation } = plan;
  const swaps = formulation === null ? null : swapsFor(formulation, sweetenerCosts(packages));
  // Looked up anew: a food corrected since changes how much of it there must be.
  const swapped = swaps?.find(({ id }) => id === swappedFor.value) ?? null;
  const planned = withSwap(plan, swapped, settings.decimalComma);
  return (
    <>
      <section aria-label="The batch this makes">
        <h3>The batch this makes</h3>
        {formulation !== null && <p>{namesOf(formulation, swapped).join(' · ')}</p>}
        <Ask plan={plan} onChoose={onChoose} />
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
            <h4>For the glass, or left over</h4>
            <ul>
              {plan.extras.map((extra, place) => (
                <li key={place}>{extra}</li>
              ))}
            </ul>
          </>
        )}
        {formulation !== null && swaps !== null && (
          <details class="settings">
            <summary>Swap its sweetener first</summary>
            <SwapTable
              swaps={swaps}
              used={new Set(swapped === null ? formulation.recipe.sweetener.map(({ id }) => id) : [swapped.id])}
              kitchen={settings}
              packages={packages}
              currency={currencyOf(settings.currency)}
              onUse={({ id }) => {
                swappedFor.value = id;
              }}
              onPrice={(id, held, text) => savePrice(store, id, held, text)}
            />
          </details>
        )}
      </section>
      <p class="main-action">
        <button type="button" class="button next" disabled={plan.asks.length > 0} onClick={() => onMake(planned)}>
          Make this batch
        </button>
        {plan.asks.length > 0 && <span>Choose {plan.asks.map((what) => asked[what]).join(' and ')} first.</span>}
      </p>
    </>
  );
}

function namesOf({ choices: { jar, source, sweetener, grain } }: Formulation, swapped: Swap | null): readonly string[] {
  const sweet = swapped?.name ?? sweetener.map(({ entry }) => entry.name).join(' and ');
  return [jar.name, source.name, sweet, grain.name];
}

const asked = { source: 'a nut, seed or coconut', grains: 'a culture' } as const;

/** The choices that the text does not name, which are the cook’s to make. */
function Ask({ plan, onChoose }: Pick<Props, 'plan' | 'onChoose'>) {
  const { choices, lacking } = plan;
  return (
    <div class="stock">
      {lacking.includes('source') && (
        <Menu
          label="Nut, seed or coconut"
          value={choices.source}
          table={sources}
          onPick={(source) => onChoose({ source })}
        />
      )}
      {lacking.includes('grains') && (
        <Menu
          label="Kind of culture"
          value={choices.grains}
          table={grains}
          onPick={(kind) => onChoose({ grains: kind })}
        />
      )}
    </div>
  );
}

interface MenuProps<Id extends string> {
  readonly label: string;
  readonly value: Id | undefined;
  readonly table: Readonly<Record<Id, { readonly name: string }>>;
  readonly onPick: (id: Id) => void;
}

function Menu<Id extends string>({ label, value, table, onPick }: MenuProps<Id>) {
  const isId = (text: string): text is Id => Object.hasOwn(table, text);
  const ids = Object.keys(table).filter(isId);
  return (
    <label>
      {label}
      <select
        value={value ?? ''}
        onChange={({ currentTarget }) => {
          if (isId(currentTarget.value)) onPick(currentTarget.value);
        }}
      >
        {value === undefined && <option value="">choose…</option>}
        {ids.map((id) => (
          <option key={id} value={id}>
            {table[id].name}
          </option>
        ))}
      </select>
    </label>
  );
}

/** The plan with its sweetener swapped at equal fermentable sugar. */
function withSwap(plan: BatchPlan, swapped: Swap | null, decimalComma: boolean): PlannedBatch {
  const { name, choices, cells, extras } = plan;
  const { mass } = swapped ?? { mass: null };
  if (swapped === null || mass === null) return { name, choices, cells, extras };
  const text = writeGrams(mass.value, decimalComma);
  return {
    name,
    extras,
    choices: { ...choices, sweetener: [{ id: swapped.id, share: 1 }] },
    cells: cells.map((cell) => (cell.row === 'sweetenerMass' ? { ...cell, text } : cell)),
  };
}
