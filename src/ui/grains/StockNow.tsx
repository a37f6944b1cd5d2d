import type { Batch, Settings, Stock } from '../../batch/document/document';
import { now, wallClock } from '../../batch/reading/local-time';
import { writeDay } from '../../batch/reading/write-time';
import type { Formulation } from '../../formula/engine/formulate';
import { askedBy, doseFor, spare } from '../../formula/stock/carries';
import type { Ledger } from '../../formula/stock/ledger';
import { writeGrains } from '../../formula/stock/line-words';
import { keepsUntil, plantBatchesLeft, refreshOf } from '../../formula/stock/rest';
import { describeCarries, describeSpare, describeWhere, kindName } from '../../formula/stock/stock-words';
import type { Kitchen } from '../../formula/words/write-row';

interface Props {
  readonly stock: Stock;
  readonly ledger: Ledger;
  readonly kitchen: Kitchen & Pick<Settings, 'quiet'>;
  readonly batch: Batch;
  readonly formulation: Formulation;
}

/** How much there is, where it is, and what that is enough for. */
export function StockNow({ stock, ledger, kitchen, batch, formulation }: Props) {
  const present = now();
  const clock = wallClock(kitchen.quiet);
  const { grains } = stock;
  const asked = askedBy(grains, formulation);
  const over = spare(ledger, asked, batch.id);
  const isOut = ledger.away.some(({ out }) => out.batch === batch.id);
  const refresh = refreshOf(grains, ledger, clock);
  const until = keepsUntil(ledger, clock);
  const liquid = grains === 'milk' ? 'Fresh dairy milk' : 'Fresh sugar water';
  return (
    <div class="stock-now">
      <p class="stock-weight">
        <b>{writeGrains(ledger.total, kitchen)}</b> <span>{kindName(grains)}</span>
      </p>
      <ul class="stock-where">
        {describeWhere(ledger, present, kitchen).map((where) => (
          <li key={where}>{where}</li>
        ))}
      </ul>
      {ledger.rest < 0 && (
        <p class="problem">
          <span>More went out than was written down. Weigh what is at rest, and it is right again.</span>
        </p>
      )}
      <dl class="stock-facts">
        <div>
          <dt>Enough for</dt>
          <dd>{describeCarries(ledger.total, doseFor(grains, formulation), kitchen)}</dd>
        </div>
        <div>
          <dt>To spare</dt>
          <dd>
            {describeSpare(over, kitchen)}
            {asked !== null && !isOut && <span class="hint"> beside what {batch.name} takes</span>}
          </dd>
        </div>
        {refresh !== null && (
          <div>
            <dt>{liquid}</dt>
            <dd>{refresh.due < present ? `was due on ${writeDay(refresh.due)}` : `by ${writeDay(refresh.due)}`}</dd>
          </div>
        )}
        {grains === 'milk' && ledger.rest > 0 && plantBatchesLeft(ledger) <= 0 && (
          <div>
            <dt>A day in dairy</dt>
            <dd>due now</dd>
          </div>
        )}
        {until !== null && (
          <div>
            <dt>Good until</dt>
            <dd>about {writeDay(until)}</dd>
          </div>
        )}
      </dl>
    </div>
  );
}
