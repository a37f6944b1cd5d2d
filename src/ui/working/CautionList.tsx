import { describeOrigin } from '../../formula/words/origin-words';
import type { Origin } from '../../reference/origins';

interface Props {
  readonly cautions: readonly { readonly id: string; readonly text: string; readonly origin: Origin }[];
}

/** Cautions that belong to a number, each with its source or mark. */
export function CautionList({ cautions }: Props) {
  if (cautions.length === 0) return null;
  return (
    <>
      <h4>Take care</h4>
      <ul class="inputs">
        {cautions.map(({ id, text, origin }) => (
          <li key={id}>
            {text}
            <span class="origin">{describeOrigin(origin)}</span>
          </li>
        ))}
      </ul>
    </>
  );
}
