import { useState } from 'preact/hooks';
import type { FoodEntry } from '../../formula/look-up';
import { describeCoefficient, describeOrigin } from '../../formula/origin-words';
import { type Kitchen, writeValue } from '../../formula/write-row';
import { describeRecipeProblem, type RecipeText } from '../../interchange/recipe-text';
import type { WeighedIngredient } from '../../interchange/recipe-weigh';
import { writeMetric } from '../../measure/write-quantity';
import { leading } from '../jar/leading';

interface Props {
  readonly read: RecipeText;
  readonly weighed: readonly WeighedIngredient[];
  readonly foods: readonly FoodEntry[];
  readonly kitchen: Kitchen;
  readonly onFood: (line: number, at: number, key: string) => void;
}

/** What was read of each line: the food it was taken for, its weight and measure, and the error to expect. */
export function RecipeLines({ read, weighed, foods, kitchen, onFood }: Props) {
  const [shown, setShown] = useState<number>(rowsAtOnce[0]);
  const rows = inOrder(read, weighed);
  return (
    <>
      <div class="wide-table">
        <table aria-label="What was read">
          <thead>
            <tr>
              <th scope="col">As written</th>
              <th scope="col">Taken for</th>
              <th scope="col">Weight</th>
              <th scope="col">Measure</th>
              <th scope="col">To expect</th>
            </tr>
          </thead>
          <tbody>
            {rows.slice(0, shown).map((row) =>
              'one' in row ? (
                <Ingredient key={row.key} one={row.one} foods={foods} kitchen={kitchen} onFood={onFood} />
              ) : (
                <tr key={row.key} class="unread">
                  <th scope="row">{row.text}</th>
                  <td colSpan={4}>
                    {row.why === null ? 'Not an ingredient.' : describeRecipeProblem(row.why, kitchen.decimalComma)}
                  </td>
                </tr>
              ),
            )}
          </tbody>
        </table>
      </div>
      {rows.length > shown && (
        <p>
          <button
            type="button"
            class="button"
            onClick={() => setShown(rowsAtOnce.find((more) => more > shown) ?? rows.length)}
          >
            Show more of these {rows.length} lines
          </button>
        </p>
      )}
    </>
  );
}

type Row =
  | { readonly key: string; readonly one: WeighedIngredient }
  | { readonly key: string; readonly text: string; readonly why: RecipeText['lines'][number]['why'] };

/** Every line that holds something, in its place: an ingredient or more, or what was not taken for one. */
function inOrder({ lines }: RecipeText, weighed: readonly WeighedIngredient[]): readonly Row[] {
  const byLine = new Map<number, WeighedIngredient[]>();
  for (const one of weighed) byLine.set(one.line, [...(byLine.get(one.line) ?? []), one]);
  return lines.flatMap(({ text, kind, why }, line): Row[] => {
    const ingredients = byLine.get(line) ?? [];
    if (ingredients.length > 0) return ingredients.map((one) => ({ key: `${line} ${one.at}`, one }));
    return kind === 'blank' ? [] : [{ key: `${line}`, text, why }];
  });
}

/** Every row has the menu of all foods, of which thousands would stall the page; a recipe seldom has as many lines. */
const rowsAtOnce = [60, 300, 1000] as const;

type IngredientProps = Pick<Props, 'foods' | 'kitchen' | 'onFood'> & { readonly one: WeighedIngredient };

function Ingredient({ one, foods, kitchen, onFood }: IngredientProps) {
  const { ingredient, grams, millilitres, by, error, disagreement, problem } = one;
  const { food } = ingredient;
  return (
    <tr>
      <th scope="row">{ingredient.text.trim()}</th>
      <td>
        <select
          aria-label={`Food of ${ingredient.text.trim()}`}
          value={food?.key ?? ''}
          onChange={(event) => onFood(one.line, one.at, event.currentTarget.value)}
        >
          <option value="">{food?.name ?? 'not in the table'}</option>
          {foods.map(({ key, name }) => (
            <option key={key} value={key}>
              {name}
            </option>
          ))}
        </select>
        {food !== null && food.form !== null && <span class="second">{food.form}</span>}
        {food !== null && !food.sure && <span class="second">a guess: correct it if it is wrong</span>}
      </td>
      <td>{grams === null ? '–' : <Range spread={grams} kind="mass" kitchen={kitchen} />}</td>
      <td>{millilitres === null ? '–' : <Range spread={millilitres} kind="volume" kitchen={kitchen} />}</td>
      <td>
        {problem !== null && <span class="care">{describeRecipeProblem(problem, kitchen.decimalComma)}</span>}
        {error !== null && (
          <span class="second">
            ± {percent(error.value)}. {describeCoefficient(error)}
          </span>
        )}
        {by !== null && (
          <span class="origin">
            {by.measure}, {writeMetric(by.grams, 'mass', kitchen.decimalComma)}. {describeOrigin(by.origin)}
          </span>
        )}
        {disagreement !== null && (
          <span class="second">
            The text says {writeMetric(disagreement.stated, 'mass', kitchen.decimalComma)}, the published cup makes it{' '}
            {writeMetric(disagreement.published.likely, 'mass', kitchen.decimalComma)}:{' '}
            {percent(disagreement.share, true)}.
          </span>
        )}
      </td>
    </tr>
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
      {second !== null && <span class="second">{second}</span>}
      {low !== high && (
        <span class="second">
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
