import { useId, useRef, useState } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import { readWantedHours } from '../../batch/reading/read-wanted-hours';
import type { Store } from '../../batch/store/store';
import type { Formulation } from '../../formula/engine/formulate';
import { type HasteRowId, type ReadyIn as Offer, readyIn } from '../../formula/time/ready-in';
import { type ReadyInWay, wayToBeReady } from '../../formula/time/ready-in-way';
import { describeReady } from '../../formula/time/ripening-words';
import { cultureNoun } from '../../formula/words/culture-words';
import { labelOf } from '../../formula/words/labels';
import { leading } from '../../formula/words/leading';
import { type Kitchen, writeNumeric, writeRow, writeValue } from '../../formula/words/write-row';
import { Refusal, Typed } from '../page/Typed';
import { Whose } from '../page/Whose';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  readonly onPlan: () => void;
}

const why: Readonly<Record<HasteRowId, string>> = {
  roomTemperature: 'It costs nothing and does most.',
  grainRate: 'More culture is faster, less is slower.',
  startingSugar: 'It does least, and you taste it.',
};

/** What the rows come to on the scale, beside their rate. */
const weighed = { grainRate: 'grainMass', startingSugar: 'sweetenerMass' } as const;

/** “To have it ready in … hours”: what to change, in which order, and a button that types it. */
export function ReadyIn({ batch, store, onPlan }: Props) {
  const id = useId();
  const [text, setText] = useState('12 h');
  const [done, setDone] = useState<string | null>(null);
  const said = useRef<HTMLParagraphElement>(null);
  const settings = store.settings.value;
  const formulation = store.formulationOf(batch);
  const wanted = readWantedHours(text, settings);
  const offers = wanted.ok ? readyIn(formulation, wanted.hours) : [];
  const take = (way: ReadyInWay) => {
    store.takeWayOut(batch.id, way);
    setDone(`${way.label}: done.`);
    // The button is gone once its text is typed, and the keyboard would be nowhere.
    said.current?.focus();
  };
  return (
    <section class="time-card ready-in" aria-label={`Ready when you want ${batch.name}`}>
      <h2>
        Ready when you want it
        <Whose />
      </h2>
      <label class="ready-in-asked" for={id}>
        To have it ready in
        <Typed
          id={id}
          value={text}
          isRefused={!wanted.ok}
          aria-describedby={`${id}-hint`}
          onText={(typed) => {
            setText(typed);
            setDone(null);
          }}
        />
        <span id={`${id}-hint`} class="hint">
          such as 10 h or 1 day
        </span>
      </label>
      <p class="hint">
        For an hour of the day,{' '}
        <button type="button" class="quiet" onClick={onPlan}>
          plan it
        </button>
        .
      </p>
      <Refusal why={wanted.ok ? null : wanted.why} />
      {offers === null && <p>{describeReady(formulation, settings)}</p>}
      <p class="said" role="status" tabIndex={-1} ref={said}>
        {done !== null && `${done} ${describeReady(formulation, settings)}`}
      </p>
      {offers !== null && offers.length > 0 && (
        <Offers offers={offers} formulation={formulation} kitchen={settings} onTake={take} />
      )}
    </section>
  );
}

interface OffersProps {
  readonly offers: readonly Offer[];
  readonly formulation: Formulation;
  readonly kitchen: Kitchen;
  readonly onTake: (way: ReadyInWay) => void;
}

function Offers({ offers, formulation, kitchen, onTake }: OffersProps) {
  return (
    <table>
      <caption>Change one, the first that you can</caption>
      <thead>
        <tr>
          <th scope="col">Change</th>
          <th scope="col">To</th>
        </tr>
      </thead>
      <tbody>
        {offers.map((offer, at) => (
          <tr key={offer.row}>
            <th scope="row">
              {at + 1}. {labelOf(offer.row)}
              <small>{why[offer.row]}</small>
            </th>
            <td>
              <To offer={offer} formulation={formulation} kitchen={kitchen} onTake={onTake} />
              <small>{usually(offer, formulation, kitchen)}</small>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function usually({ row, usual }: Offer, formulation: Formulation, kitchen: Kitchen): string {
  const write = (value: number) => leading(writeNumeric(formulation, row, value, kitchen), kitchen.leads);
  const [low, high] = [write(usual.low), write(usual.high)];
  const other = low.second === null || high.second === null ? '' : ` (${low.second} to ${high.second})`;
  return `Usual is ${low.first} to ${high.first}${other}.`;
}

interface ToProps extends Omit<OffersProps, 'offers'> {
  readonly offer: Offer;
}

function To({ offer, formulation, kitchen, onTake }: ToProps) {
  const way = wayToBeReady(offer, formulation, kitchen);
  if (offer.value === null && offer.nearest === null) return <p>What is usual gets it no nearer than it is.</p>;
  if (way === null) return <p>Something typed or measured stands against it. Clear that first.</p>;
  if (way.changes.length === 0) return <p>As it is: {way.text}.</p>;
  const { value } = way.after.rows.readyTime;
  const hours = typeof value === 'number' ? writeValue(value, 'time', null, kitchen).metric : '';
  return (
    <>
      <p>
        {offer.value === null && 'As far as is usual: '}
        <b>{way.text}</b>
        {inOtherWords(offer.row, way, kitchen)}: ready in about {hours}.
      </p>
      <button type="button" class="button" aria-label={way.label} onClick={() => onTake(way)}>
        Use {way.text}
      </button>
    </>
  );
}

/** The temperature in the other unit, or what the rate comes to on the scale. */
function inOtherWords(row: HasteRowId, { after }: ReadyInWay, kitchen: Kitchen): string {
  if (row === 'roomTemperature') {
    const { value } = after.rows[row];
    if (typeof value !== 'number') return '';
    const { second } = leading(writeValue(value, 'temperature', null, kitchen), kitchen.leads);
    return second === null ? '' : ` (${second})`;
  }
  const written = writeRow(after, weighed[row], kitchen);
  if (written === null) return '';
  const { first, second } = leading(written, kitchen.leads);
  const what = row === 'grainRate' ? cultureNoun(after.choices.grain) : 'sweetener';
  return `, so ${first}${second === null ? '' : ` (${second})`} of ${what}`;
}
