import type { Swap } from '../formula/swap';
import { type Kitchen, writeValue } from '../formula/write-row';
import { writeNumber } from '../measure/write-quantity';
import type { SweetenerId } from '../reference/sweeteners';
import { leading } from './leading';

interface Props {
  readonly swaps: readonly Swap[];
  readonly used: ReadonlySet<SweetenerId>;
  readonly kitchen: Kitchen;
  readonly onUse: (swap: Swap) => void;
  readonly onPrice: (id: SweetenerId, text: string) => void;
  readonly prices: Readonly<Partial<Record<SweetenerId, number>>>;
}

/** Every sweetener at the same fermentable sugar, against the one in use. */
export function SwapTable({ swaps, used, kitchen, onUse, onPrice, prices }: Props) {
  return (
    <div class="wide-table">
      <table>
        <thead>
          <tr>
            <th scope="col">Sweetener</th>
            <th scope="col">Amount</th>
            <th scope="col">Water it brings</th>
            <th scope="col">Sucrose, glucose, fructose</th>
            <th scope="col">Swapped spoon for spoon</th>
            <th scope="col">Price of 1 kg, and cost</th>
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

type LineProps = Pick<Props, 'kitchen' | 'onUse' | 'onPrice'> & {
  readonly swap: Swap;
  readonly used: boolean;
  readonly price: number | null;
};

function Line({ swap, used, kitchen, onUse, onPrice, price }: LineProps) {
  const { mass, weight, kinds, cost } = swap;
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
          <button type="button" class="follow" aria-label={`Use ${swap.name}`} onClick={() => onUse(swap)}>
            Use it
          </button>
        )}
      </th>
      <td>
        <b>{first}</b>
        {second !== null && <span class="second">{second}</span>}
        {mass.high > mass.low && <span class="second">an estimate: {ends}</span>}
      </td>
      <td>{swap.water === null ? '–' : writeValue(swap.water, 'mass', null, kitchen).metric}</td>
      <td>
        {kinds === null
          ? 'not known one by one'
          : [kinds.sucrose, kinds.glucose, kinds.fructose].map((share) => percent(share, 'auto')).join(', ')}
      </td>
      <td>{swap.spoonForSpoon === null ? '–' : `${percent(swap.spoonForSpoon, 'exceptZero')} sugar`}</td>
      <td>
        <input
          class="price"
          inputMode="decimal"
          aria-label={`Price of 1 kg: ${swap.name}`}
          defaultValue={price === null ? '' : String(price)}
          onChange={(event) => onPrice(swap.id, event.currentTarget.value)}
        />
        {cost !== null && <span class="second">costs {writeNumber(cost, 2, kitchen.decimalComma)}</span>}
      </td>
      <td>
        {swap.flavour}
        {swap.caution !== null && <span class="second">{swap.caution}</span>}
      </td>
    </tr>
  );
}

function percent(share: number, signDisplay: 'auto' | 'exceptZero'): string {
  return new Intl.NumberFormat('en', { style: 'percent', maximumFractionDigits: 0, signDisplay }).format(share);
}
