import { useState } from 'preact/hooks';
import { describeOrigin } from '../../formula/words/origin-words';
import type { GrainKind } from '../../reference/grains';
import { grainTroubles } from '../../reference/stock-care';
import { type TroubleId, troubles } from '../../reference/troubles';

interface Props {
  readonly grains: GrainKind;
  readonly onLook: () => void;
  readonly onThrow: () => void;
}

/** What to do with the grains of a batch that went wrong, in the words of the part that tells of troubles. */
export function StockTrouble({ grains, onLook, onThrow }: Props) {
  const [found, setFound] = useState<TroubleId | null>(null);
  const trouble = troubles.find(({ id }) => id === found);
  const advice = trouble === undefined ? '' : adviceOf(trouble.grains, grains);
  return (
    <div class="stock-trouble">
      <fieldset>
        <legend>What was it?</legend>
        {grainTroubles.map((id) => (
          <label key={id} class="pick">
            <input type="radio" name="stock-trouble" checked={found === id} onChange={() => setFound(id)} />
            {troubles.find((one) => one.id === id)?.found}
          </label>
        ))}
      </fieldset>
      {trouble !== undefined && (
        <p role="status">
          {advice} <span class="origin">{describeOrigin(trouble.origin)}</span>
        </p>
      )}
      <p class="stock-buttons">
        <button type="button" class="button" onClick={onThrow}>
          Throw these grains out
        </button>
        <button type="button" class="follow" onClick={onLook}>
          What is wrong with it?
        </button>
      </p>
    </div>
  );
}

function adviceOf(advice: string | Readonly<Partial<Record<GrainKind, string>>>, grains: GrainKind): string {
  return typeof advice === 'string' ? advice : (advice[grains] ?? '');
}
