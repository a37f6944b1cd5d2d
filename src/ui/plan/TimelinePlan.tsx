import type { Batch, SheetDocument } from '../../batch/document/document';
import { now, wallOf } from '../../batch/reading/local-time';
import { writeDay, writeDayAndTime, writeWeekdayAndTime } from '../../batch/reading/write-time';
import { glassOf, soonestGlass, stillInTime } from '../../batch/store/plan-batches';
import { drinkAt, startAt } from '../../batch/store/plan-edits';
import type { Store } from '../../batch/store/store';
import { describeOutcome } from '../../formula/plan/clash-words';
import { type BatchPlan, shiftTo } from '../../formula/plan/plan-batch';
import { nightWork, type PlannedStep, type Schedule, sinceStart, strainedAt } from '../../formula/plan/schedule';
import { writeElapsed } from '../../formula/time/elapsed-words';
import type { Instant, TimelineEvent } from '../../formula/time/event';
import { CalendarButton } from './CalendarButton';
import { eventsFor, isAhead } from './events-for';

interface Props {
  readonly batch: Batch;
  readonly plan: BatchPlan;
  readonly store: Store;
  readonly isCurrent: boolean;
}

/** The plan of one batch in words: each step with its day and time, and what stands in the way of it. */
export function TimelinePlan({ batch, plan, store, isCurrent }: Props) {
  const { schedule } = plan;
  const settings = store.settings.value;
  const events = eventsFor(batch, plan, store);
  return (
    <section class={isCurrent ? 'timeline-plan current' : 'timeline-plan'} aria-label={`Plan of ${batch.name}`}>
      <h3>{batch.name}</h3>
      {schedule.steps.length > 0 && <Glance schedule={schedule} />}
      {schedule.stopped !== null && <p class="problem refusal">{`Planned no further: ${schedule.stopped}`}</p>}
      <Past batch={batch} plan={plan} store={store} />
      <Nights batch={batch} plan={plan} events={events} store={store} />
      <ol>
        {schedule.steps.map((step) => (
          <Entry
            key={step.id}
            step={step}
            schedule={schedule}
            event={events.find(({ id }) => id === step.id)}
            decimalComma={settings.decimalComma}
          />
        ))}
      </ol>
      {isToCome(events) ? (
        <CalendarButton events={() => events} name={batch.name} label="Calendar file" />
      ) : (
        schedule.steps.length > 0 && (
          <p class="timeline-since">This plan is over: it has nothing more for a calendar to remind you of.</p>
        )
      )}
    </section>
  );
}

/** Whether any work or the first glass is still to come; the days of keeping that are left are no plan any more. */
export function isToCome(events: readonly TimelineEvent[]): boolean {
  return isAhead(events.filter(({ id }) => id !== 'best' && id !== 'last'));
}

/** The plan in a line: begun, strained, drunk. */
function Glance({ schedule }: { schedule: Schedule }) {
  const { start, drink } = schedule;
  const strained = strainedAt(schedule);
  return (
    <p class="timeline-glance">
      Start <b>{writeDayAndTime(start)}</b>
      {strained !== null && (
        <>
          {' '}
          → strain <b>{writeDayAndTime(strained)}</b>
        </>
      )}
      {drink !== null && (
        <>
          {' '}
          → first glass <b>{writeDayAndTime(drink)}</b>
        </>
      )}
    </p>
  );
}

interface EntryProps {
  readonly step: PlannedStep;
  readonly schedule: Schedule;
  readonly event: TimelineEvent | undefined;
  readonly decimalComma: boolean;
}

function Entry({ step, schedule, event, decimalComma }: EntryProps) {
  const isDay = step.kind === 'best' || step.kind === 'last';
  const after = sinceStart(schedule, step);
  const since = after === 0 ? 'the start' : `${writeElapsed(after, decimalComma)} after the start`;
  return (
    <li class={step.hands ? 'hands' : ''}>
      <time dateTime={wallOf(step.at)}>{isDay ? writeDay(step.at) : writeDayAndTime(step.at)}</time>{' '}
      <span class="timeline-since">
        {!isDay && since}
        {step.minutes > 0 && `, ${writeElapsed(step.minutes, decimalComma)} by hand`}
      </span>
      <b>{event?.title}</b>
      {step.inNight && <em> In the quiet hours.</em>}
      <p>{event?.text}</p>
    </li>
  );
}

const times = { full: writeDayAndTime, short: writeWeekdayAndTime };

type Noted = Pick<Props, 'batch' | 'plan' | 'store'>;

interface MoveProps extends Omit<Noted, 'plan'> {
  readonly to: (document: SheetDocument) => SheetDocument;
  readonly label: string;
}

function MoveButton({ batch, store, to, label }: MoveProps) {
  const move = () => store.takeEdit(to(store.document.peek()), `Plan ${batch.name}`);
  return (
    <button type="button" class="button" disabled={store.readOnly.value} onClick={move}>
      {label}
    </button>
  );
}

/** Work that no length of a wait keeps out of the night, and starts that do. */
function Nights({ batch, plan, events, store }: Noted & { events: readonly TimelineEvent[] }) {
  const work = nightWork(plan.schedule);
  if (work.length === 0) return null;
  const present = now();
  const offers = plan.offers.filter((at) => at >= present);
  const titles = work.map(
    ({ id, at }) => `“${events.find((event) => event.id === id)?.title ?? id}” at ${writeDayAndTime(at)}`,
  );
  const { wanted } = plan;
  /** A plan to drink at a time found no start near that is in time and out of the night: these give that time up. */
  const outcomeOf = (at: Instant): string => {
    if (wanted.by !== 'drink') return '';
    const glass = glassOf(batch, at, store.formulationOf(batch), store.settings.value);
    return describeOutcome({ glass, wish: { at: wanted.at, isKept: false } }, times);
  };
  return (
    <div class="timeline-note" role="status">
      <p>
        In the quiet hours: {titles.join('; ')}.{' '}
        {offers.length > 0 ? 'These starts keep out of them:' : 'No start near keeps out of them.'}
      </p>
      {offers.map((at) => (
        <MoveButton
          key={at}
          batch={batch}
          store={store}
          to={(document) => startAt(document, batch.id, at)}
          label={`Start at ${writeDayAndTime(at)} (${writeShift(plan, at, store)})${outcomeOf(at)}`}
        />
      ))}
    </div>
  );
}

function writeShift(plan: BatchPlan, at: Instant, store: Store): string {
  const shift = shiftTo(plan, at);
  const { decimalComma } = store.settings.value;
  return shift > 0 ? `${writeElapsed(shift, decimalComma)} later` : `${writeElapsed(-shift, decimalComma)} earlier`;
}

/** A start that is over already, and what can be had where it was missed. */
function Past({ batch, plan, store }: Noted) {
  const { wanted, schedule } = plan;
  if (wanted.by !== 'drink' || schedule.start >= now() || schedule.drink === null) return null;
  const settings = store.settings.value;
  const wish = writeDayAndTime(wanted.at);
  const still = stillInTime(plan, settings);
  const soonest = still === null ? soonestGlass(batch, store.formulationOf(batch), settings) : null;
  const glass = still === null ? soonest : { start: still, at: wanted.at };
  return (
    <div class="timeline-note" role="status">
      <p>
        {still !== null
          ? `Not begun yet? Begun by ${writeDayAndTime(still)}, it is still ready for ${wish}.`
          : `Not begun yet? Too late for ${wish}: it would have had to begin on ${writeDayAndTime(schedule.start)}.`}
        {soonest !== null && ` Soonest from now: ${writeDayAndTime(soonest.at)}.`}
      </p>
      {glass !== null && (
        <MoveButton
          batch={batch}
          store={store}
          to={(document) => drinkAt(document, batch.id, glass.at, glass.start)}
          label={still === null ? `Drink at ${writeDayAndTime(glass.at)}` : `Start at ${writeDayAndTime(still)}`}
        />
      )}
    </div>
  );
}
