import type { Batch } from '../../batch/document/document';
import { writeDayAndTime, writeWeekdayAndTime } from '../../batch/reading/write-time';
import { startAt } from '../../batch/store/plan-edits';
import type { Store } from '../../batch/store/store';
import { describeClash, describeOutcome } from '../../formula/plan/clash-words';
import type { Clash, Clashes } from '../../formula/plan/clashes';

interface Props {
  readonly clashes: Clashes;
  readonly batches: readonly Batch[];
  readonly store: Store;
}

const times = { full: writeDayAndTime, short: writeWeekdayAndTime };

/** Which batches want the same hands, grains or jars at the same time, and other starts that mend it, each once. */
export function TimelineClashes({ clashes: { told, more }, batches, store }: Props) {
  const [first] = batches;
  if (first === undefined || told.length === 0) return null;
  const formulationFor = ({ names }: Clash) =>
    store.formulationOf(batches.find(({ name }) => names.includes(name)) ?? first);
  const remedies = new Map(told.flatMap(({ remedy }) => (remedy === null ? [] : [[remedy.batch, remedy] as const])));
  return (
    <div class="timeline-clashes" role="status">
      <h3>These get in each other’s way</h3>
      <ul>
        {told.map((clash, place) => (
          <li key={place}>{describeClash(clash, times, formulationFor(clash), store.settings.value)}</li>
        ))}
      </ul>
      {more > 0 && <p>And {more} more like these. Mend the first ones; what is left shows then.</p>}
      {remedies.size === 0 && <p>No other start near mends this. Plan one for another day.</p>}
      {[...remedies.values()].map((remedy) => (
        <Remedy key={remedy.batch} remedy={remedy} store={store} />
      ))}
    </div>
  );
}

function Remedy({ remedy, store }: { remedy: NonNullable<Clash['remedy']>; store: Store }) {
  const time = writeDayAndTime(remedy.start);
  const step = `Start “${remedy.name}” at ${time}`;
  const outcome = describeOutcome(remedy, times);
  const move = () => store.takeEdit(startAt(store.document.peek(), remedy.batch, remedy.start), step);
  return (
    <button type="button" class="button" onClick={move}>
      Start “<bdi>{remedy.name}</bdi>” at {time}
      {outcome}
    </button>
  );
}
