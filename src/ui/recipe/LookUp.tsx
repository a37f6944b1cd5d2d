import { useState } from 'preact/hooks';
import { forgetOwnFood, keepOwnFood } from '../../batch/edits/larder';
import type { Store } from '../../batch/store/store';
import { cupWeights, listFoods, ownKey } from '../../formula/foods/look-up';
import { bothUnits } from '../../formula/words/both-units';
import { describeOrigin } from '../../formula/words/origin-words';
import { writeValue } from '../../formula/words/write-row';
import { lookUpAmount } from '../../interchange/look-up-amount';
import { readOwnFood } from '../../interchange/own-food';
import { writeMetric } from '../../measure/write-quantity';
import { MayEdit } from '../page/MayEdit';
import { Refusal, Typed } from '../page/Typed';
import { MenuOptions } from '../sheet/MenuOptions';
import { foodMenu } from './food-menu';

interface Props {
  readonly store: Store;
}

/** Any food's cup: an amount of it one way, read the other way, with the range to expect and where it is from. */
export function LookUp({ store }: Props) {
  const settings = store.settings.value;
  const { ownFoods = [] } = store.document.value;
  const foods = listFoods(ownFoods).filter(({ key }) => cupWeights(key, ownFoods).length > 0);
  const [picked, setPicked] = useState<string>(almonds);
  const [form, setForm] = useState('');
  // A food of one's own may have been forgotten, or undone, since it was picked.
  const food = foods.some(({ key }) => key === picked) ? picked : almonds;
  const setFood = (key: string) => {
    setPicked(key);
    setForm('');
  };
  const [text, setText] = useState('1 cup');
  const forms = [
    ...new Set(cupWeights(food, ownFoods).flatMap((weight) => (weight.form === null ? [] : [weight.form]))),
  ];
  const habits = { cups: settings.cups, decimalComma: settings.decimalComma, ownFoods };
  const found = lookUpAmount(text, food, form === '' ? null : form, habits);
  const say = (amount: number, kind: 'mass' | 'volume') =>
    bothUnits(writeValue(amount, kind, null, settings), settings.leads);
  return (
    <section class="panel" aria-label="Cups to grams, any food">
      <h2>Cups to grams, any food</h2>
      <div class="stock">
        <label>
          Food
          <select value={food} onChange={(event) => setFood(event.currentTarget.value)}>
            <MenuOptions groups={foodMenu(foods)} />
          </select>
        </label>
        {forms.length > 1 && (
          <label>
            Cut or packing
            <select value={form} onChange={(event) => setForm(event.currentTarget.value)}>
              <option value="">the usual</option>
              {forms.map((one) => (
                <option key={one} value={one}>
                  {one}
                </option>
              ))}
            </select>
          </label>
        )}
        <label>
          Amount
          <Typed value={text} onText={setText} />
        </label>
      </div>
      {found.ok ? (
        <p role="status">
          {say(found.typed.amount, found.typed.kind)} is{' '}
          <b>{say(found.other.spread.likely, found.typed.kind === 'mass' ? 'volume' : 'mass')}</b>, by another cook’s
          hand {say(found.other.spread.low, found.typed.kind === 'mass' ? 'volume' : 'mass')} to{' '}
          {say(found.other.spread.high, found.typed.kind === 'mass' ? 'volume' : 'mass')}.
          <span class="origin">
            By “{found.other.by.measure}”, {writeMetric(found.other.by.grams, 'mass', settings.decimalComma)}.{' '}
            {describeOrigin(found.other.by.origin)}
          </span>
        </p>
      ) : (
        <Refusal why={found.why} />
      )}
      <MayEdit store={store}>
        <OwnFoods store={store} onKept={(name) => setFood(ownKey(name))} />
      </MayEdit>
    </section>
  );
}

const almonds = '12061';

/** Weigh a cup once: it is remembered as yours. */
function OwnFoods({ store, onKept }: Props & { onKept: (name: string) => void }) {
  const [name, setName] = useState('');
  const [measure, setMeasure] = useState('1 cup');
  const [weight, setWeight] = useState('');
  const [problem, setProblem] = useState<string | null>(null);
  const { ownFoods = [] } = store.document.value;
  const keep = (event: Event) => {
    event.preventDefault();
    const read = readOwnFood(name, measure, weight, store.settings.value);
    setProblem(read.ok ? null : read.why);
    if (!read.ok) return;
    store.takeEdit(keepOwnFood(store.document.value, read.food), `Keep the weight of ${read.food.name}`);
    onKept(read.food.name);
    setName('');
    setWeight('');
  };
  return (
    <details class="settings">
      <summary>Weigh a cup once and keep it</summary>
      <form class="stock" onSubmit={keep}>
        <label>
          Name of the food
          <Typed value={name} onText={setName} />
        </label>
        <label>
          Measure filled
          <Typed value={measure} onText={setMeasure} />
        </label>
        <label>
          It weighs
          <Typed value={weight} onText={setWeight} />
        </label>
        <button type="submit" class="button">
          Keep
        </button>
      </form>
      <Refusal why={problem} />
      <ul>
        {ownFoods.map((food) => (
          <li key={food.name}>
            <bdi>{food.name}</bdi>{' '}
            <button
              type="button"
              class="follow"
              aria-label={`Forget ${food.name}`}
              onClick={() => store.takeEdit(forgetOwnFood(store.document.value, food.name), `Forget ${food.name}`)}
            >
              Forget
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
