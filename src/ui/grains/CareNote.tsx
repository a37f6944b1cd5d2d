import type { Settings, Stock } from '../../batch/document/document';
import { portionOf } from '../../formula/stock/carries';
import { writeGrains } from '../../formula/stock/line-words';
import { refreshRule, restLiquid, reviveLiquid } from '../../formula/stock/rest';
import { describeLiquid, writeMilk, writePerLitre } from '../../formula/stock/stock-words';
import { neverMixed } from '../../reference/grain-care';
import { grainNotes } from '../../reference/grain-notes';
import { grains as kinds } from '../../reference/grains';
import { stockRest } from '../../reference/stock-rest';

interface Props {
  readonly stock: Stock;
  readonly kitchen: Settings;
}

/** What goes along with a portion of grains, on half a sheet of paper. */
export function CareNote({ stock, kitchen }: Props) {
  const { grains } = stock;
  const portion = portionOf(grains);
  const grain = kinds[grains];
  const days = refreshRule(grains, 'fridge')?.value;
  return (
    <article class="care-note" aria-label="Note of care">
      <h2>{grain.name}</h2>
      <p>{writeGrains(portion, kitchen)}, drained. They are alive: feed them, and they last for years.</p>
      <h3>The first days</h3>
      <p>
        Put them into {describeLiquid(reviveLiquid(grains, portion), kitchen)}, on the worktop, and cover the jar so
        that gas escapes.
      </p>
      <h3>A batch</h3>
      <p>
        {writePerLitre(grain.dose.value, kitchen)}: this portion does for{' '}
        {writeMilk(stockRest.portionJar.value, kitchen)} of plant milk. Weigh them, drained, before and after.
      </p>
      <h3>Between batches</h3>
      <p>
        In the fridge, in {describeLiquid(restLiquid(grains, portion, stock.strength), kitchen)}, fresh every {days}{' '}
        days.
      </p>
      <h3>Mind</h3>
      <ul>
        <li>{neverMixed.text}</li>
        {grainNotes[grains].map(({ text }) => (
          <li key={text}>{text}</li>
        ))}
        <li>Fur, or spots of any colour: throw out the milk and the grains.</li>
      </ul>
    </article>
  );
}
