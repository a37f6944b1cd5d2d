import { useState } from 'preact/hooks';
import type { Settings, Stock } from '../../batch/document/document';
import { longestName } from '../../batch/document/document-limits';
import { removeStock, renameStock, stockSteps } from '../../batch/edits/stock-edits';
import { ledgerFor } from '../../batch/reading/stock-ledger';
import type { Store } from '../../batch/store/store';
import { writeStocksCsv } from '../../interchange/stock-csv';
import { MayEdit } from '../page/MayEdit';
import { KeptTyped } from '../page/Typed';
import { downloadText } from '../paper/download-text';
import { useSheetOnPaper } from '../paper/use-sheet-on-paper';
import type { TakeStockEdit } from './take-stock-edit';

interface Props {
  readonly stock: Stock;
  readonly kitchen: Settings;
  readonly store: Store;
  readonly take: TakeStockEdit;
  readonly onAdd: (() => void) | null;
}

/** What is done with the jar as a whole: its name, another one, a file, paper. */
export function StockFoot({ stock, store, take, onAdd }: Props) {
  const [said, setSaid] = useState('');
  const paper = useSheetOnPaper('grains');
  const save = () => {
    const { stocks = [] } = store.document.value;
    const file = 'Grains.csv';
    const all = stocks.map((one) => ({ stock: one, points: ledgerFor(one).ledger.points }));
    downloadText(writeStocksCsv(all), file, 'text/csv;charset=utf-8');
    setSaid(`“${file}” is made, with every line of every jar.`);
  };
  return (
    <div class="stock-foot">
      <MayEdit store={store}>
        <div class="stock-whole">
          <label class="grains-pick">
            <span>Name of this jar</span>
            <KeptTyped
              kept={stock.name}
              maxLength={longestName}
              onKeep={(name) =>
                take(renameStock(store.document.value, stock.key, name), stockSteps.rename(name), 'Renamed.')
              }
            />
          </label>
          <p class="stock-buttons">
            {onAdd !== null && (
              <button type="button" class="button" onClick={onAdd}>
                Another jar of grains
              </button>
            )}
            <button
              type="button"
              class="button"
              onClick={() =>
                take(
                  removeStock(store.document.value, stock.key),
                  stockSteps.removeStock(stock.name),
                  `${stock.name} and all its lines are removed. Undo brings them back.`,
                )
              }
            >
              Remove this jar
            </button>
          </p>
        </div>
      </MayEdit>
      <p class="stock-buttons">
        <button type="button" class="button" onClick={save}>
          Save the weighings as CSV
        </button>
        <button type="button" class="button" onClick={paper.start}>
          Print this jar
        </button>
        <span role="status">{said}</span>
      </p>
    </div>
  );
}
