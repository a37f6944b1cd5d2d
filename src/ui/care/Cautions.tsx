import { cautionsAtFoot } from '../../formula/cautions';
import type { Formulation } from '../../formula/formulate';
import { describeOrigin } from '../../formula/origin-words';
import { Whose } from '../page/Whose';

interface Props {
  readonly formulation: Formulation;
  readonly name: string;
}

/** Everything to take care of in this batch, once, each with its source or mark. */
export function Cautions({ formulation, name }: Props) {
  return (
    <section class="cautions" aria-label={`Cautions for ${name}`}>
      <h2>
        Take care
        <Whose />
      </h2>
      <ul>
        {cautionsAtFoot(formulation).map(({ id, text, origin }) => (
          <li key={id}>
            {text}
            <span class="origin">{describeOrigin(origin)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
