import { useState } from 'preact/hooks';
import type { Kitchen } from '../../formula/words/write-row';
import type { ByHand, RecipeLine as Line, RecipeText } from '../../interchange/recipe-text';
import type { WeighedIngredient } from '../../interchange/recipe-weigh';
import type { OptionGroup } from '../sheet/choices';
import './recipe-lines.css';
import { RecipeLine, type Told } from './RecipeLine';

interface Props {
  /** The recipe with what was told by hand in it. */
  readonly read: RecipeText;
  readonly weighed: readonly WeighedIngredient[];
  readonly foods: readonly OptionGroup[];
  readonly kitchen: Kitchen;
  readonly told: readonly ByHand[];
  readonly onTell: (line: number, at: number, change: Told) => void;
  readonly onRewrite: (line: number, old: string, now: string) => void;
}

/** Every line of the text with what it was taken for, its weight, and the means to say that it is something else. */
export function RecipeLines({ read, weighed, foods, kitchen, told, onTell, onRewrite }: Props) {
  const [shown, setShown] = useState<number>(linesAtOnce[0]);
  const entries = inOrder(read, weighed);
  return (
    <div class="recipe-frame">
      <ul class="recipe-lines" aria-label="What was read">
        {entries.slice(0, shown).map(({ line, at, of, one }) => {
          const said = told.find((each) => each.line === line && each.at === at);
          return (
            <RecipeLine
              key={`${line} ${at}`}
              of={of}
              one={one}
              meaning={said?.meaning ?? null}
              amount={said?.amount ?? ''}
              foods={foods}
              kitchen={kitchen}
              onTell={(change) => onTell(line, at, change)}
              onRewrite={(now) => onRewrite(line, of.text, now)}
            />
          );
        })}
      </ul>
      {entries.length > shown && (
        <p>
          <button
            type="button"
            class="button"
            onClick={() => setShown(linesAtOnce.find((more) => more > shown) ?? entries.length)}
          >
            Show more of these {entries.length} lines
          </button>
        </p>
      )}
    </div>
  );
}

interface Entry {
  readonly line: number;
  readonly at: number;
  readonly of: Line;
  /** Null where the line holds no ingredient. */
  readonly one: WeighedIngredient | null;
}

/** Every line that holds something, in its place: an ingredient or more, or what was not taken for one. */
function inOrder({ lines }: RecipeText, weighed: readonly WeighedIngredient[]): readonly Entry[] {
  const byLine = new Map<number, WeighedIngredient[]>();
  for (const one of weighed) byLine.set(one.line, [...(byLine.get(one.line) ?? []), one]);
  return lines.flatMap((of, line): Entry[] => {
    const ingredients = byLine.get(line) ?? [];
    if (ingredients.length > 0) return ingredients.map((one) => ({ line, at: one.at, of, one }));
    return of.kind === 'blank' ? [] : [{ line, at: 0, of, one: null }];
  });
}

/** Every line has the menu of all foods, of which thousands would stall the page; a recipe seldom has as many lines. */
const linesAtOnce = [60, 300, 1000] as const;
