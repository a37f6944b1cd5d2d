import { useState } from 'preact/hooks';
import { correct } from '../../batch/edits/edits';
import { stepNames } from '../../batch/edits/step-names';
import { readCoefficient } from '../../batch/reading/read-coefficient';
import type { Store } from '../../batch/store/store';
import type { Formulation } from '../../formula/engine/formulate';
import { type CoefficientId, labelIds } from '../../formula/recipe/coefficients';
import { writeSignificant } from '../../formula/words/write-significant';
import { coefficientsOf } from '../../formula/working/choice-figures';
import { Refusal, Typed } from '../page/Typed';

interface Props {
  readonly formulation: Formulation;
  readonly store: Store;
}

const asked: readonly CoefficientId[] = [...labelIds, 'usualRatio', 'soakHours', 'uptake', 'passing'];

/** What the cook's own source is, typed off its label and kept in one step; what is left blank stays as it is. */
export function OwnLabel({ formulation, store }: Props) {
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>({});
  const [refused, setRefused] = useState<Readonly<Record<string, string>>>({});
  const { decimalComma } = store.settings.value;
  const fields = coefficientsOf('source', formulation).filter(({ id }) => asked.includes(id));

  const keep = (event: Event) => {
    event.preventDefault();
    const wrong: Record<string, string> = {};
    let next = store.document.value;
    for (const { id, key, coefficient } of fields) {
      const text = texts[id] ?? '';
      if (text.trim() === '') continue;
      const read = readCoefficient(id, text, coefficient.unit, decimalComma);
      if (read.ok) next = correct(next, key, read.value, 'typed');
      else wrong[id] = read.why;
    }
    setRefused(wrong);
    if (Object.keys(wrong).length > 0) return;
    setTexts({});
    store.takeEdit(next, stepNames.ownLabel());
  };

  return (
    <form class="own-label" onSubmit={keep} aria-label="What your own source is">
      <p>
        Type what its label says of 100 g; what it does not say is water. Where carbohydrate and sugars are on it, type
        the carbohydrate less the sugars. Then how you make it: soak, water, and what passes your bag, 100 % where you
        do not strain.
      </p>
      {fields.map(({ id, label, coefficient: { value, unit } }) => (
        <div key={id}>
          <label>
            <span>{label}</span>
            <Typed
              value={texts[id] ?? ''}
              inputMode="decimal"
              placeholder={writeSignificant(value, decimalComma)}
              isRefused={refused[id] !== undefined}
              onText={(text) => setTexts({ ...texts, [id]: text })}
            />
            <span>{unit}</span>
          </label>
          <Refusal why={refused[id] ?? null} />
        </div>
      ))}
      <button type="submit" class="button">
        Keep these
      </button>
    </form>
  );
}
