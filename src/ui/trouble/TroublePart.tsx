import { useState } from 'preact/hooks';
import { describeOrigin } from '../../formula/words/origin-words';
import { type CultureId, isGrains } from '../../reference/grains';
import { starterAfter, type Trouble, troubles, troublesAbout } from '../../reference/troubles';
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
      {troubles
        .filter(({ ofGrains }) => ofGrains === undefined || isGrains(batch.grains))
        .map((trouble) => (
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
  readonly grains: CultureId;
  readonly isSourced: boolean;
  readonly isOpen: boolean;
}

function OneTrouble({ trouble, grains, isSourced, isOpen }: Props) {
  const { found, look, milk, origin, throwOut } = trouble;
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
        <dt>{isGrains(grains) ? 'The grains' : 'The starter'}</dt>
        <dd>{cultureAfter(trouble, grains)}</dd>
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

/** What becomes of the grains; of a starter none is left, but the next batch may be started with the kefir. */
function cultureAfter(trouble: Trouble, culture: CultureId): string {
  if (!isGrains(culture)) return trouble.starter ?? starterAfter;
  return typeof trouble.grains === 'string' ? trouble.grains : trouble.grains[culture];
}
