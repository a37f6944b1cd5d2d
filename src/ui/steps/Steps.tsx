import { useMemo, useRef } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import { ticksOf } from '../../batch/keeping/kept-cooking';
import type { Store } from '../../batch/store/store';
import type { Formulation, RowResult } from '../../formula/engine/formulate';
import { type SectionId, sections } from '../../formula/recipe/order';
import { worstError } from '../../formula/steps/kit-error';
import { stepsOf } from '../../formula/steps/steps';
import { labelOf } from '../../formula/words/labels';
import type { Kitchen } from '../../formula/words/write-row';
import { MayEdit } from '../page/MayEdit';
import type { PageState } from '../page/page-state';
import { useAlikeItems } from '../sheet/use-alike';
import { cookingOn } from './cooking';
import { ForTheGlass } from './ForTheGlass';
import { Heat } from './Heat';
import { StepItem } from './StepItem';
import { stepAmounts } from './step-amounts';
import { canStayAwake, useAwake } from './use-awake';
import { usePlace } from './use-place';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  readonly page: PageState;
}

/** What can’t be told of these stops nobody from making the batch: the step itself says so. */
const late: readonly SectionId[] = ['ferment', 'bottle', 'keep'];

/** The batch as a list of steps with its amounts in them, to be ticked off, timed and measured by. */
export function Steps({ batch, store, page }: Props) {
  const cooking = useMemo(() => cookingOn(page), [page]);
  const element = useRef<HTMLElement>(null);
  usePlace(element, batch.id);
  const formulation = store.formulationOf(batch);
  const settings = store.settings.value;
  // A slip takes no figure away from wet hands: the last good ones stay, for as long as they are of the same make.
  const good = store.lastGoodOf(batch);
  const shown = good !== null && isSameMake(good, formulation) ? good : formulation;
  const steps = useAlikeItems(stepsOf(shown, stepAmounts(shown, settings), settings));
  const done = ticksOf(cooking.ticks.value, batch.id);
  const isAwake = cooking.atWork.value === batch.id;
  useAwake(isAwake);
  const heat = useMemo(
    () => (
      <MayEdit store={store}>
        <Heat batch={batch.id} heat={batch.heat} store={store} />
      </MayEdit>
    ),
    [store, batch.id, batch.heat],
  );
  const needed = sections.filter(({ id }) => !late.includes(id)).flatMap(({ rows }) => rows);
  const roots = needed.filter((id) => isRoot(formulation.rows[id]));
  const wait = shown === formulation && needed.some((id) => isWaiting(formulation.rows[id]));
  return (
    <section class="steps" aria-label={`Steps for ${batch.name}`} ref={element}>
      <h2>
        <bdi>{batch.name}</bdi>, step by step
      </h2>
      {roots.length > 0 && (
        <p class="message">
          {wait
            ? 'These steps wait: mend '
            : shown === formulation
              ? 'Mend '
              : 'These are the figures as they were: mend '}
          {roots.map((id) => `“${labelOf(id)}”`).join(' and ')} first.
        </p>
      )}
      <ol hidden={wait}>
        {steps.map((step) => (
          <StepItem
            key={step.id}
            step={step}
            batch={batch.id}
            measuredIn={step.measured.length > 0 ? batch : null}
            source={formulation.choices.source}
            grain={formulation.choices.grain}
            store={store}
            cooking={cooking}
            isDone={done.includes(step.id)}
          />
        ))}
      </ol>
      <div class="steps-foot">
        <button
          type="button"
          class="button"
          aria-disabled={done.length === 0}
          onClick={() => cooking.untickAll(batch.id)}
        >
          Untick all
        </button>
        {canStayAwake() && (
          <button
            type="button"
            class="button"
            aria-pressed={isAwake}
            onClick={() => cooking.stayAwake(isAwake ? null : batch.id)}
          >
            Keep the screen awake
          </button>
        )}
        {heat}
        <MayEdit store={store}>
          <ForTheGlass batch={batch} store={store} />
        </MayEdit>
      </div>
      <KitError formulation={formulation} kitchen={settings} />
      <p class="note">A timer rings while this page is open; one that ended while it was closed says so.</p>
    </section>
  );
}

/** Whether two are made of the same in the same jars, so that the steps of one are those of the other. */
function isSameMake({ recipe: one }: Formulation, { recipe: other }: Formulation): boolean {
  return (
    one.source === other.source &&
    one.vessel === other.vessel &&
    one.grains === other.grains &&
    one.sweetener === other.sweetener &&
    one.heat === other.heat
  );
}

/** Whether a row has no number for a reason of its own. */
function isRoot(row: RowResult): boolean {
  return row.status === 'refused' && !isWaiting(row);
}

/** Whether a row has no number because another has none. */
function isWaiting({ status, problems }: RowResult): boolean {
  return status === 'refused' && problems.some(({ code }) => code === 'waits');
}

/** What the cook's own kit does to the batch at worst. */
function KitError({ formulation, kitchen }: { formulation: Formulation; kitchen: Kitchen }) {
  const worst = worstError(formulation, kitchen);
  if (worst === null) return null;
  const share = new Intl.NumberFormat('en', { style: 'percent', maximumFractionDigits: 1 }).format(worst.error);
  const kit = kitchen.leads === 'us' ? 'these scoops' : 'this scale';
  return (
    <p class="note">
      Measured with {kit}, a ratio is at most {share} off (“{labelOf(worst.row)}” to “{labelOf(worst.to)}”).
    </p>
  );
}
