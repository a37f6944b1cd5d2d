import type { Ref } from 'preact';
import { useState } from 'preact/hooks';
import type { Packaged } from '../../batch/document/document';
import { forgetPackage, isSameCurrency, packageSteps, setCurrency, setPackage } from '../../batch/edits/package-edits';
import { packageProblem, readPackage } from '../../batch/reading/read-package';
import { readPrice } from '../../batch/reading/read-price';
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
    else keep(store, food.food, { text, price: entry.price });
  };
  const keepPrice = (text: string) => {
    setRefused(null);
    if (text.trim() === '') {
      store.takeEdit(forgetPackage(store.document.value, food.food), packageSteps.forget(food.food));
      return;
    }
    const read = readPrice(text, settings.decimalComma);
    if (!read.ok) {
      setRefused({ text, why: read.why });
      return;
    }
    const { price } = read;
    const now = settings.currency;
    if (read.currency !== null && now !== undefined && !isSameCurrency(read.currency, now)) {
      const why = `Money is written as ${now} here. Type the number alone, or change how it is written below.`;
      setRefused({ text, why });
      return;
    }
    keep(store, food.food, { text: held, price }, now === undefined ? read.currency : null);
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

/** Keeps a package with its price, and how money is written where the price said so first, as one step. */
function keep(
  store: Store,
  food: string,
  { text, price }: { readonly text: string; readonly price: string },
  currency: string | null = null,
): void {
  const { settings } = store.document.value;
  const typed = { amount: readPackage(text, settings), price };
  const priced = setPackage(store.document.value, food, typed);
  store.takeEdit(currency === null ? priced : setCurrency(priced, currency), packageSteps.set(food, typed));
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
