import { useState } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import { addFruit, typeCell } from '../../batch/edits/edits';
import type { Store } from '../../batch/store/store';
import {
  type AdditionId,
  additionName,
  bottleFruits,
  bottleSweeteners,
  isFruit,
} from '../../formula/fizz/bottle-additions';
import type { Ranged } from '../../formula/models/sugar';
import { bothUnits } from '../../formula/words/both-units';
import { type Kitchen, writeValue } from '../../formula/words/write-row';
import { readAddition } from '../../interchange/bottle-addition';
import { Refusal, Typed } from '../page/Typed';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
}

/** What sugar or fruit in each bottle comes to per litre, and a button that counts it. */
export function FizzAddition({ batch, store }: Props) {
  const kitchen = store.settings.value;
  const [id, setId] = useState<AdditionId>('caneWhite');
  const [amount, setAmount] = useState('1 tsp');
  const [labelSugar, setLabelSugar] = useState('');
  const found = readAddition(store.formulationOf(batch), { id, amount, labelSugar }, kitchen);
  const name = id === 'byLabel' ? 'fruit or juice' : additionName(id).toLowerCase();
  const isKept = id === 'byLabel' || isFruit(id);
  const use = (event: Event) => {
    event.preventDefault();
    if (!found.ok) return;
    const typed = typeCell(store.document.value, batch.id, 'bottleSugar', found.text);
    const fruit = { name, amount: amount.trim(), grams: found.grams, sugar: found.text };
    const next = isKept ? addFruit(typed, batch.id, fruit) : typed;
    store.takeEdit(next, `Add ${amount.trim()} of ${name} to each bottle`);
  };
  return (
    <form class="fizz-add" onSubmit={use}>
      <h3>Add sugar or fruit to each bottle</h3>
      <div class="fizz-fields">
        <label>
          <span>What</span>
          <select value={id} onChange={(event) => setId(additionOf(event.currentTarget.value))}>
            {bottleSweeteners.map((one) => (
              <option key={one} value={one}>
                {additionName(one)}
              </option>
            ))}
            {bottleFruits.map((one) => (
              <option key={one} value={one}>
                {additionName(one)}
              </option>
            ))}
            <option value="byLabel">Fruit, juice or else, by its sugars</option>
          </select>
        </label>
        {id === 'byLabel' && (
          <label>
            <span>Sugars in 100 g, by a label or a food table</span>
            <Typed value={labelSugar} placeholder="such as 10" onText={setLabelSugar} />
          </label>
        )}
        <label>
          <span>How much in each bottle</span>
          <Typed value={amount} onText={setAmount} />
        </label>
      </div>
      {found.ok ? (
        <>
          <p role="status">
            {write(found.grams, 'mass', kitchen)}, and kefir up to {write(found.added.filled, 'volume', kitchen)} in
            all, comes to <b>{writeRange(found.added.perLitre, kitchen)}</b> of fermentable sugar.{' '}
            {found.added.perLitre.high > found.added.perLitre.low && 'The bottle is counted with the higher.'}
          </p>
          <button type="submit" class="button">
            Count {found.text} of sugar in each bottle
          </button>
        </>
      ) : id === 'byLabel' && labelSugar.trim() === '' ? (
        <p role="status">{found.why}</p>
      ) : (
        <Refusal why={found.why} />
      )}
    </form>
  );
}

function additionOf(value: string): AdditionId {
  return [...bottleSweeteners, ...bottleFruits].find((id) => id === value) ?? 'byLabel';
}

function write(value: number, kind: 'mass' | 'volume', kitchen: Kitchen): string {
  return bothUnits(writeValue(value, kind, null, kitchen), kitchen.leads);
}

function writeRange({ low, high }: Ranged, kitchen: Kitchen): string {
  const [least, most] = [low, high].map((end) => writeValue(end, 'concentration', null, kitchen).metric);
  return least === most ? `${most}` : `${least} to ${most}`;
}
