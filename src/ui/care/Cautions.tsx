import { useState } from 'preact/hooks';
import { type CareTopic, careTopics } from '../../formula/advice/care-topics';
import type { Formulation } from '../../formula/engine/formulate';
import { describeOrigin } from '../../formula/words/origin-words';
import { OpenAll } from '../page/OpenAll';
import { Whose } from '../page/Whose';

interface Props {
  readonly formulation: Formulation;
  readonly name: string;
}

/** Everything to take care of in this batch, once, folded by topic; what is pressing at a step stands at that step, too. */
export function Cautions({ formulation, name }: Props) {
  const [isOpen, setOpen] = useState(false);
  return (
    <section class="cautions" aria-label={`Cautions for ${name}`}>
      <h2>
        Take care
        <Whose />
      </h2>
      <p class="cautions-about">All of it, by topic. What is pressing while you work stands at its step as well.</p>
      <OpenAll isOpen={isOpen} onChange={setOpen} />
      {careTopics(formulation).map((topic) => (
        <Topic key={topic.id} topic={topic} isOpen={isOpen} />
      ))}
    </section>
  );
}

interface TopicProps {
  readonly topic: CareTopic;
  readonly isOpen: boolean;
}

function Topic({ topic: { name, cautions }, isOpen }: TopicProps) {
  const [isSourced, setSourced] = useState(false);
  return (
    <details class="fold-panel" open={isOpen}>
      <summary>
        <h3>{name}</h3>
        <span class="how-many">{cautions.length}</span>
      </summary>
      <ul>
        {cautions.map(({ id, text, origin }) => (
          <li key={id}>
            {text}
            {isSourced && <span class="origin">{describeOrigin(origin)}</span>}
          </li>
        ))}
      </ul>
      <button
        type="button"
        class="quiet"
        aria-pressed={isSourced}
        aria-label={`Where from: ${name}`}
        onClick={() => setSourced(!isSourced)}
      >
        where from
      </button>
    </details>
  );
}
