import { wallOf } from '../../batch/reading/local-time';
import { writeDay } from '../../batch/reading/write-time';
import { stockDates } from '../../batch/store/stock-dates';
import type { Store } from '../../batch/store/store';
import { CalendarButton } from './CalendarButton';

/** What is to be done for the grains between batches; nothing where no jar of them is kept. */
export function StockDates({ store }: { readonly store: Store }) {
  const dates = stockDates(store.document.value);
  if (dates.length === 0) return null;
  return (
    <section class="timeline-plan timeline-grains" aria-label="Plan of the grains">
      <h3>Grains</h3>
      <ol>
        {dates.map(({ id, batch, batchName, at, title, text }) => (
          <li key={`${batch} ${id}`} class="hands">
            <time dateTime={wallOf(at)}>{writeDay(at)}</time> <span class="timeline-since">{batchName}</span>
            <b>{title}</b>
            <p>{text}</p>
          </li>
        ))}
      </ol>
      <CalendarButton events={() => stockDates(store.document.value)} name="Grains" label="Calendar file" />
    </section>
  );
}
