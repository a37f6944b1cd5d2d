import { useState } from 'preact/hooks';
import type { Batch, Settings, Stock, StockLine } from '../../batch/document/document';
import { setRestSugar, stockSteps } from '../../batch/edits/stock-edits';
import { now, wallClock, wallOf } from '../../batch/reading/local-time';
import { readRestSugar } from '../../batch/reading/read-stock-line';
import { writeDay } from '../../batch/reading/write-time';
import type { Store } from '../../batch/store/store';
import { type GrowthLine, growthIn } from '../../formula/stock/growth';
import type { Ledger } from '../../formula/stock/ledger';
import { writeGrains } from '../../formula/stock/line-words';
import { refreshOf, restLiquid } from '../../formula/stock/rest';
import { stockEvents } from '../../formula/stock/stock-events';
import { describeLiquid, describeRun, writePerLitre } from '../../formula/stock/stock-words';
import { describeCoefficient, describeOrigin } from '../../formula/words/origin-words';
import { keepersNotes } from '../../reference/stock-care';
import { stockRest } from '../../reference/stock-rest';
import { MayEdit } from '../page/MayEdit';
import { KeptTyped, Refusal } from '../page/Typed';
import { CalendarButton } from '../plan/CalendarButton';
import type { TakeStockEdit } from './take-stock-edit';

interface Props {
  readonly stock: Stock;
  readonly ledger: Ledger;
  readonly kitchen: Settings;
  readonly lines: readonly GrowthLine[];
  readonly batch: Batch;
  readonly store: Store;
  readonly take: TakeStockEdit;
  readonly write: (line: StockLine) => void;
}

/** What they rest in, for how long, and for milk grains when a day in dairy is due. */
export function StockRest({ stock, ledger, kitchen, lines, batch, store, take, write }: Props) {
  const { grains, strength } = stock;
  const [isTold, setTold] = useState(false);
  const clock = wallClock(kitchen.quiet);
  const grams = ledger.rest > 0 ? ledger.rest : ledger.total;
  const liquid = restLiquid(grains, grams, strength);
  const refresh = refreshOf(grains, ledger, clock);
  const growth = growthIn(grains, lines, { source: batch.source });
  const { medium } = liquid;
  const feed = (place: StockLine['place']) =>
    write({ at: wallOf(now()), did: 'fed', grams: null, medium, ...(place === undefined ? {} : { place }) });
  return (
    <section class="stock-rest" aria-label="Rest">
      <h3>Rest</h3>
      <p>
        {writeGrains(grams, kitchen)} rest in <b>{describeLiquid(liquid, kitchen)}</b>.
      </p>
      {grains === 'water' && (
        <MayEdit store={store}>
          <Strength stock={stock} kitchen={kitchen} store={store} take={take} />
        </MayEdit>
      )}
      {refresh !== null && (
        <p>
          Fresh {medium === 'dairy' ? 'milk' : 'sugar water'} by <b>{writeDay(refresh.due)}</b>
          {refresh.from < refresh.by && `; any day from ${writeDay(refresh.from)} to ${writeDay(refresh.by)} will do`}.
        </p>
      )}
      {grains === 'milk' && <p>{describeRun(ledger, growth, kitchen)}</p>}
      <MayEdit store={store}>
        <p class="stock-buttons">
          <button type="button" class="button" onClick={() => feed(ledger.place ?? undefined)}>
            Fed just now
          </button>
          {grains === 'milk' && (
            <button type="button" class="button" onClick={() => feed('room')}>
              A day in dairy begins
            </button>
          )}
        </p>
      </MayEdit>
      {refresh !== null && (
        <CalendarButton
          events={() => stockEvents(stock, ledger, { clock, present: now(), kitchen })}
          name={stock.name}
          label="Calendar file"
        />
      )}
      <button type="button" class="quiet" aria-pressed={isTold} onClick={() => setTold(!isTold)}>
        where from
      </button>
      {isTold && (
        <ul class="stock-origins">
          {grains === 'milk' && (
            <>
              <li>
                {writePerLitre(stockRest.dairy.value, kitchen)} of dairy milk: {describeOrigin(stockRest.dairy.origin)}
              </li>
              <li>At home {describeCoefficient(stockRest.dairyAtHome, kitchen.decimalComma)}</li>
              <li>A day in dairy: {describeOrigin(stockRest.dairyRoundAfter.origin)}</li>
              <li>
                {keepersNotes.plantRun.text} {describeOrigin(keepersNotes.plantRun.origin)}
              </li>
              <li>
                {keepersNotes.noCereal.text} {describeOrigin(keepersNotes.noCereal.origin)}
              </li>
            </>
          )}
          {grains === 'water' && (
            <>
              <li>The usual sugar: {describeOrigin(stockRest.sugarWater.origin)}</li>
              <li>
                {keepersNotes.softWater.text} {describeOrigin(keepersNotes.softWater.origin)}
              </li>
              <li>
                {keepersNotes.whichSugar.text} {describeOrigin(keepersNotes.whichSugar.origin)}
              </li>
            </>
          )}
          {refresh !== null && <li>How often: {describeCoefficient(refresh.rule, kitchen.decimalComma)}</li>}
        </ul>
      )}
    </section>
  );
}

interface StrengthProps {
  readonly stock: Stock;
  readonly kitchen: Settings;
  readonly store: Store;
  readonly take: TakeStockEdit;
}

function Strength({ stock, kitchen, store, take }: StrengthProps) {
  const [refused, setRefused] = useState<{ readonly text: string; readonly why: string } | null>(null);
  const usual = writePerLitre(stockRest.sugarWater.value, kitchen);
  const kept = stock.strength === undefined ? '' : writePerLitre(stock.strength, kitchen);
  const keep = (text: string) => {
    const read = readRestSugar(text, kitchen);
    setRefused(read.ok ? null : { text, why: read.why });
    if (read.ok)
      take(setRestSugar(store.document.value, stock.key, read.grams), stockSteps.strength, 'The sugar is changed.');
  };
  return (
    <div class="stock-strength">
      <label>
        <span>Sugar to a litre</span>
        <KeptTyped
          kept={refused?.text ?? kept}
          placeholder={`${usual}, the usual`}
          isRefused={refused !== null}
          onKeep={keep}
        />
      </label>
      <Refusal why={refused?.why ?? null} />
    </div>
  );
}
