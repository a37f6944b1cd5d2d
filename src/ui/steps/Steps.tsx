import type { Batch } from '../../batch/document';
import type { Store } from '../../batch/store';
import type { Formulation, RowResult } from '../../formula/formulate';
import { worstError } from '../../formula/kit';
import { labelOf } from '../../formula/labels';
import { type SectionId, sections } from '../../formula/order';
import { figuresOfStep } from '../../formula/step-figures';
import { stepsOf } from '../../formula/steps';
import type { Kitchen } from '../../formula/write-row';
import { Heat } from './Heat';
import { StepFigures } from './StepFigures';
import { stepAmounts } from './step-amounts';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
}

/** What can’t be told of these stops nobody from making the batch: the step itself says so. */
const late: readonly SectionId[] = ['ferment', 'bottle', 'keep'];

/** The batch as a list of steps with its amounts in them. */
export function Steps({ batch, store }: Props) {
  const formulation = store.formulationOf(batch);
  const settings = store.settings.value;
  const roots = sections
    .filter(({ id }) => !late.includes(id))
    .flatMap(({ rows }) => rows.filter((id) => isRoot(formulation.rows[id])));
  return (
    <section class="steps" aria-label={`Steps for ${batch.name}`}>
      <h2>
        <bdi>{batch.name}</bdi>, step by step
      </h2>
      {roots.length > 0 && (
        <p class="message">These steps wait: mend {roots.map((id) => `“${labelOf(id)}”`).join(' and ')} first.</p>
      )}
      <ol hidden={roots.length > 0}>
        {stepsOf(formulation, stepAmounts(formulation, settings), settings).map((step) => (
          <li key={step.id}>
            <h3>{step.title}</h3>
            <p>{step.text}</p>
            {step.perJar !== undefined && <p>{step.perJar}</p>}
            {step.notes.map(({ text, caution }) => (
              <p class={caution ? 'note caution' : 'note'} key={text}>
                {text}
              </p>
            ))}
            <StepFigures
              figures={figuresOfStep(step.id, formulation.choices.source)}
              decimalComma={settings.decimalComma}
            />
          </li>
        ))}
      </ol>
      <KitError formulation={formulation} kitchen={settings} />
      <Heat batch={batch} store={store} />
    </section>
  );
}

/** Whether a row has no number for a reason of its own, not because it waits for another. */
function isRoot({ status, problems }: RowResult): boolean {
  return status === 'refused' && !problems.some(({ code }) => code === 'waits');
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
