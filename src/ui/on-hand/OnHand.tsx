import { useState } from 'preact/hooks';
import { cellProblem } from '../../batch/cell-problem';
import type { Batch } from '../../batch/document';
import type { Store } from '../../batch/store';
import { largestBatch, makeFrom, stockProblem } from '../../formula/on-hand';
import { type StockId, stockIds, stockRows } from '../../formula/order';
import { describeProblem } from '../../formula/words';
import { writeValue } from '../../formula/write-row';
import { leading } from '../jar/leading';
import { Whose } from '../page/Whose';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
}

/** What there is of source, sweetener, grains and jars; the largest batch it makes, and what limits it. */
export function OnHand({ batch, store }: Props) {
  const formulation = store.formulationOf(batch);
  const settings = store.settings.value;
  const { choices } = formulation;
  const names: Readonly<Record<StockId, string>> = {
    source: choices.source.name,
    sweetener: choices.sweetener.map(({ entry }) => entry.name).join(' and '),
    grains: choices.grain.name,
    jars: `Jars: ${choices.jar.name}`,
  };
  const onHand = batch.onHand ?? {};
  const largest = largestBatch(formulation, onHand);
  const say = (milk: number): string => {
    const { first, second } = leading(writeValue(milk, 'volume', null, settings), settings.leads);
    return second === null ? first : `${first} (${second})`;
  };
  const make = () => {
    const text = largest === null ? undefined : onHand[largest.limitedBy]?.text;
    if (largest === null || text === undefined) return;
    const label = `Make the largest batch from ${text}`;
    store.takeWayOut(batch.id, { label, changes: makeFrom(largest.limitedBy, formulation) });
  };
  return (
    <section class="on-hand" aria-label={`On hand for ${batch.name}`}>
      <h2>
        What is on hand?
        <Whose />
      </h2>
      <p>Type what there is; the sheet finds the largest batch.</p>
      <div class="stock">
        {stockIds.map((stock) => (
          <Stock key={`${batch.id} ${stock}`} stock={stock} name={names[stock]} batch={batch} store={store} />
        ))}
      </div>
      {largest !== null && (
        <div role="status">
          <p>
            The largest batch is <b>{say(largest.milk)}</b> of milk, limited by the{' '}
            <b>{names[largest.limitedBy].toLowerCase()}</b>.
          </p>
          <ul>
            {largest.limits.map(({ stock, milk }) => (
              <li key={stock}>
                {names[stock]}: enough for {say(milk)}
              </li>
            ))}
          </ul>
          <button type="button" class="button" onClick={make}>
            Make this batch
          </button>
        </div>
      )}
    </section>
  );
}

function Stock({ stock, name, batch, store }: Props & { stock: StockId; name: string }) {
  const cell = batch.onHand?.[stock] ?? null;
  const found = stockProblem(stock, store.formulationOf(batch));
  const impossible = found === null ? null : describeProblem(found, store.settings.value);
  const [text, setText] = useState<string | null>(null);
  const problem = cell === null ? null : (cellProblem(stockRows[stock], cell, store.settings.value) ?? impossible);
  const keep = () => {
    if (text !== null) store.stockUp(batch.id, stock, text);
    setText(null);
  };
  return (
    <label>
      <span>{name}</span>
      <input
        aria-label={`On hand: ${name}`}
        value={text ?? cell?.text ?? ''}
        autocomplete="off"
        onInput={(event) => setText(event.currentTarget.value)}
        onBlur={keep}
        onKeyDown={(event) => event.key === 'Enter' && keep()}
      />
      {problem !== null && (
        <span class="problem refusal" role="alert">
          <span>{problem}</span>
        </span>
      )}
    </label>
  );
}
