import type { Batch } from '../../batch/document/document';
import type { Store } from '../../batch/store/store';
import { pulpOf } from '../../formula/glass/in-the-bag';
import {
  besideMeasured,
  describeKeeping,
  describePulp,
  describePulpAllergens,
  describeShare,
  keepingOrigin,
  pulpCautions,
  usesOfPulp,
} from '../../formula/glass/pulp-words';
import { writeRow } from '../../formula/words/write-row';

interface Props {
  readonly batch: Batch;
  readonly store: Pick<Store, 'formulationOf' | 'settings'>;
}

/** The pulp of a batch: how much, what is left in it, how long it keeps and what it is good for. */
export function PulpLeft({ batch, store }: Props) {
  const kitchen = store.settings.value;
  const formulation = store.formulationOf(batch);
  const pulp = pulpOf(formulation);
  const written = writeRow(formulation, 'pulpMass', kitchen);
  const measured = pulp === null ? null : besideMeasured(formulation, pulp, kitchen);
  return (
    <section class="pulp" aria-label={`The pulp of ${batch.name}`}>
      <h2>The pulp</h2>
      {pulp === null || written === null ? (
        <p>None: all of it is drunk.</p>
      ) : (
        <>
          <p>
            <b>{kitchen.leads === 'us' ? (written.us ?? written.metric) : written.metric}</b> of wet pulp,{' '}
            {describePulp(pulp, kitchen)}
          </p>
          <p>{describeKeeping(kitchen)}</p>
          <p class="pulp-care">{describePulpAllergens(formulation)}</p>
          <h3>Good for</h3>
          <ul class="pulp-uses">
            {usesOfPulp(formulation).map(({ text }) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
          {pulpCautions.map((text) => (
            <p key={text} class="glass-note">
              {text}
            </p>
          ))}
          <details class="fold-panel">
            <summary>Where this is from</summary>
            <ul class="inputs">
              <li>
                What stays
                <span class="origin">{describeShare(pulp, formulation, kitchen)}</span>
              </li>
              {measured !== null && (
                <li>
                  {measured.text}
                  <span class="origin">{measured.origin}</span>
                </li>
              )}
              <li>
                How long it keeps
                <span class="origin">{keepingOrigin(kitchen)}</span>
              </li>
              <li>
                What it is good for
                <span class="origin">{usesOfPulp(formulation)[0]?.origin}</span>
              </li>
            </ul>
          </details>
        </>
      )}
    </section>
  );
}
