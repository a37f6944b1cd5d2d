import { useState } from 'preact/hooks';
import type { Swap } from '../../formula/advice/swap';
import { leading } from '../../formula/words/leading';
import { type Kitchen, writeValue } from '../../formula/words/write-row';
import { writeMetric, writeNumber } from '../../measure/write-quantity';
import type { SweetenerId } from '../../reference/sweeteners';
import './swap-table.css';

interface Props {
  readonly swaps: readonly Swap[];
  readonly used: ReadonlySet<SweetenerId>;
  readonly kitchen: Kitchen;
  readonly onUse: (swap: Swap) => void;
  /** False where the text is no price. */
  readonly onPrice: (id: SweetenerId, text: string) => boolean;
  readonly prices: Readonly<Partial<Record<SweetenerId, number>>>;
}

/** Every sweetener at the same fermentable sugar, against the one in use. */
export function SwapTable({ swaps, used, kitchen, onUse, onPrice, prices }: Props) {
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
              price={prices[swap.id] ?? null}
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
  price: 'Price of 1 kg, and cost',
} as const;

type LineProps = Pick<Props, 'kitchen' | 'onUse' | 'onPrice'> & {
  readonly swap: Swap;
  readonly used: boolean;
  readonly price: number | null;
};

function Line({ swap, used, kitchen, onUse, onPrice, price }: LineProps) {
  const { mass, weight, kinds, cost } = swap;
  const [priced, setPriced] = useState(true);
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
          aria-label={`Price of 1 kg: ${swap.name}`}
          defaultValue={price === null ? '' : writePlain(price, kitchen.decimalComma)}
          aria-invalid={!priced}
          onChange={(event) => setPriced(onPrice(swap.id, event.currentTarget.value))}
        />
        {!priced && (
          <span class="care" role="alert">
            Not a price. Type a number, such as {writePlain(4.5, kitchen.decimalComma)}.
          </span>
        )}
        {cost !== null && <span class="second">costs {writeNumber(cost, 2, kitchen.decimalComma)}</span>}
      </td>
      <td class="swap-taste">
        {swap.flavour}
        {swap.caution !== null && <span class="second">{swap.caution}</span>}
      </td>
    </tr>
  );
}

/** A number as it would be typed, so that it is read again as the same. */
function writePlain(price: number, decimalComma: boolean): string {
  return decimalComma ? String(price).replace('.', ',') : String(price);
}

function percent(share: number, signDisplay: 'auto' | 'exceptZero'): string {
  return new Intl.NumberFormat('en', { style: 'percent', maximumFractionDigits: 0, signDisplay }).format(share);
}
