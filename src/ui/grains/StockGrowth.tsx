import { useState } from 'preact/hooks';
import type { Batch, Settings, Stock } from '../../batch/document/document';
import { type GrowsIn, type GrowthLine, growthIn } from '../../formula/stock/growth';
import type { Ledger } from '../../formula/stock/ledger';
import { describeDoubling, describeGrowth, listedNameOf, writeGrowth } from '../../formula/stock/stock-words';

interface Props {
  readonly stock: Stock;
  readonly ledger: Ledger;
  readonly kitchen: Settings;
  readonly lines: readonly GrowthLine[];
  readonly batch: Batch;
}

/** How they grow a batch, by what they were in: as weighed here, else as expected, always as a range. */
export function StockGrowth({ stock, kitchen, lines, batch }: Props) {
  const [isTold, setTold] = useState(false);
  const comma = kitchen.decimalComma;
  const rest: GrowsIn = { medium: stock.grains === 'milk' ? 'dairy' : 'sugarWater' };
  const asked: readonly GrowsIn[] = batch.grains === stock.grains ? [{ source: batch.source }, rest] : [rest];
  const others = asked.filter((where) => !lines.some((line) => listedNameOf(line.in) === listedNameOf(where)));
  const all = [
    ...lines,
    ...others.map((where) => ({ in: where, growth: growthIn(stock.grains, [], where), slips: 0 })),
  ];
  return (
    <section class="stock-growth" aria-label="Growth">
      <h3>How they grow</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">In</th>
            <th scope="col">A batch</th>
            <th scope="col">From</th>
          </tr>
        </thead>
        <tbody>
          {all.map(({ in: where, growth, slips }) => (
            <tr key={listedNameOf(where)}>
              <th scope="row">{listedNameOf(where)}</th>
              <td>
                <b>{writeGrowth(growth, comma)}</b>
                {isTold && <span class="origin">{describeGrowth(growth, comma)}</span>}
              </td>
              <td>
                {growth.from === 0 ? 'expected' : growth.from === 1 ? '1 batch' : `${growth.from} batches`}
                {slips > 0 && <span class="hint">{slips} left out: too far off to be growth</span>}
                {describeDoubling(growth) !== null && <span class="hint">{describeDoubling(growth)}</span>}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <button type="button" class="quiet" aria-pressed={isTold} onClick={() => setTold(!isTold)}>
        how so
      </button>
    </section>
  );
}
