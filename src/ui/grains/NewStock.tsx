import { useState } from 'preact/hooks';
import type { Batch, SheetDocument } from '../../batch/document/document';
import { longestName, mostStocks } from '../../batch/document/document-limits';
import { isKeyOf, keysOf } from '../../batch/document/table-keys';
import { addStock, stockSteps } from '../../batch/edits/stock-edits';
import { now, wallOf } from '../../batch/reading/local-time';
import { readGrains } from '../../batch/reading/read-stock-line';
import type { Store } from '../../batch/store/store';
import { placeWords } from '../../formula/stock/line-words';
import { neverMixed } from '../../reference/grain-care';
import { grains as kinds } from '../../reference/grains';
import { Typed } from '../page/Typed';
import { Field } from './Field';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  readonly isFirst: boolean;
  readonly onKept: (next: SheetDocument, step: string, words: string) => void;
}

const stockKinds = ['water', 'milk'] as const;

/** A jar of grains that is not kept here yet: its kind, what it weighs, where it rests. */
export function NewStock({ batch, store, isFirst, onKept }: Props) {
  const [grains, setGrains] = useState(stockKinds.find((kind) => kind === batch.grains) ?? 'water');
  const [weight, setWeight] = useState('');
  const [name, setName] = useState('');
  const [place, setPlace] = useState<keyof typeof placeWords>('fridge');
  const [problem, setProblem] = useState<string | null>(null);
  const keep = (event: Event) => {
    event.preventDefault();
    const read = readGrains(weight, true, store.settings.value);
    const document = store.document.value;
    const isFull = (document.stocks ?? []).length >= mostStocks;
    setProblem(isFull ? `This sheet holds ${mostStocks} jars of grains. Remove one first.` : read.ok ? null : read.why);
    if (!read.ok || isFull) return;
    const isWet = place === 'room' || place === 'fridge';
    const next = addStock(document, grains, name, {
      ...{ at: wallOf(now()), did: 'got', grams: read.grams, place },
      ...(isWet ? { medium: grains === 'milk' ? 'dairy' : 'sugarWater' } : {}),
    });
    onKept(next, stockSteps.keep, 'Kept. Weigh them out and back, and the page learns how they grow.');
  };
  return (
    <form class="grains-form" noValidate onSubmit={keep}>
      <h3>{isFirst ? 'What grains do you have?' : 'Another jar of grains'}</h3>
      <fieldset>
        <legend class="unseen">Kind</legend>
        {stockKinds.map((kind) => (
          <label key={kind} class="pick">
            <input type="radio" name="stock-kind" checked={grains === kind} onChange={() => setGrains(kind)} />
            {kinds[kind].name}
          </label>
        ))}
      </fieldset>
      <div class="grains-fields">
        <Field label="Drained, they weigh" problem={problem}>
          {(about) => (
            <Typed {...about} value={weight} inputMode="decimal" placeholder="such as 60 g" onText={setWeight} />
          )}
        </Field>
        <Field label="They are">
          {({ isRefused: _, ...about }) => (
            <select
              {...about}
              value={place}
              onChange={({ currentTarget: { value } }) => isKeyOf(placeWords, value) && setPlace(value)}
            >
              {keysOf(placeWords).map((id) => (
                <option key={id} value={id}>
                  {placeWords[id]}
                </option>
              ))}
            </select>
          )}
        </Field>
        <Field label="Name">
          {(about) => (
            <Typed {...about} value={name} maxLength={longestName} placeholder={kinds[grains].name} onText={setName} />
          )}
        </Field>
      </div>
      {!isFirst && <p class="hint">{neverMixed.text}</p>}
      <p>
        <button type="submit" class="button next">
          Keep these grains
        </button>
      </p>
    </form>
  );
}
