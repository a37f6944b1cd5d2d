import { dayAfter, writeCalendarDay } from '../../batch/document/calendar-day';
import type { Batch } from '../../batch/document/document';
import { wallOf } from '../../batch/reading/local-time';
import { writeTimeOfDay } from '../../batch/reading/write-time';
import { planFor, plannedDay } from '../../batch/store/plan-batches';
import type { Store } from '../../batch/store/store';
import { labelDaysOf } from '../../formula/steps/label-text';
import type { Instant } from '../../formula/time/event';

interface Props {
  readonly batch: Batch;
  readonly store: Pick<Store, 'formulationOf' | 'settings'>;
}

/** The days of a batch on its card, as planned; what no plan knows is a line to write on. */
export function PrintDates({ batch, store }: Props) {
  const formulation = store.formulationOf(batch);
  const plan = planFor(batch, formulation, store.settings.value);
  const made = plannedDay(plan);
  const keeps = labelDaysOf(formulation);
  const after = (days: number | undefined) =>
    made === null || days === undefined ? null : writeCalendarDay(dayAfter(made, days) ?? '');
  const lines = [
    { what: 'Start', day: writeMoment(plan === null || plan.schedule.steps.length === 0 ? null : plan.schedule.start) },
    {
      what: formulation.choices.grain.starter === undefined ? 'Made, grains out' : 'Made',
      day: made === null ? null : writeCalendarDay(made),
    },
    { what: 'First glass', day: writeMoment(plan?.schedule.drink ?? null) },
    { what: 'Taste by', day: after(keeps?.best) },
    { what: 'Use up by', day: after(keeps?.last) },
  ];
  return (
    <dl>
      {lines.map(({ what, day }) => (
        <div key={what}>
          <dt>{what}</dt>
          <dd>{day ?? <Blank />}</dd>
        </div>
      ))}
    </dl>
  );
}

/** Lines for what is found at the jar, to be written by hand. */
export function PrintFound() {
  return (
    <div class="print-found">
      <h3>What I found</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">after h</th>
            <th scope="col">pH</th>
            <th scope="col">taste, look, smell</th>
          </tr>
        </thead>
        <tbody>
          {['first', 'second', 'third', 'fourth', 'fifth'].map((line) => (
            <tr key={line}>
              <td />
              <td />
              <td />
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function writeMoment(at: Instant | null): string | null {
  if (at === null) return null;
  const day = writeCalendarDay(wallOf(at).slice(0, 10));
  return day === null ? null : `${day}, ${writeTimeOfDay(at)}`;
}

function Blank() {
  return <span class="blank" />;
}
