import { useState } from 'preact/hooks';
import type { Swap } from '../../formula/advice/swap';
import { type Currency, inCoins, writeMoney, writePrice } from '../../formula/cost/money';
import type { PackagePrice } from '../../formula/cost/package-price';
import { leading } from '../../formula/words/leading';
import { type Kitchen, writeValue } from '../../formula/words/write-row';
import { writeMetric } from '../../measure/write-quantity';
import type { SweetenerId } from '../../reference/sweeteners';
import './swap-table.css';

interface Props {
  readonly swaps: readonly Swap[];
  readonly used: ReadonlySet<SweetenerId>;
  readonly kitchen: Kitchen;
  readonly onUse: (swap: Swap) => void;
  /** Why the text is no price of a package that holds so much; null where it is one. */
  readonly onPrice: (id: SweetenerId, held: string, text: string) => string | null;
  readonly packages: readonly PackagePrice[];
  readonly currency: Currency;
}

/** Every sweetener at the same fermentable sugar, against the one in use. */
export function SwapTable({ swaps, used, kitchen, onUse, onPrice, packages, currency }: Props) {
  return (
    <div class="swap-frame">
      <table class="swap-table" aria-label="Sweeteners at the same fermentable sugar">
        <thead>
          <tr>
            <th scope="col">Sweetener</th>
            <th scope="col">Amount</th>
            <th scope="col">{columns.water}</th>
            <th scope="col">{columns.kinds}</th>
            <th scope="col">{columns.spoon}</th>
            <th scope="col">{columns.price}</th>
            <th scope="col">Taste</th>
          </tr>
        </thead>
        <tbody>
          {swaps.map((swap) => (
            <Line
              key={swap.id}
              swap={swap}
              used={used.has(swap.id)}
              kitchen={kitchen}
              onUse={onUse}
              onPrice={onPrice}
              entry={packages.find(({ food }) => food === `sweetener.${swap.id}`) ?? null}
              currency={currency}
            />
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** The heads of the columns that stand before their figure where there is no room for a table. */
const columns = {
  water: 'Water it brings',
  kinds: 'Sucrose, glucose, fructose',
  spoon: 'Swapped spoon for spoon',
  price: 'Price, and what this much costs',
} as const;

type LineProps = Pick<Props, 'kitchen' | 'onUse' | 'onPrice' | 'currency'> & {
  readonly swap: Swap;
  readonly used: boolean;
  readonly entry: PackagePrice | null;
};

function Line({ swap, used, kitchen, onUse, onPrice, entry, currency }: LineProps) {
  const { mass, weight, kinds, cost } = swap;
  const [refused, setRefused] = useState<string | null>(null);
  const held = entry?.amount.text ?? '1 kg';
  if (mass === null) {
    return (
      <tr>
        <th scope="row">{swap.name}</th>
        <td colSpan={6}>{swap.refused ?? 'The grains can’t ferment it.'}</td>
      </tr>
    );
  }
  const { first, second } = leading(writeValue(mass.value, 'mass', weight, kitchen), kitchen.leads);
  const ends = [mass.low, mass.high].map((end) => writeValue(end, 'mass', null, kitchen).metric).join(' to ');
  return (
    <tr class={used ? 'used' : ''}>
      <th scope="row">
        {swap.name}{' '}
        {used ? (
          <span class="tag">in use</span>
        ) : (
          <button type="button" class="follow" onClick={() => onUse(swap)}>
            Use <span class="unseen">{swap.name}</span>
          </button>
        )}
      </th>
      <td class="swap-amount">
        <b>{first}</b>
        {second !== null && <span class="second">{second}</span>}
        {mass.high > mass.low && <span class="second">an estimate: {ends}</span>}
      </td>
      <td data-label={columns.water}>
        {swap.water === null ? '–' : writeMetric(swap.water, 'mass', kitchen.decimalComma)}
      </td>
      <td data-label={columns.kinds}>
        {kinds === null
          ? 'not known one by one'
          : [kinds.sucrose, kinds.glucose, kinds.fructose].map((share) => percent(share, 'auto')).join(', ')}
      </td>
      <td data-label={columns.spoon}>
        {swap.spoonForSpoon === null ? '–' : `${percent(swap.spoonForSpoon, 'exceptZero')} sugar`}
      </td>
      <td data-label={columns.price}>
        <input
          class="price"
          inputMode="decimal"
          aria-label={`Price of ${held}: ${swap.name}`}
          defaultValue={entry === null ? '' : writePrice(entry.price, currency, kitchen.decimalComma)}
          aria-invalid={refused !== null}
          onChange={(event) => setRefused(onPrice(swap.id, held, event.currentTarget.value))}
        />
        <span class="second">for {held}</span>
        {refused !== null && (
          <span class="care" role="alert">
            {refused}
          </span>
        )}
        {cost !== null && (
          <span class="second">costs {writeMoney(inCoins(cost, currency), currency, kitchen.decimalComma)}</span>
        )}
      </td>
      <td class="swap-taste">
        {swap.flavour}
        {swap.caution !== null && <span class="second">{swap.caution}</span>}
      </td>
    </tr>
  );
}

function percent(share: number, signDisplay: 'auto' | 'exceptZero'): string {
  return new Intl.NumberFormat('en', { style: 'percent', maximumFractionDigits: 0, signDisplay }).format(share);
}
