import { useState } from 'preact/hooks';
import { type Batch, recipeOf } from '../../batch/document/document';
import { addDraft, chooseInDraft, type Drafted, draftOf, isSame } from '../../batch/edits/draft-from-stock';
import { stockUp } from '../../batch/edits/take-changes';
import { cellProblem, cellRemark, cellWaysOut } from '../../batch/reading/cell-problem';
import { ledgerFor } from '../../batch/reading/stock-ledger';
import type { Store } from '../../batch/store/store';
import { jarFewer, largestBatch, makeFrom, type Over, staysOver, stockProblem } from '../../formula/advice/on-hand';
import { changeRecipe } from '../../formula/advice/typed-change';
import { type Formulation, formulate } from '../../formula/engine/formulate';
import { type ChoiceRowId, type StockId, stockIds, stockRows } from '../../formula/recipe/order';
import { writeGrains } from '../../formula/stock/line-words';
import { bothUnits } from '../../formula/words/both-units';
import { leading } from '../../formula/words/leading';
import { describeProblem } from '../../formula/words/words';
import { writeRow, writeValue } from '../../formula/words/write-row';
import { KeptTyped, Refusal } from '../page/Typed';
import { menus } from '../sheet/choices';
import { MenuOptions } from '../sheet/MenuOptions';
import type { SheetState } from '../sheet/sheet-state';
import { WaysOut } from '../sheet/WaysOut';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  readonly state: SheetState;
  /** Called once a batch is made of it. */
  readonly onMade: () => void;
}

const choiceOf = {
  source: 'source',
  sweetener: 'sweetener',
  grains: 'grains',
  jars: 'vessel',
} as const satisfies Record<StockId, ChoiceRowId>;

/** What there is of source, sweetener, grains and jars; the largest batch it makes, what limits it and what stays over. */
export function OnHand({ batch, store, state, onMade }: Props) {
  const [own, setDraft] = useState<Drafted | null>(null);
  const draft = draftOf(batch, own);
  const document = store.document.value;
  const kitchen = store.settings.value;
  const formulation = formulate(recipeOf(document, draft));
  const { choices } = formulation;
  const names: Readonly<Record<StockId, string>> = {
    source: choices.source.name,
    sweetener: choices.sweetener.map(({ entry }) => entry.name).join(' and '),
    grains: choices.grain.name,
    jars: choices.jar.name,
  };
  const change = (stock: StockId, text: string) => {
    const [changed = draft] = stockUp({ ...document, batches: [draft] }, draft.id, stock, text).batches;
    if (!isSame(stock, draft, batch)) setDraft(changed);
    // The sheet speaks up where the batch that is looked at takes more than there is of the same.
    else store.stockUp(batch.id, stock, text);
  };
  const largest = largestBatch(formulation, draft.onHand ?? {});
  const made =
    largest === null ? null : formulate(changeRecipe(formulation.recipe, makeFrom(largest.limitedBy, formulation)));
  const fewer = made === null ? null : jarFewer(made);
  const say = (milk: number): string => bothUnits(writeValue(milk, 'volume', null, kitchen), kitchen.leads);
  const make = (changes: ReturnType<typeof makeFrom>, what: string, over: readonly Over[]) => {
    const old = new Set(document.batches.map(({ id }) => id));
    store.takeEdit(addDraft(document, draft, changes), `Make ${what} from what is on hand`);
    const added = store.document.peek().batches.find(({ id }) => !old.has(id));
    if (added === undefined) {
      state.notice.value = 'The sheet is full: remove a batch first.';
      return;
    }
    onMade();
    const left = over.map((one) => writeOver(one, formulation, store));
    const sentence = left.length === 0 ? 'nothing stays over' : `${left.join(', ')} stay over`;
    state.landOn(added.id, `${added.name}: ${what}; ${sentence}.`);
  };
  return (
    <section class="on-hand" aria-label={`On hand for ${batch.name}`}>
      <h2>From what I have</h2>
      <p>Type what there is; the sheet finds the largest batch and adds it beside the others.</p>
      <div class="stock">
        {stockIds.map((stock) => (
          <Stock
            key={stock}
            stock={stock}
            name={names[stock]}
            draft={draft}
            formulation={formulation}
            store={store}
            onChoose={(id) => setDraft(chooseInDraft(document, draft, choiceOf[stock], id))}
            onType={(text) => change(stock, text)}
          />
        ))}
      </div>
      {largest !== null && made !== null && (
        <div role="status">
          <p>
            The largest batch is <b>{say(largest.milk)}</b> of milk, limited by the{' '}
            <b>{lower(names[largest.limitedBy])}</b>.
          </p>
          <ul>
            {largest.limits.map(({ stock, milk }) => (
              <li key={stock}>
                {names[stock]}: enough for {say(milk)}
              </li>
            ))}
            {staysOver(made).map((over) => (
              <li key={`${over.stock} over`}>{writeOver(over, formulation, store)} stay over</li>
            ))}
          </ul>
        </div>
      )}
      {largest !== null && made !== null && (
        <div class="main-action">
          <button
            type="button"
            class="button next"
            onClick={() => make(makeFrom(largest.limitedBy, formulation), 'the largest batch', staysOver(made))}
          >
            Make this batch
          </button>
          {fewer !== null && (
            <button
              type="button"
              class="button"
              onClick={() => {
                const one = formulate(changeRecipe(formulation.recipe, fewer.changes));
                make(fewer.changes, fewer.jars === 1 ? 'one jar' : `${fewer.jars} jars`, staysOver(one));
              }}
            >
              Fill {fewer.jars === 1 ? 'one jar' : `${fewer.jars} jars`}, {percent(fewer.share)} less
            </button>
          )}
        </div>
      )}
    </section>
  );
}

function lower(name: string): string {
  return name.toLowerCase();
}

function percent(share: number): string {
  return new Intl.NumberFormat('en', { style: 'percent', maximumFractionDigits: 0 }).format(share);
}

/** What stays over, as the row it is an amount of is written. */
function writeOver({ stock, amount }: Over, formulation: Formulation, store: Store): string {
  const kitchen = store.settings.value;
  const { kind } = formulation.rows[stockRows[stock]];
  if (kind === 'choice') return '';
  const { choices } = formulation;
  const food: Readonly<Record<StockId, string>> = {
    source: choices.source.plural,
    sweetener: lower(choices.sweetener.map(({ entry }) => entry.name).join(' and ')),
    grains: lower(choices.grain.name),
    jars: 'jars',
  };
  return `${leading(writeValue(amount, kind, null, kitchen), kitchen.leads).first} ${food[stock]}`;
}

interface StockProps {
  readonly stock: StockId;
  readonly name: string;
  readonly draft: Batch;
  readonly formulation: Formulation;
  readonly store: Store;
  readonly onChoose: (id: string) => void;
  readonly onType: (text: string) => void;
}

function Stock({ stock, name, draft, formulation, store, onChoose, onType }: StockProps) {
  const kitchen = store.settings.value;
  const cell = draft.onHand?.[stock] ?? null;
  const found = stockProblem(stock, formulation);
  const impossible = found === null ? null : describeProblem(found, kitchen);
  const problem = cell === null ? null : (cellProblem(stockRows[stock], cell, kitchen) ?? impossible);
  const remark = cell === null ? null : cellRemark(stockRows[stock], cell, kitchen);
  const asked = cell === null ? [] : cellWaysOut(stockRows[stock], cell, kitchen, formulation);
  const takes = writeRow(formulation, stockRows[stock], kitchen);
  const row = choiceOf[stock];
  const chosen = row === 'sweetener' ? draft.sweetener.map(({ id }) => id).join(' + ') : draft[row];
  return (
    <div class="stock-line">
      <select
        aria-label={`${what[stock]} on hand`}
        value={chosen}
        onChange={(event) => onChoose(event.currentTarget.value)}
      >
        {row === 'sweetener' && draft.sweetener.length > 1 && <option value={chosen}>{name}</option>}
        <MenuOptions groups={menus[row]} />
      </select>
      <KeptTyped
        aria-label={`On hand: ${name}`}
        kept={cell?.text ?? ''}
        placeholder={takes === null ? '' : `such as ${takes.metric}`}
        inputMode={stock === 'jars' ? 'numeric' : 'decimal'}
        isRefused={problem !== null}
        onKeep={onType}
      />
      {remark !== null && <span class="second">{remark}</span>}
      {stock === 'grains' && <Kept draft={draft} store={store} typed={cell?.text ?? null} onType={onType} />}
      <Refusal why={problem}>
        <WaysOut ways={asked} onTake={(meant) => onType(meant.text)} />
      </Refusal>
    </div>
  );
}

interface KeptProps extends Pick<StockProps, 'draft' | 'store' | 'onType'> {
  /** What stands in the field. */
  readonly typed: string | null;
}

/** What the jar of grains of this kind holds at rest, to be taken with one press; nothing where none is kept. */
function Kept({ draft, store, typed, onType }: KeptProps) {
  const { stocks = [] } = store.document.value;
  const kept = stocks.findLast(({ grains }) => grains === draft.grains);
  const rest = kept === undefined ? 0 : ledgerFor(kept).ledger.rest;
  const text = writeGrains(rest, store.settings.value);
  if (kept === undefined || !(rest > 0) || typed === text) return null;
  return (
    <button type="button" class="follow second" onClick={() => onType(text)}>
      Take {text} from “{kept.name}”
    </button>
  );
}

const what: Readonly<Record<StockId, string>> = {
  source: 'Nut, seed or coconut',
  sweetener: 'Sweetener',
  grains: 'Culture',
  jars: 'Jars',
};
