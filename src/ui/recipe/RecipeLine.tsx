import { useState } from 'preact/hooks';
import { leading } from '../../formula/words/leading';
import { describeCoefficient, describeOrigin } from '../../formula/words/origin-words';
import { type Kitchen, writeValue } from '../../formula/words/write-row';
import { describeRecipeProblem, type RecipeLine as Line, type Meaning } from '../../interchange/recipe-text';
import type { WeighedIngredient } from '../../interchange/recipe-weigh';
import { writeMetric } from '../../measure/write-quantity';
import type { OptionGroup } from '../sheet/choices';
import { MenuOptions } from '../sheet/MenuOptions';

/** What the cook says of a line: the food or other meaning by its key, "" for as it was read, or the amount as typed. */
export type Told = { readonly meaning: string } | { readonly amount: string };

interface Props {
  readonly of: Line;
  /** Null where the line holds no ingredient. */
  readonly one: WeighedIngredient | null;
  readonly meaning: Meaning | null;
  readonly amount: string;
  readonly foods: readonly OptionGroup[];
  readonly kitchen: Kitchen;
  readonly onTell: (told: Told) => void;
  /** Writes the line anew in the text. */
  readonly onRewrite: (line: string) => void;
}

const others = {
  label: 'Not weighed in the batch',
  options: [
    { value: 'none', label: 'Not an ingredient' },
    { value: 'jar', label: 'The jar' },
    { value: 'soaking', label: 'Water to soak in, poured away' },
    { value: 'extra', label: 'Something else, to remember' },
  ] satisfies readonly { value: Meaning; label: string }[],
};

/** One ingredient, or one line without any: its text, its food and its weight; folded, how it was measured. */
export function RecipeLine({ of, one, meaning, amount, foods, kitchen, onTell, onRewrite }: Props) {
  const text = (one === null ? of.text : one.ingredient.text).trim();
  const food = one?.ingredient.food ?? null;
  const counts = one !== null && !one.ingredient.dismissed;
  const { decimalComma } = kitchen;
  return (
    <li class={counts ? 'recipe-line' : 'recipe-line unread'}>
      <b class="as-written">{text}</b>
      <span class="taken-for">
        <select
          aria-label={`Food of ${text}`}
          value={chosen(one, meaning)}
          onChange={(event) => onTell({ meaning: event.currentTarget.value })}
        >
          {counts && food?.key == null && meaning !== 'extra' && <option value="">{food?.name || 'not named'}</option>}
          <MenuOptions groups={[others, ...foods]} />
        </select>
        {counts && food !== null && food.form !== null && <span class="second">{food.form}</span>}
        {counts && food?.sure === false && food.key !== null && (
          <span class="second">a guess: correct it if it is wrong</span>
        )}
      </span>
      {counts && (
        <span class="weighs">{one.grams !== null && <Range spread={one.grams} kind="mass" kitchen={kitchen} />}</span>
      )}
      {!counts && <span class="why">{meaning === 'none' ? 'Not counted.' : whyNot(of, decimalComma)}</span>}
      {of.why?.code === 'eitherNumber' && (
        <span class="why ways-out">
          {of.why.readings.map(({ number, line }) => (
            <button
              type="button"
              class="way-out"
              key={number}
              aria-label={`Make it ${number} in “${text}”`}
              onClick={() => onRewrite(line)}
            >
              Make it {number}
            </button>
          ))}
        </span>
      )}
      {counts && one.problem !== null && (
        <span class="why care">{describeRecipeProblem(one.problem, decimalComma)}</span>
      )}
      {counts && one.disagreement !== null && (
        <span class="why">
          The text says {writeMetric(one.disagreement.stated, 'mass', decimalComma)}, the published cup makes it{' '}
          {writeMetric(one.disagreement.published.likely, 'mass', decimalComma)}:{' '}
          {percent(one.disagreement.share, true)}.
        </span>
      )}
      {(counts || meaning === 'jar') && (
        <Measured text={text} one={one} amount={amount} kitchen={kitchen} onTell={onTell} />
      )}
    </li>
  );
}

function chosen(one: WeighedIngredient | null, meaning: Meaning | null): string {
  if (meaning !== null) return meaning;
  if (one === null) return 'none';
  const { food } = one.ingredient;
  return food?.soaking ? 'soaking' : (food?.key ?? '');
}

/** Why a line counts for nothing, in a sentence. */
function whyNot({ jar, why, again }: Line, decimalComma: boolean): string {
  if (why !== null) return describeRecipeProblem(why, decimalComma);
  if (jar !== null) {
    const volume = writeMetric(jar.volume, 'volume', decimalComma);
    return jar.what === 'jar' ? `A jar of ${volume}.` : `What it makes: ${volume}.`;
  }
  return again.length > 0 ? `Said again, and counted once: ${again.join('; ')}.` : 'Not an ingredient.';
}

type MeasuredProps = Pick<Props, 'one' | 'amount' | 'kitchen' | 'onTell'> & { readonly text: string };

/** The amount, to be typed anew; the measure; the error to expect, and where the weight is from. */
function Measured({ text, one, amount, kitchen, onTell }: MeasuredProps) {
  // Where it starts without a weight the amount is what is wanted. It stays as it began, or typing would fold it away.
  const [unfolded] = useState(one === null || one.problem !== null || one.ingredient.dismissed);
  const { error = null, by = null, millilitres = null } = one ?? {};
  return (
    <details class="measured" open={unfolded}>
      <summary>
        Measure and error<span class="unseen"> of {text}</span>
      </summary>
      <p>
        <label>
          Amount, if it is another{' '}
          <input
            aria-label={`Amount of ${text}`}
            value={amount}
            autocomplete="off"
            placeholder="as written"
            onInput={(event) => onTell({ amount: event.currentTarget.value })}
          />
        </label>
      </p>
      {millilitres !== null && (
        <p>
          Fills <Range spread={millilitres} kind="volume" kitchen={kitchen} />
        </p>
      )}
      {error !== null && (
        <p class="second">
          ± {percent(error.value)}. {describeCoefficient(error)}
        </p>
      )}
      {by !== null && (
        <p class="origin">
          {by.measure}, {writeMetric(by.grams, 'mass', kitchen.decimalComma)}. {describeOrigin(by.origin)}
        </p>
      )}
    </details>
  );
}

interface RangeProps {
  readonly spread: { readonly low: number; readonly likely: number; readonly high: number };
  readonly kind: 'mass' | 'volume';
  readonly kitchen: Kitchen;
}

function Range({ spread, kind, kitchen }: RangeProps) {
  const likely = writeValue(spread.likely, kind, null, kitchen);
  const { first, second } = leading(likely, kitchen.leads);
  const [low, high] = [spread.low, spread.high].map((end) => writeValue(end, kind, null, kitchen).metric);
  return (
    <>
      <b>{first}</b>
      {second !== null && <span class="second"> {second}</span>}
      {low !== high && (
        <span class="second">
          {' '}
          {low} to {high}
        </span>
      )}
    </>
  );
}

function percent(share: number, signed = false): string {
  const signDisplay = signed ? 'exceptZero' : 'auto';
  return new Intl.NumberFormat('en', { style: 'percent', maximumFractionDigits: 0, signDisplay }).format(share);
}
