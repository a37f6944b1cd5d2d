import type { Settings, Stock } from '../../batch/document/document';
import { now } from '../../batch/reading/local-time';
import { writeDay, writeWeekdayAndTime } from '../../batch/reading/write-time';
import type { Ledger } from '../../formula/stock/ledger';
import { writeGrains } from '../../formula/stock/line-words';
import { describeLine } from '../../formula/stock/stock-words';
import { drawStock } from './stock-picture';

interface Props {
  readonly stock: Stock;
  readonly ledger: Ledger;
  readonly kitchen: Settings;
}

/** The weight over time: all there is as a line, what is at rest as the ground under it. The lines below say the same. */
export function StockChart({ stock, ledger, kitchen }: Props) {
  const picture = drawStock(ledger, now());
  if (picture === null) return null;
  const words = `${describeLine(ledger, kitchen)}.`;
  return (
    <figure class="stock-figure">
      <div class="stock-chart" role="img" aria-label={`Weight of ${stock.name}. ${words}`}>
        <div class="stock-plot">
          <svg viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
            <path class="grid" d={picture.grid} />
            <path class="away" d={picture.all} />
            <path class="resting" d={picture.resting} />
            <path class="total" d={picture.total} />
            <path class="fell" d={picture.fell} />
          </svg>
          {picture.grams.map(({ at, value }) => (
            <span key={value} class="grams" style={{ top: `${at}%` }}>
              {writeGrains(value, kitchen)}
            </span>
          ))}
        </div>
        <div class="stock-times">
          {picture.times.map(({ at, value }) => (
            <span key={at} style={{ left: `${at}%` }}>
              {picture.isShort ? writeWeekdayAndTime(value) : writeDay(value)}
            </span>
          ))}
        </div>
      </div>
      <figcaption>
        <ul class="stock-key">
          <li>
            <span class="stock-swatch total" /> all there is
          </li>
          <li>
            <span class="stock-swatch resting" /> at rest
          </li>
          <li>
            <span class="stock-swatch away" /> in batches
          </li>
          {picture.fell !== '' && (
            <li>
              <span class="stock-swatch fell" /> given away, thrown out
            </li>
          )}
        </ul>
        <p class="hint">{words}</p>
      </figcaption>
    </figure>
  );
}
