import { useMemo } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import { type Planned, planBatches } from '../../batch/store/plan-batches';
import { setQuiet } from '../../batch/store/plan-edits';
import { stockDates } from '../../batch/store/stock-dates';
import type { Store } from '../../batch/store/store';
import { MayEdit } from '../page/MayEdit';
import { useSheetOnPaper } from '../paper/use-sheet-on-paper';
import type { SheetState } from '../sheet/sheet-state';
import { CalendarButton } from './CalendarButton';
import { eventsFor } from './events-for';
import { StockDates } from './StockDates';
import { TimelineClashes } from './TimelineClashes';
import { TimelineOver } from './TimelineOver';
import { TimelinePicture } from './TimelinePicture';
import { isToCome, TimelinePlan } from './TimelinePlan';
import { TimelineWhen } from './TimelineWhen';
import { drawPlanned } from './timeline-picture';
import { useMinutes } from './use-minutes';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
}

/** So many batches that are not planned stand open among those that are. */
const mostOpen = 4;

/** When each batch is begun, tasted, strained and drunk: what is asked for, the drawing of it, and the same in words. */
export function Timeline({ store, state }: Props) {
  const document = store.document.value;
  const { batch: here } = state.spot.value;
  const paper = useSheetOnPaper('plan');
  useMinutes();
  const planned = planBatches(document, store.formulationOf);
  const { plans, over, clashes } = planned;
  const picture = drawPlanned(planned);
  const ids = document.batches.map(({ id }) => id);
  // Found anew only where other batches are there or looked at: a field that is being used must not change its place.
  const foldedIds = useMemo(() => {
    const planned = plans.map(({ batch }) => batch.id);
    const others = ids.filter((id) => id !== here && !planned.includes(id));
    return others.length > mostOpen ? others : [];
  }, [ids.join(' '), here]);
  const folded = document.batches.filter(({ id }) => foldedIds.includes(id));
  const ask = (batch: Batch) => (
    <TimelineWhen
      key={batch.id}
      batch={batch}
      plan={[...plans, ...over].find((planned) => planned.batch === batch)?.plan ?? null}
      store={store}
    />
  );
  return (
    <section class="timeline" aria-label="Plan">
      <h2>Plan</h2>
      <p class="timeline-lead">Say when to start, or when to drink it; the work stays out of the quiet hours.</p>
      <MayEdit store={store}>
        <div class="timeline-asked">
          {document.batches.filter((batch) => !folded.includes(batch)).map(ask)}
          <QuietHours store={store} />
        </div>
        {folded.length > 0 && (
          <details class="timeline-others">
            <summary>Plan another of {folded.length} batches</summary>
            <div class="timeline-asked">{folded.map(ask)}</div>
          </details>
        )}
        <TimelineClashes clashes={clashes} batches={document.batches} store={store} />
      </MayEdit>
      <TimelineOver over={over} />
      {picture !== null && <TimelinePicture picture={picture} />}
      <div class="timeline-plans">
        {plans.map(({ batch, plan }) => (
          <TimelinePlan key={batch.id} batch={batch} plan={plan} store={store} isCurrent={batch.id === here} />
        ))}
        <StockDates store={store} />
      </div>
      {picture !== null && <ForAll plans={plans} store={store} print={paper.start} />}
    </section>
  );
}

interface ForAllProps {
  readonly plans: readonly Planned[];
  readonly store: Store;
  readonly print: () => void;
}

/** The whole plan on paper, and as one calendar file where there are several. */
function ForAll({ plans, store, print }: ForAllProps) {
  const ahead = plans.map(({ batch, plan }) => eventsFor(batch, plan, store)).filter(isToCome);
  const grains = stockDates(store.document.value);
  return (
    <div class="timeline-all">
      {(ahead.length > 1 || (ahead.length > 0 && grains.length > 0)) && (
        <CalendarButton events={() => [...ahead.flat(), ...grains]} name="Plan" label="One calendar file of all" />
      )}
      <button type="button" class="button" onClick={print}>
        Print the plan
      </button>
    </div>
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
      {(['from', 'to'] as const).map((end) => (
        <label key={end}>
          <span>{end}</span>
          <input
            type="time"
            aria-label={`Quiet hours ${end}`}
            value={quiet[end]}
            onChange={(event) => change({ [end]: event.currentTarget.value })}
          />
        </label>
      ))}
      {quiet.from === quiet.to && <p class="timeline-since">None: both times are the same.</p>}
    </fieldset>
  );
}
