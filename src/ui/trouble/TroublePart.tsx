import { useState } from 'preact/hooks';
import { describeOrigin } from '../../formula/words/origin-words';
import type { GrainId } from '../../reference/grains';
import { type Trouble, troubles, troublesAbout } from '../../reference/troubles';
import { OpenAll } from '../page/OpenAll';
import type { PartProps } from '../page/part-props';
import { Whose } from '../page/Whose';
import { askedTrouble } from './asked-trouble';
import './trouble.css';

/** What is wrong with a jar or a bottle: what is found, then what to do with the milk and with the grains. */
export default function TroublePart({ batch }: PartProps) {
  const [isSourced, setSourced] = useState(false);
  const [isOpen, setOpen] = useState(false);
  return (
    <section class="troubles" aria-label="What is wrong?">
      <h2>
        What is wrong?
        <Whose />
      </h2>
      <p>{troublesAbout}</p>
      <OpenAll isOpen={isOpen} onChange={setOpen} />
      {troubles.map((trouble) => (
        <OneTrouble key={trouble.id} trouble={trouble} grains={batch.grains} isSourced={isSourced} isOpen={isOpen} />
      ))}
      <button type="button" class="quiet" aria-pressed={isSourced} onClick={() => setSourced(!isSourced)}>
        where from
      </button>
    </section>
  );
}

interface Props {
  readonly trouble: Trouble;
  readonly grains: GrainId;
  readonly isSourced: boolean;
  readonly isOpen: boolean;
}

function OneTrouble({ trouble, grains, isSourced, isOpen }: Props) {
  const { found, look, milk, origin, throwOut } = trouble;
  const ofGrains = typeof trouble.grains === 'string' ? trouble.grains : trouble.grains[grains];
  return (
    <details class="fold-panel" open={isOpen || askedTrouble.value === trouble.id}>
      <summary>
        <h3>{found}</h3>
        {throwOut && <span class="thrown-out">throw it out</span>}
      </summary>
      <dl>
        <dt>Look</dt>
        <dd>{look}</dd>
        <dt>The milk</dt>
        <dd>{milk}</dd>
        <dt>The grains</dt>
        <dd>{ofGrains}</dd>
        {isSourced && (
          <>
            <dt>Where from</dt>
            <dd class="origin">{describeOrigin(origin)}</dd>
          </>
        )}
      </dl>
    </details>
  );
}
