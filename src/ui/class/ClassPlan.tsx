import { useState } from 'preact/hooks';
import type { KeptClass } from '../../batch/document/document';
import { classSteps, planClass } from '../../batch/edits/class-edits';
import { isPlannable, now, wallOf } from '../../batch/reading/local-time';
import { writeDayAndTime, writeWeekdayAndTime } from '../../batch/reading/write-time';
import { type PlannedTogether, planClassroom, soonestTogether, type WorkedClass } from '../../batch/store/class-sheet';
import type { Store } from '../../batch/store/store';
import { soonestStart } from '../../formula/plan/plan-batch';
import { Refusal } from '../page/Typed';
import { ClassCalendar } from './ClassCalendar';

interface Props {
  readonly kept: KeptClass;
  readonly worked: WorkedClass;
  readonly store: Store;
}

/** Who starts when: for a start of all, or for a drink of all. */
export function ClassPlan({ kept, worked, store }: Props) {
  const settings = store.settings.value;
  const { when } = kept;
  const [draft, setDraft] = useState<string | null>(null);
  const take = (planned: KeptClass['when'] | null) => {
    setDraft(null);
    store.takeEdit(planClass(store.document.peek(), kept.key, planned ?? null), classSteps.plan(kept));
  };
  const choose = (by: string) => {
    if (by === 'start') take({ by, at: wallOf(soonestStart(now())) });
    else if (by === 'drink') {
      const { start, at } = soonestTogether(worked, settings);
      take({ by, at: wallOf(at), from: wallOf(start) });
    } else take(null);
  };
  const type = (at: string) => {
    if (when === undefined || !isPlannable(at)) return setDraft(at);
    const { by } = when;
    take(by === 'start' ? { by, at } : { by, at, from: wallOf(now()) });
  };
  const groups = when === undefined ? [] : planClassroom(worked, settings);
  return (
    <section class="class-plan" aria-label="Who starts when">
      <h3>Who starts when</h3>
      <p class="class-when">
        <select
          aria-label="Plan for the class"
          value={when?.by ?? ''}
          onChange={(event) => choose(event.currentTarget.value)}
        >
          <option value="">Not planned</option>
          <option value="start">Start together at</option>
          <option value="drink">Drink together at</option>
        </select>
        {when !== undefined && (
          <input
            type="datetime-local"
            aria-label={when.by === 'start' ? 'All start at' : 'All drink at'}
            value={draft ?? when.at}
            min="1970-01-01T00:00"
            max="9998-12-31T23:59"
            onChange={(event) => type(event.currentTarget.value)}
          />
        )}
      </p>
      <Refusal why={draft === null ? null : 'Type a whole date and time, or pick one.'} />
      {when !== undefined && groups.length > 0 && <Times groups={groups} by={when.by} />}
      {groups.length > 0 && <ClassCalendar kept={kept} worked={worked} store={store} />}
    </section>
  );
}

interface TimesProps {
  readonly groups: readonly PlannedTogether[];
  readonly by: 'start' | 'drink';
}

/** The times of each kitchen, or of those that have the same; the one that was asked about stands out. */
function Times({ groups, by }: TimesProps) {
  const soaks = groups.some(({ plan }) => plan.schedule.steps.some(({ kind }) => kind === 'soak'));
  const [first, last] = by === 'drink' ? [soaks ? 'Soak' : 'Start', null] : [null, 'First cold glass'];
  const isPast = by === 'drink' && groups.some((group) => group.isPast);
  return (
    <>
      {isPast && (
        <p class="problem caution" role="status">
          It is too late to start for this time: choose a later one to drink.
        </p>
      )}
      <table>
        <thead>
          <tr>
            <th scope="col">Kitchen</th>
            {first !== null && <th scope="col">{first}</th>}
            <th scope="col">Grains in</th>
            <th scope="col">Likely ready</th>
            <th scope="col">May be ready</th>
            {last !== null && <th scope="col">{last}</th>}
          </tr>
        </thead>
        <tbody>
          {groups.map(({ names, plan: { schedule }, ready, isInNight }) => (
            <tr key={names.join('\n')}>
              <th scope="row">
                <bdi>{names.join(', ')}</bdi>
                {isInNight && <small class="hint"> some of it in the night</small>}
              </th>
              {ready === null ? (
                <td colSpan={4}>{schedule.stopped ?? ''}</td>
              ) : (
                <>
                  {first !== null && (
                    <td class="class-asked" data-label={first}>
                      {writeDayAndTime(schedule.start)}
                    </td>
                  )}
                  <td data-label="Grains in">{writeWeekdayAndTime(ready.from)}</td>
                  <td class={by === 'start' ? 'class-asked' : undefined} data-label="Likely ready">
                    {writeWeekdayAndTime(ready.likely)}
                  </td>
                  <td data-label="May be ready">
                    {writeWeekdayAndTime(ready.soonest)} – {writeWeekdayAndTime(ready.latest)}
                  </td>
                  {last !== null && (
                    <td data-label={last}>{schedule.drink === null ? '' : writeWeekdayAndTime(schedule.drink)}</td>
                  )}
                </>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
