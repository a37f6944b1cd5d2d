import { useEffect, useRef, useState } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import { packageSteps, setCurrency } from '../../batch/edits/package-edits';
import type { Store } from '../../batch/store/store';
import { batchCost, hasPrice } from '../../formula/cost/batch-cost';
import { costMovedBy, costRounding, describeMissing, tellCost } from '../../formula/cost/cost-words';
import { foodOfKey } from '../../formula/cost/food-of-key';
import { currencyOf } from '../../formula/cost/money';
import { bottleFruits } from '../../formula/fizz/bottle-additions';
import { fruits } from '../../reference/fruits';
import { KeptTyped } from '../page/Typed';
import { Whose } from '../page/Whose';
import { menus } from '../sheet/choices';
import { MenuOptions } from '../sheet/MenuOptions';
import { Compared } from './Compared';
import { PriceLine } from './PriceLine';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
}

/** What a batch costs: a price for each thing it takes, the whole, a litre and a glass. */
export function Prices({ batch, store }: Props) {
  const { packages = [], settings } = store.document.value;
  const currency = currencyOf(settings.currency);
  const formulation = store.formulationOf(batch);
  const cost = batchCost(formulation, packages, batch.carton);
  const told = tellCost(cost, currency, settings);
  const missing = describeMissing(cost);
  const here = new Set(cost.lines.map(({ need }) => need.food));
  return (
    <section class="cost" aria-label={`Cost of ${batch.name}`}>
      <h2>
        Cost
        <Whose />
      </h2>
      <div role="status">
        {hasPrice(cost) ? (
          <p class="cost-total">
            <b>{told.batch}</b> {missing === null ? 'the batch' : 'so far'}
            {told.litre !== null && (
              <>
                <span class="cost-each">
                  <b>{told.litre}</b> a litre
                </span>
                <span class="cost-each">
                  <b>{told.glass}</b> a glass
                </span>
              </>
            )}
          </p>
        ) : (
          <p>
            {cost.lines.length === 0
              ? 'Nothing to price yet: mend the marked cells first.'
              : 'Type what you paid for a package. The rest is worked out.'}
          </p>
        )}
        {hasPrice(cost) && missing !== null && <p>{missing}</p>}
      </div>
      {/* Each field says the same in its name. */}
      <div class="price-heads" aria-hidden="true">
        <span />
        <span>Package</span>
        <span>Price</span>
        <span>Batch</span>
      </div>
      <div class="price-list">
        {told.lines.map(({ line: { need }, amount, cost: written }) => (
          <PriceLine key={`${need.part} ${need.food}`} food={need} store={store} amount={amount} cost={written} />
        ))}
      </div>
      <OtherPrices store={store} here={here} />
      <Compared batch={batch} store={store} />
      {hasPrice(cost) && (
        <p class="cost-note">
          {costMovedBy} {costRounding}
        </p>
      )}
    </section>
  );
}

const fruitMenu = {
  label: 'Fruit and juice',
  options: bottleFruits.map((id) => ({ value: `fruit.${id}`, label: fruits[id].name })),
};

function keyed(kind: 'source' | 'sweetener') {
  return menus[kind].map(({ label, options }) => ({
    label,
    options: options.map((option) => ({ ...option, value: `${kind}.${option.value}` })),
  }));
}

/** The prices of what the batch does not take, another to be typed, and how money is written. */
function OtherPrices({ store, here }: { readonly store: Store; readonly here: ReadonlySet<string> }) {
  const { packages = [], cartons = [], settings } = store.document.value;
  const [added, setAdded] = useState<readonly string[]>([]);
  const field = useRef<HTMLInputElement>(null);
  const last = added.at(-1);
  useEffect(() => {
    if (last !== undefined) field.current?.focus();
  }, [last]);
  const known = packages.map(({ food }) => food);
  const foods = [...known, ...added.filter((food) => !known.includes(food))].filter((food) => !here.has(food));
  const names = new Map(packages.map(({ food, name }) => [food, name]));
  const add = (food: string) => {
    if (food !== '' && !here.has(food)) setAdded([...added.filter((one) => one !== food), food]);
  };
  const groups = [
    ...keyed('source'),
    ...(cartons.length === 0
      ? []
      : [{ label: 'Your cartons', options: cartons.map(({ name }) => ({ value: `carton.${name}`, label: name })) }]),
    ...keyed('sweetener'),
    fruitMenu,
    { label: 'For grains at rest', options: [{ value: 'milk.dairy', label: 'Dairy milk' }] },
  ];
  return (
    <details class="fold-panel">
      <summary>{foods.length === 0 ? 'Other prices' : `Other prices (${foods.length})`}</summary>
      <div class="price-list">
        {foods.map((food) => (
          <PriceLine
            key={food}
            food={foodOfKey(food, names.get(food))}
            store={store}
            amount={null}
            cost={null}
            {...(food === last ? { priceField: field } : {})}
          />
        ))}
      </div>
      <div class="price-more">
        <label>
          <span>Another food</span>
          <select value="" onChange={(event) => add(event.currentTarget.value)}>
            <option value="">Choose it</option>
            <MenuOptions groups={groups} />
          </select>
        </label>
        <label>
          <span>Currency</span>
          <KeptTyped
            kept={settings.currency ?? ''}
            placeholder="such as 1 € or $1"
            maxLength={8}
            onKeep={(text) => store.takeEdit(setCurrency(store.document.value, text), packageSteps.currency(text))}
          />
        </label>
      </div>
    </details>
  );
}
