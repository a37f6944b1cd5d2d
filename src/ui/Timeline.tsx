import type { Batch } from '../batch/document';
import { planBatches } from '../batch/plan-batches';
import { setQuiet, setWhenAt } from '../batch/plan-edits';
import type { Store } from '../batch/store';
import { writeDayAndTime } from '../batch/write-time';
import { describeClash } from '../formula/timeline/clash-words';
import type { Clash } from '../formula/timeline/clashes';
import type { SheetState } from './sheet-state';
import { TimelinePicture } from './TimelinePicture';
import { TimelinePlan } from './TimelinePlan';
import { TimelineWhen } from './TimelineWhen';
import { useSheetOnPaper } from './use-sheet-on-paper';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
}

/** When each batch is begun, tasted, strained and drunk: what is asked for, the drawing of it, and the same in words. */
export function Timeline({ store, state }: Props) {
  const document = store.document.value;
  const paper = useSheetOnPaper('plan');
  const { plans, clashes, picture } = planBatches(document, store.formulationOf);
  return (
    <section class="timeline" aria-label="Plan">
      <h2>Plan</h2>
      <p class="timeline-lead">Say when to start, or when to drink it; the work stays out of the quiet hours.</p>
      <div class="timeline-asked">
        {document.batches.map((batch) => (
          <TimelineWhen
            key={batch.id}
            batch={batch}
            plan={plans.find((planned) => planned.batch === batch)?.plan ?? null}
            store={store}
          />
        ))}
        <QuietHours store={store} />
      </div>
      {clashes.length > 0 && <Clashes clashes={clashes} batches={document.batches} store={store} />}
      {picture !== null && <TimelinePicture picture={picture} />}
      <div class="timeline-plans">
        {plans.map(({ batch, plan }) => (
          <TimelinePlan
            key={batch.id}
            batch={batch}
            plan={plan}
            store={store}
            isCurrent={batch.id === state.spot.value.batch}
          />
        ))}
      </div>
      {picture !== null && (
        <button type="button" class="button" onClick={paper.start}>
          Print the plan
        </button>
      )}
    </section>
  );
}

function QuietHours({ store }: { store: Store }) {
  const { quiet } = store.settings.value;
  const change = (changes: Partial<typeof quiet>) => {
    const { settings } = setQuiet(store.document.peek(), changes);
    store.changeSettings({ quiet: settings.quiet });
  };
  return (
    <fieldset class="timeline-when">
      <legend>Quiet hours</legend>
      <label>
        <span>from</span>
        <input
          type="time"
          aria-label="Quiet hours from"
          value={quiet.from}
          onChange={(event) => change({ from: event.currentTarget.value })}
        />
      </label>
      <label>
        <span>to</span>
        <input
          type="time"
          aria-label="Quiet hours to"
          value={quiet.to}
          onChange={(event) => change({ to: event.currentTarget.value })}
        />
      </label>
    </fieldset>
  );
}

interface ClashesProps {
  readonly clashes: readonly Clash[];
  readonly batches: readonly Batch[];
  readonly store: Store;
}

function Clashes({ clashes, batches, store }: ClashesProps) {
  const [first] = batches;
  if (first === undefined) return null;
  const formulationFor = ({ names }: Clash) =>
    store.formulationOf(batches.find(({ name }) => names.includes(name)) ?? first);
  return (
    <div class="timeline-clashes" role="status">
      <h3>These get in each other’s way</h3>
      <ul>
        {clashes.map((clash) => {
          const text = describeClash(clash, writeDayAndTime, formulationFor(clash), store.settings.value);
          return (
            <li key={text}>
              {text} {clash.remedy !== null && <Remedy remedy={clash.remedy} store={store} />}
            </li>
          );
        })}
      </ul>
    </div>
  );
}

function Remedy({ remedy, store }: { remedy: NonNullable<Clash['remedy']>; store: Store }) {
  const label = `Start “${remedy.name}” at ${writeDayAndTime(remedy.start)}`;
  const move = () => store.takeEdit(setWhenAt(store.document.peek(), remedy.batch, 'start', remedy.start), label);
  return (
    <button type="button" class="button" onClick={move}>
      {label}
    </button>
  );
}
