import { useState } from 'preact/hooks';
import { dayHere } from '../../batch/document/calendar-day';
import type { Batch } from '../../batch/document/document';
import { readPackage } from '../../batch/reading/read-package';
import type { Store } from '../../batch/store/store';
import { type Shoppable, shoppable } from '../../batch/store/to-shop-for';
import { currencyOf } from '../../formula/cost/money';
import { forGrainsAtRest, shoppingList, toShopFor } from '../../formula/cost/shopping-list';
import { tellShopping, writeShoppingText } from '../../formula/cost/shopping-words';
import { writePricesCsv, writeShoppingCsv } from '../../interchange/money-csv';
import type { PageState } from '../page/page-state';
import { Refusal, Typed } from '../page/Typed';
import { downloadText } from '../paper/download-text';
import { useSheetOnPaper } from '../paper/use-sheet-on-paper';
import { ShoppingPaper } from './ShoppingPaper';
import { shoppingTicksOn } from './shopping-ticks';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  readonly page: PageState;
}

const mostListed = 40;

/** What to buy for the batches that are planned, or those chosen, in whole packages. */
export function Shopping({ batch, store, page }: Props) {
  const { packages = [], settings } = store.document.value;
  const [chosen, setChosen] = useState<ReadonlySet<string> | null>(null);
  const [lessInHouse, setLess] = useState(false);
  const [resting, setResting] = useState({ sugar: '', milk: '' });
  const [said, setSaid] = useState<string | null>(null);
  const paper = useSheetOnPaper('shopping');
  const { basket, tick, empty } = shoppingTicksOn(page);
  const all = shoppable(store.document.value, store.formulationOf);
  const usual = all.filter(({ day }) => day !== null).map(({ batch: { id } }) => id);
  const isIn = ({ id }: Batch): boolean =>
    chosen?.has(id) ?? (usual.length === 0 ? id === batch.id : usual.includes(id));
  const made = all.filter(({ batch: one }) => isIn(one)).map(({ batch: one }) => one);
  const shopped = made.map((one) => toShopFor(one.name, store.formulationOf(one), one.carton));
  const hasStock = shopped.some(({ has }) => Object.keys(has).length > 0);
  const rest = [resting.sugar, resting.milk].map((text) => (text.trim() === '' ? null : readPackage(text, settings)));
  const [sugar, milk] = rest;
  const list = shoppingList([...shopped, forGrainsAtRest(sugar ?? null, milk ?? null)], packages, { lessInHouse });
  const currency = currencyOf(settings.currency);
  const told = tellShopping(list, currency, settings);
  const hasCost = told.lines.some(({ cost }) => cost !== null);
  const choose = (id: string) => {
    const next = new Set(made.map((one) => one.id));
    if (!next.delete(id)) next.add(id);
    setChosen(next);
  };
  const copy = () => {
    navigator.clipboard.writeText(writeShoppingText(told)).then(
      () => setSaid('Copied.'),
      () => setSaid('This browser does not let the page copy. Print the list, or save it as CSV.'),
    );
  };
  const save = (what: string, text: string) => {
    const name = `jarwright-${what}-${dayHere(new Date())}.csv`;
    downloadText(text, name, 'text/csv;charset=utf-8');
    setSaid(`“${name}” is saved where this browser keeps what it downloads.`);
  };
  return (
    <section class="shopping" aria-label="Shopping list">
      <h2>Shopping list</h2>
      {all.length > 1 && <Chooser all={all} isIn={isIn} choose={choose} />}
      {hasStock && (
        <label class="pick">
          <input type="checkbox" checked={lessInHouse} onChange={() => setLess(!lessInHouse)} /> Take off what I have on
          hand
        </label>
      )}
      <ul class="shopping-list">
        {told.lines.map(({ food, name, take, aside, cost }) => (
          <li key={food}>
            <label>
              <input
                type="checkbox"
                checked={basket.value.includes(food)}
                onChange={(event) => tick(food, event.currentTarget.checked)}
              />
              <span class="shopping-name">
                {name}
                <small>{aside}</small>
              </span>
              <b>{take}</b>
              <span class="shopping-cost">{cost}</span>
            </label>
          </li>
        ))}
      </ul>
      {told.lines.length === 0 && <p>{made.length === 0 ? 'Choose a batch to shop for.' : 'Nothing to buy.'}</p>}
      {told.inHouse.length > 0 && (
        <p>In the house: {told.inHouse.map(({ name, aside }) => `${name}, ${aside}`).join('; ')}.</p>
      )}
      {hasCost && (
        <p class="shopping-total">
          <b>{told.total}</b> {told.isPart ? 'so far: some have no price yet.' : 'together, in whole packages.'}
        </p>
      )}
      <p class="correct">
        <button type="button" class="button next" disabled={told.lines.length === 0} onClick={paper.start}>
          Print the list
        </button>
        <button type="button" class="button" disabled={told.lines.length === 0} onClick={copy}>
          Copy it
        </button>
        {basket.value.length > 0 && (
          <button type="button" class="button" onClick={empty}>
            Untick all
          </button>
        )}
      </p>
      <p role="status">{said}</p>
      <details class="fold-panel">
        <summary>For grains at rest, and tables</summary>
        <div class="price-more">
          <RestField
            name="Sugar for them"
            text={resting.sugar}
            onText={(text) => setResting({ ...resting, sugar: text })}
            such="50 g"
            read={sugar}
          />
          <RestField
            name="Dairy milk for them"
            text={resting.milk}
            onText={(text) => setResting({ ...resting, milk: text })}
            such="500 mL"
            read={milk}
          />
        </div>
        <p class="correct">
          <button type="button" class="button" onClick={() => save('shopping', writeShoppingCsv(list, currency))}>
            List as CSV
          </button>
          <button
            type="button"
            class="button"
            disabled={packages.length === 0}
            onClick={() => save('prices', writePricesCsv(packages, currency))}
          >
            Prices as CSV
          </button>
        </p>
      </details>
      {paper.isOn && (
        <ShoppingPaper told={told} names={made.map(({ name }) => name)} hasCost={hasCost} day={dayHere(new Date())} />
      )}
    </section>
  );
}

interface ChooserProps {
  readonly all: readonly Shoppable[];
  readonly isIn: (batch: Batch) => boolean;
  readonly choose: (id: string) => void;
}

/** Which batches are shopped for: the planned ones first, each with the day it is begun. */
function Chooser({ all, isIn, choose }: ChooserProps) {
  const shown = all.filter(({ batch }, place) => place < mostListed || isIn(batch));
  const hidden = all.slice(shown.length).length;
  return (
    <fieldset class="shopping-for">
      <legend>For</legend>
      {shown.map(({ batch, day }) => (
        <label key={batch.id} class="pick">
          <input type="checkbox" checked={isIn(batch)} onChange={() => choose(batch.id)} />
          <span>
            <bdi>{batch.name}</bdi>
            {day !== null && <small> {day}</small>}
          </span>
        </label>
      ))}
      {hidden > 0 && <p>{hidden} more are not listed: those that are planned come first.</p>}
    </fieldset>
  );
}

interface RestProps {
  readonly name: string;
  readonly text: string;
  readonly such: string;
  readonly read: ReturnType<typeof readPackage> | null | undefined;
  readonly onText: (text: string) => void;
}

function RestField({ name, text, such, read, onText }: RestProps) {
  const isWrong = read !== null && read !== undefined && read.amount === null;
  return (
    <div>
      <label>
        <span>{name}</span>
        <Typed value={text} placeholder={`such as ${such}`} maxLength={40} isRefused={isWrong} onText={onText} />
      </label>
      <Refusal why={isWrong ? `Type a number and a unit, such as ${such}.` : null} />
    </div>
  );
}
