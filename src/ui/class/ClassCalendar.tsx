import type { KeptClass } from '../../batch/document/document';
import type { WorkedClass } from '../../batch/store/class-sheet';
import { planFor } from '../../batch/store/plan-batches';
import type { Store } from '../../batch/store/store';
import type { TimelineEvent } from '../../formula/time/event';
import { CalendarButton } from '../plan/CalendarButton';
import { eventsFor } from '../plan/events-for';

interface Props {
  readonly kept: KeptClass;
  readonly worked: WorkedClass;
  readonly store: Store;
}

/** The plan of all kitchens as one calendar file. */
export function ClassCalendar({ kept, worked, store }: Props) {
  const events = (): readonly TimelineEvent[] =>
    worked.kitchens.flatMap(({ kitchen, batch, formulation }, place) => {
      const plan = planFor(batch, formulation, store.settings.value);
      if (plan === null) return [];
      // Each kitchen’s events are its own, in each of a calendar’s later files too.
      const schedule = { ...plan.schedule, batch: `${kept.key}-${place}-${kitchen.name}` };
      return eventsFor(batch, { ...plan, schedule }, { settings: store.settings, formulationOf: () => formulation });
    });
  return <CalendarButton events={events} name={kept.name} label="Put the plan in a calendar" />;
}
