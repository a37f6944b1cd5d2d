import { writeDay } from '../../batch/reading/write-time';
import type { Planned } from '../../batch/store/plan-batches';

/** Batches whose last day is past, each in a line: they are in nobody’s way any more. */
export function TimelineOver({ over }: { readonly over: readonly Planned[] }) {
  if (over.length === 0) return null;
  const count = over.length === 1 ? '1 batch is past its last day' : `${over.length} batches are past their last day`;
  return (
    <details class="timeline-others">
      <summary>{count}, and not in the plan</summary>
      <ul>
        {over.map(({ batch, plan }) => (
          <li key={batch.id}>
            “{batch.name}”, <LastDay plan={plan} />
          </li>
        ))}
      </ul>
    </details>
  );
}

function LastDay({ plan: { schedule } }: Pick<Planned, 'plan'>) {
  const last = schedule.steps.find(({ kind }) => kind === 'last');
  return last === undefined ? <>begun {writeDay(schedule.start)}</> : <>last day {writeDay(last.at)}</>;
}
