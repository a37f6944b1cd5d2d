import type { Settings, Stock } from '../../batch/document/document';
import { portionOf } from '../../formula/stock/carries';
import type { Ledger } from '../../formula/stock/ledger';
import { writeGrains } from '../../formula/stock/line-words';
import { restLiquid, reviveLiquid } from '../../formula/stock/rest';
import { describeLiquid, kindName, writeMilk } from '../../formula/stock/stock-words';
import { describeCoefficient, describeOrigin } from '../../formula/words/origin-words';
import { neverMixed } from '../../reference/grain-care';
import { keepersNotes, puttingBy, reviving } from '../../reference/stock-care';
import { stockRest } from '../../reference/stock-rest';
import { useSheetOnPaper } from '../paper/use-sheet-on-paper';
import { CareNote } from './CareNote';

interface Props {
  readonly stock: Stock;
  readonly ledger: Ledger;
  readonly kitchen: Settings;
}

/** Waking them up, putting them by, sharing some: what is asked for a few times a year, so it is folded. */
export function StockCare({ stock, ledger, kitchen }: Props) {
  return (
    <div class="stock-care">
      <Revive stock={stock} ledger={ledger} kitchen={kitchen} />
      <details class="fold-panel">
        <summary>Put them by</summary>
        <dl>
          {puttingBy[stock.grains].map(({ way, text, origin }) => (
            <div key={way}>
              <dt>{way}</dt>
              <dd>
                {text} <span class="origin">{describeOrigin(origin)}</span>
              </dd>
            </div>
          ))}
        </dl>
        <p>
          {keepersNotes.apart.text} {neverMixed.text}
        </p>
      </details>
      <Share stock={stock} ledger={ledger} kitchen={kitchen} />
    </div>
  );
}

function Revive({ stock: { grains }, ledger, kitchen }: Props) {
  const liquid = describeLiquid(reviveLiquid(grains, ledger.total), kitchen);
  const { text, origin } = reviving[grains];
  const comma = kitchen.decimalComma;
  return (
    <details class="fold-panel">
      <summary>Wake them up after a rest</summary>
      {grains === 'milk' ? (
        <ol>
          <li>
            Put them into <b>{liquid}</b>, on the worktop at about 22 °C (72 °F).
          </li>
          <li>Do the same anew each day, for up to {stockRest.reviveDays.value} days.</li>
          <li>{text}</li>
        </ol>
      ) : (
        <ol>
          <li>
            Put them into <b>{liquid}</b>, on the worktop.
          </li>
          <li>
            Leave them for {stockRest.reviveWaterDays.low} to {stockRest.reviveWaterDays.high} days.
          </li>
          <li>{text}</li>
        </ol>
      )}
      <p class="origin">
        {describeCoefficient(grains === 'milk' ? stockRest.reviveDairy : stockRest.reviveSugar, comma)}{' '}
        {describeOrigin(origin)}
      </p>
    </details>
  );
}

function Share({ stock, kitchen }: Props) {
  const { grains } = stock;
  const paper = useSheetOnPaper('care-note');
  const portion = portionOf(grains);
  const liquid = restLiquid(grains, portion, stock.strength);
  return (
    <details class="fold-panel">
      <summary>Share some</summary>
      <p>
        <b>{writeGrains(portion, kitchen)}</b> of {kindName(grains)} do for a jar of{' '}
        {writeMilk(stockRest.portionJar.value, kitchen)}. Give them in {describeLiquid(liquid, kitchen)}, or in as much
        of it as covers them.
      </p>
      <p>
        {keepersNotes.sharing.text} <span class="origin">{describeOrigin(keepersNotes.sharing.origin)}</span>
      </p>
      <button type="button" class="button" onClick={paper.start}>
        Print a note of care
      </button>
      {paper.isOn && <CareNote stock={stock} kitchen={kitchen} />}
    </details>
  );
}
