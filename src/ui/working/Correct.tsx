import { useEffect, useRef, useState } from 'preact/hooks';
import { readCoefficient } from '../../batch/reading/read-coefficient';
import type { Store } from '../../batch/store/store';
import type { CoefficientId } from '../../formula/recipe/coefficients';
import type { Coefficient } from '../../reference/origins';
import { Refusal, Typed } from '../page/Typed';

interface Props {
  readonly id: CoefficientId;
  readonly at: string;
  readonly label: string;
  readonly coefficient: Coefficient;
  readonly store: Store;
}

/** Puts a figure of the cook's own in place of a table's, and gives it back. */
export function Correct({ id, at, label, coefficient, store }: Props) {
  const [text, setText] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const yours = coefficient.origin.kind === 'yours';
  const field = useRef<HTMLInputElement>(null);
  const open = text !== null;
  useEffect(() => {
    if (open) field.current?.focus();
  }, [open]);

  const leave = () => {
    setProblem(null);
    setText(null);
  };
  const keep = (event: Event) => {
    event.preventDefault();
    const read = readCoefficient(id, text ?? '', coefficient.unit, store.settings.value.decimalComma);
    if (!read.ok) {
      setProblem(read.why);
      return;
    }
    leave();
    store.correct(at, read.value, label);
  };

  if (text === null) {
    return (
      <span class="correct">
        <button type="button" class="follow" aria-label={`Use my own: ${label}`} onClick={() => setText('')}>
          Use my own
        </button>
        {yours && (
          <button
            type="button"
            class="follow"
            aria-label={`Give back: ${label}`}
            onClick={() => store.giveBack(at, label)}
          >
            Give it back
          </button>
        )}
      </span>
    );
  }
  return (
    <form class="correct" onSubmit={keep}>
      <label>
        <span class="unseen">{label}</span>
        <Typed field={field} value={text} inputMode="decimal" isRefused={problem !== null} onText={setText} />
      </label>
      <span>{coefficient.unit}</span>
      <button type="submit" class="button">
        Keep
      </button>
      <button type="button" class="follow" onClick={leave}>
        Leave it
      </button>
      <Refusal why={problem} />
    </form>
  );
}
