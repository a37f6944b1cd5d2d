import type { FoodKey } from '../formula/food-keys';
import { foodOf } from './recipe-reading/guess-food';
import { readLine } from './recipe-reading/read-line';
import type { Habits, ReadIngredient, RecipeLine, RecipeText } from './recipe-reading/shape';

export { describeRecipeProblem } from './recipe-reading/problem-words';
export type { FoodGuess, Habits, JarHint, ReadIngredient, RecipeLine, RecipeText } from './recipe-reading/shape';

export const mostCharacters = 200_000;
export const mostLines = 2000;

/** The text with every line end written as one line feed. */
export function normaliseLines(text: string): string {
  return text.replace(/\r\n?/g, '\n');
}

/**
 * Reads a pasted recipe line by line. Every line is kept as it was, so the lines joined are the normalised text again;
 * what lies beyond the limits is one last line, unread. Any text at all can be given; nothing throws.
 */
export function readRecipe(text: string, habits: Habits): RecipeText {
  const lines: RecipeLine[] = [];
  const whole = normaliseLines(text);
  let first = true;
  for (let from = 0; from <= whole.length; ) {
    const end = whole.indexOf('\n', from);
    const to = end < 0 ? whole.length : end;
    if (lines.length === mostLines || to > mostCharacters) {
      lines.push(keepRest(whole.slice(from)));
      break;
    }
    const line = readLine(whole.slice(from, to), first, habits);
    lines.push(line);
    if (line.kind !== 'blank') first = false;
    from = to + 1;
  }
  return { lines };
}

function keepRest(text: string): RecipeLine {
  const why = { code: 'beyondLimit', lines: mostLines, characters: mostCharacters } as const;
  return { text, kind: 'unread', ingredients: [], jar: null, why };
}

/** The same recipe with one ingredient taken for another food, as the cook corrects it; unchanged for what is no food. */
export function chooseFood(read: RecipeText, line: number, at: number, key: FoodKey, habits: Habits): RecipeText {
  const change = (ingredient: ReadIngredient): ReadIngredient => {
    const food = foodOf(key, ingredient.food?.form ?? null, habits.ownFoods);
    if (food === null) return ingredient;
    const problem = ingredient.problem?.code === 'unknownFood' ? null : ingredient.problem;
    return {
      ...ingredient,
      food: { ...food, soaking: ingredient.food?.soaking === true && food.role === 'water' },
      problem,
    };
  };
  return {
    lines: read.lines.map((each, index) =>
      index === line
        ? {
            ...each,
            ingredients: each.ingredients.map((ingredient, place) => (place === at ? change(ingredient) : ingredient)),
          }
        : each,
    ),
  };
}
