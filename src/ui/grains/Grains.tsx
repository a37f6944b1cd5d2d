import { useRef, useState } from 'preact/hooks';
import type { Batch, SheetDocument } from '../../batch/document/document';
import { stockOf } from '../../batch/reading/stock-ledger';
import type { Store } from '../../batch/store/store';
import { MayEdit } from '../page/MayEdit';
import type { PageState } from '../page/page-state';
import { useMinutes } from '../plan/use-minutes';
import { NewStock } from './NewStock';
import { StockPane } from './StockPane';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  readonly page: PageState;
}

/** One jar of grains at a time: the one the open batch is about, or another that is chosen. */
export function Grains({ batch, store, page }: Props) {
  const { stocks = [] } = store.document.value;
  const [chosen, setChosen] = useState<string | null>(null);
  const [isAdding, setAdding] = useState(false);
  const [said, setSaid] = useState('');
  const status = useRef<HTMLParagraphElement>(null);
  useMinutes();
  const stock = stocks.find(({ key }) => key === chosen) ?? stockOf(batch, stocks);
  const take = (next: SheetDocument, step: string, words: string) => {
    const { activeElement } = document;
    store.takeEdit(next, step);
    setSaid(words);
    // Where what was pressed goes away, the focus is led to what is said of it.
    requestAnimationFrame(() => activeElement?.isConnected === false && status.current?.focus());
  };
  const choose = (key: string) => {
    setChosen(key);
    setAdding(false);
    setSaid('');
  };
  return (
    <section class="grains" aria-label="Grains">
      <h2>Grains</h2>
      {stocks.length > 1 && (
        <label class="grains-pick">
          <span>Which jar</span>
          <select value={stock?.key} onChange={(event) => choose(event.currentTarget.value)}>
            {stocks.map(({ key, name }) => (
              <option key={key} value={key}>
                {name}
              </option>
            ))}
          </select>
        </label>
      )}
      <p ref={status} class="said" role="status" tabIndex={-1}>
        {said}
      </p>
      {(stock === undefined || isAdding) && (
        <MayEdit store={store}>
          <NewStock
            batch={batch}
            store={store}
            isFirst={stock === undefined}
            onKept={(next, step, words) => {
              take(next, step, words);
              choose(next.stocks?.at(-1)?.key ?? '');
              setSaid(words);
            }}
          />
        </MayEdit>
      )}
      {stock !== undefined && (
        <StockPane
          key={stock.key}
          stock={stock}
          batch={batch}
          store={store}
          page={page}
          take={take}
          onAdd={isAdding ? null : () => setAdding(true)}
        />
      )}
    </section>
  );
}
