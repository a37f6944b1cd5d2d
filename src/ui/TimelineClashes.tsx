import type { Batch } from '../batch/document';
import { setWhenAt } from '../batch/plan-edits';
import type { Store } from '../batch/store';
import { writeDayAndTime } from '../batch/write-time';
import { describeClash } from '../formula/timeline/clash-words';
import type { Clash } from '../formula/timeline/clashes';

interface Props {
  readonly clashes: readonly Clash[];
  readonly batches: readonly Batch[];
  readonly store: Store;
}

/** More than these nobody reads; the first that are mended take others with them. */
const mostTold = 8;

/** Which batches want the same hands, grains or jars at the same time, and later starts that mend it, each once. */
export function TimelineClashes({ clashes, batches, store }: Props) {
  const [first] = batches;
  if (first === undefined || clashes.length === 0) return null;
  const formulationFor = ({ names }: Clash) =>
    store.formulationOf(batches.find(({ name }) => names.includes(name)) ?? first);
  const told = clashes.slice(0, mostTold);
  const untold = clashes.slice(mostTold).length;
  const remedies = new Map(told.flatMap(({ remedy }) => (remedy === null ? [] : [[remedy.batch, remedy] as const])));
  return (
    <div class="timeline-clashes" role="status">
      <h3>These get in each other’s way</h3>
      <ul>
        {told.map((clash, place) => (
          <li key={place}>{describeClash(clash, writeDayAndTime, formulationFor(clash), store.settings.value)}</li>
        ))}
      </ul>
      {untold > 0 && <p>And {untold} more like these. Mend the first ones; what is left shows then.</p>}
      {[...remedies.values()].map((remedy) => (
        <Remedy key={remedy.batch} remedy={remedy} store={store} />
      ))}
    </div>
  );
}

function Remedy({ remedy, store }: { remedy: NonNullable<Clash['remedy']>; store: Store }) {
  const time = writeDayAndTime(remedy.start);
  const step = `Start “${remedy.name}” at ${time}`;
  const move = () => store.takeEdit(setWhenAt(store.document.peek(), remedy.batch, 'start', remedy.start), step);
  return (
    <button type="button" class="button" onClick={move}>
      Start “<bdi>{remedy.name}</bdi>” at {time}
    </button>
  );
}
