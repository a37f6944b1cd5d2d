import { useState } from 'preact/hooks';
import type { Settings, Stock } from '../../batch/document/document';
import { changeStockLine, removeStockLine, stockSteps } from '../../batch/edits/stock-edits';
import { ledgerFor } from '../../batch/reading/stock-ledger';
import { writeDayAndTime } from '../../batch/reading/write-time';
import type { Store } from '../../batch/store/store';
import type { Entry, Ledger } from '../../formula/stock/ledger';
import { describeEntry, writeGrains } from '../../formula/stock/line-words';
import { lowerFirst } from '../../formula/words/lower-first';
import { sources } from '../../reference/sources';
import { MayEdit } from '../page/MayEdit';
import { usePrinting } from '../paper/use-printing';
import { StockLineForm } from './StockLineForm';
import type { TakeStockEdit } from './take-stock-edit';

interface Props {
  readonly stock: Stock;
  readonly ledger: Ledger;
  readonly kitchen: Settings;
  readonly store: Store;
  readonly take: TakeStockEdit;
}

/** So many lines stand open; more are a press away. */
const latest = 5;

/** What was written down, the latest first, with what there was after it. */
export function StockLines({ stock, ledger, kitchen, store, take }: Props) {
  const [isAll, setAll] = useState(false);
  const [changing, setChanging] = useState<Entry | null>(null);
  const isPrinting = usePrinting();
  const { placeOf } = ledgerFor(stock);
  const { points } = ledger;
  const shown = (isAll || isPrinting ? points : points.slice(-latest)).toReversed();
  const remove = (entry: Entry) => {
    const place = placeOf.get(entry) ?? stock.lines.length;
    take(removeStockLine(store.document.value, stock.key, place), stockSteps.remove, 'Removed. Undo brings it back.');
  };
  return (
    <section class="stock-lines" aria-label="Written down">
      <h3>Written down</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">What</th>
            <th scope="col">In all</th>
          </tr>
        </thead>
        <tbody>
          {shown.map(({ entry, total }) => {
            const words = describeEntry(entry, kitchen);
            const place = placeOf.get(entry) ?? 0;
            const line = stock.lines[place];
            return (
              <tr key={place}>
                <td>
                  {words}
                  {line?.note !== undefined && <span class="hint">{line.note}</span>}
                  {changing === entry && line !== undefined ? (
                    <MayEdit store={store}>
                      <StockLineForm
                        stock={stock}
                        ledger={ledger}
                        kitchen={kitchen}
                        changed={line}
                        onLine={(next) => {
                          setChanging(null);
                          take(
                            changeStockLine(store.document.value, stock.key, place, next),
                            stockSteps.change,
                            'Changed. Undo brings back what stood there.',
                          );
                        }}
                        onLeave={() => setChanging(null)}
                      />
                    </MayEdit>
                  ) : (
                    <MayEdit store={store}>
                      <span class="stock-line">
                        <span class="hint">{about(entry)}</span>
                        <span class="stock-buttons">
                          <button
                            type="button"
                            class="follow"
                            aria-label={`Change ${lowerFirst(words)}`}
                            onClick={() => setChanging(entry)}
                          >
                            Change
                          </button>
                          <button
                            type="button"
                            class="follow"
                            aria-label={`Remove ${lowerFirst(words)}`}
                            onClick={() => remove(entry)}
                          >
                            Remove
                          </button>
                        </span>
                      </span>
                    </MayEdit>
                  )}
                </td>
                <td>{writeGrains(total, kitchen)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {points.length > latest && (
        <button type="button" class="follow" onClick={() => setAll(!isAll)}>
          {isAll ? 'Only the latest' : `All ${points.length} lines`}
        </button>
      )}
    </section>
  );
}

function about({ at, source }: Entry): string {
  return [writeDayAndTime(at), ...(source === undefined ? [] : [sources[source].name])].join(' · ');
}
