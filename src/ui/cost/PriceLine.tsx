import type { Ref } from 'preact';
import { useState } from 'preact/hooks';
import type { Packaged } from '../../batch/document/document';
import { packageSteps, setPackage, typePrice } from '../../batch/edits/package-edits';
import { packageProblem, readPackage } from '../../batch/reading/read-package';
import type { Store } from '../../batch/store/store';
import { describePackageFault, tellUnitPrice } from '../../formula/cost/cost-words';
import { currencyOf, writePrice } from '../../formula/cost/money';
import type { FoodToBuy } from '../../formula/cost/needs';
import { priceOf } from '../../formula/cost/package-price';
import { KeptTyped, Refusal } from '../page/Typed';

interface Props {
  readonly food: FoodToBuy;
  readonly store: Store;
  /** How much the batch takes of it; null for a food that it does not take. */
  readonly amount: string | null;
  readonly cost: string | null;
  readonly priceField?: Ref<HTMLInputElement>;
}

/** One food: what a package holds, what it costs, and what of that goes into the batch. */
export function PriceLine({ food, store, amount, cost, priceField }: Props) {
  const { packages = [], settings } = store.document.value;
  const entry = packages.find((one) => one.food === food.food);
  const [draft, setDraft] = useState<string | null>(null);
  const [refused, setRefused] = useState<{ readonly text: string; readonly why: string } | null>(null);
  const held = entry?.amount.text ?? draft ?? usualPackage(food);
  const priced = priceOf(food, packages);
  const currency = currencyOf(settings.currency);
  const fault = faultOf(held, entry, priced, settings);
  const keepAmount = (text: string) => {
    if (entry === undefined) setDraft(text);
    else {
      const typed = { amount: readPackage(text, settings), price: entry.price };
      store.takeEdit(setPackage(store.document.value, food.food, typed), packageSteps.set(food.food, typed));
    }
  };
  const keepPrice = (text: string) => {
    const typed = typePrice(store.document.value, food.food, held, text);
    setRefused(typed.ok ? null : { text, why: typed.why });
    if (typed.ok) store.takeEdit(typed.document, typed.step);
  };
  return (
    <div class="price-line" role="group" aria-label={food.name}>
      <p class="price-name">
        {food.name}
        <small>
          {[amount, 'why' in priced ? null : tellUnitPrice(food, priced, currency, settings)]
            .filter((part) => part !== null)
            .join(' · ')}
        </small>
      </p>
      <KeptTyped
        aria-label={`Package of ${food.name}`}
        kept={held}
        isRefused={fault !== null}
        maxLength={60}
        onKeep={keepAmount}
      />
      <KeptTyped
        aria-label={`Price of that package of ${food.name}`}
        inputMode="decimal"
        field={priceField ?? null}
        kept={refused?.text ?? (entry === undefined ? '' : writePrice(entry.price, currency, settings.decimalComma))}
        placeholder="price"
        isRefused={refused !== null}
        maxLength={40}
        onKeep={keepPrice}
      />
      <output class="price-cost">{cost}</output>
      <Refusal why={refused?.why ?? fault} />
    </div>
  );
}

function faultOf(
  held: string,
  entry: Packaged | undefined,
  priced: ReturnType<typeof priceOf>,
  settings: Store['settings']['value'],
): string | null {
  if (entry === undefined) return packageProblem(held, settings);
  if (!('why' in priced) || priced.why === 'noPrice') return null;
  return priced.why === 'unreadable'
    ? (packageProblem(held, settings) ?? describePackageFault(priced.why))
    : describePackageFault(priced.why);
}

/** What a package of it mostly holds, until it is typed. */
function usualPackage({ isLiquid, piece }: FoodToBuy): string {
  if (!isLiquid) return '1 kg';
  return piece === null ? '1 L' : '1 can';
}
