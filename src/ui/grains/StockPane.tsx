import { useState } from 'preact/hooks';
import type { Batch, Stock, StockLine } from '../../batch/document/document';
import { mostStockLines } from '../../batch/document/document-limits';
import { addStockLine, stockSteps } from '../../batch/edits/stock-edits';
import { entryOf, ledgerFor } from '../../batch/reading/stock-ledger';
import type { Store } from '../../batch/store/store';
import { growthBySource } from '../../formula/stock/growth';
import { describeEntry } from '../../formula/stock/line-words';
import { MayEdit } from '../page/MayEdit';
import type { PageState } from '../page/page-state';
import { StockBack } from './StockBack';
import { StockCare } from './StockCare';
import { StockChart } from './StockChart';
import { StockEnough } from './StockEnough';
import { StockFoot } from './StockFoot';
import { StockGrowth } from './StockGrowth';
import { StockLineForm } from './StockLineForm';
import { StockLines } from './StockLines';
import { StockNow } from './StockNow';
import { StockOut } from './StockOut';
import { StockRest } from './StockRest';
import type { TakeStockEdit } from './take-stock-edit';

interface Props {
  readonly stock: Stock;
  readonly batch: Batch;
  readonly store: Store;
  readonly page: PageState;
  readonly take: TakeStockEdit;
  /** Null while another jar is being added. */
  readonly onAdd: (() => void) | null;
}

/** So many batches that grains are out in stand open; more are a press away. */
const mostAway = 3;

/** All there is to one jar of grains, what is needed soonest first. */
export function StockPane({ stock, batch, store, page, take, onAdd }: Props) {
  const kitchen = store.settings.value;
  const [isAll, setAll] = useState(false);
  const { ledger } = ledgerFor(stock);
  const formulation = store.formulationOf(batch);
  const growths = growthBySource(stock.grains, ledger.rounds);
  const write = (line: StockLine) => {
    if (stock.lines.length >= mostStockLines) {
      const full = `A jar holds ${mostStockLines} lines. Save a CSV of the weighings, then remove some.`;
      return take(store.document.value, '', full);
    }
    const words = `${describeEntry(entryOf(line), kitchen)}. Undo takes it back.`;
    return take(addStockLine(store.document.value, stock.key, line), stockSteps.add(line, kitchen), words);
  };
  const of = { stock, ledger, kitchen };
  const away = isAll ? ledger.away : ledger.away.slice(-mostAway);
  const older = isAll ? [] : ledger.away.slice(0, -mostAway);
  return (
    <div class="stock-pane">
      <StockNow {...of} batch={batch} formulation={formulation} />
      <MayEdit store={store}>
        <div class="stock-acts">
          {away.map((one) => (
            <StockBack
              key={`${one.out.batch} ${one.out.at}`}
              {...of}
              away={one}
              batch={batch}
              store={store}
              page={page}
              write={write}
            />
          ))}
          {older.length > 0 && (
            <button type="button" class="follow" onClick={() => setAll(true)}>
              {older.length === 1 ? 'One older batch' : `${older.length} older batches`} they never came back from
            </button>
          )}
          <StockOut {...of} batch={batch} formulation={formulation} write={write} />
          <details class="fold-panel">
            <summary>Weigh, feed, move, give away</summary>
            <StockLineForm {...of} onLine={write} />
          </details>
        </div>
      </MayEdit>
      <StockChart {...of} />
      <StockGrowth {...of} lines={growths} batch={batch} />
      <StockEnough {...of} lines={growths} batch={batch} formulation={formulation} />
      <StockRest {...of} lines={growths} batch={batch} store={store} take={take} write={write} />
      <StockCare {...of} />
      <StockLines {...of} store={store} take={take} />
      <StockFoot {...of} store={store} take={take} onAdd={onAdd} />
    </div>
  );
}
