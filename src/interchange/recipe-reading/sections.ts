import type { FoodGuess, ReadIngredient, RecipeLine } from './shape';
import { isNutrition } from './turned-line';

const forLater = /\b(?:second|2nd|bottl\w*|serv\w*|topp\w*|garnish\w*|optional\w*|flavou?r\w*|variations?)\b/i;

/**
 * The lines seen together. What stands under a heading for later, or in a table of nutrients, is no part of the milk; and
 * where a list gives a food, a sentence that names an amount of it says the same again and is not counted twice.
 */
export function settleLines(lines: readonly RecipeLine[]): readonly RecipeLine[] {
  return leaveRepeats(setAside(lines));
}

function setAside(lines: readonly RecipeLine[]): readonly RecipeLine[] {
  let later = false;
  let nutrients = false;
  // A recipe’s own name may speak of bottles or flavours.
  const title = lines.findIndex(({ kind }) => kind !== 'blank');
  return lines.map((line, place) => {
    const { kind, text, ingredients } = line;
    if (kind === 'blank') nutrients = false;
    if (kind === 'heading') later = place !== title && forLater.test(text);
    if (kind === 'heading' || kind === 'method' || kind === 'unread') nutrients = isNutrition(text);
    if (kind !== 'ingredient') return line;
    if (nutrients && ingredients.every(({ kind: measure, text: said }) => measure === 'mass' && /^\D/.test(said)))
      return { ...line, kind: 'method', ingredients: [] };
    const begins = line.prose && forLater.test(text.slice(0, text.indexOf(':') + 1));
    if (!later && !begins) return line;
    return { ...line, ingredients: ingredients.map((ingredient) => ({ ...ingredient, aside: true })) };
  });
}

function leaveRepeats(lines: readonly RecipeLine[]): readonly RecipeLine[] {
  const listed = lines.filter(({ prose }) => !prose).flatMap(({ ingredients }) => ingredients);
  const weighed = listed.filter(({ amount }) => amount !== null);
  if (weighed.length === 0) return lines;
  return lines.map((line, place) => {
    if (!line.prose) return line;
    const kept = line.ingredients.filter((ingredient) => !weighed.some((one) => saysAgain(ingredient, one)));
    if (kept.length === line.ingredients.length) return line;
    const again = line.ingredients.filter((one) => !kept.includes(one)).map(({ text }) => text);
    const kind = kept.length > 0 ? 'ingredient' : place === 0 ? 'heading' : 'method';
    return { ...line, kind, ingredients: kept, again };
  });
}

function saysAgain({ food, aside }: ReadIngredient, listed: ReadIngredient): boolean {
  const other = listed.food;
  if (food === null || other === null || aside !== listed.aside) return false;
  if (food.role === 'water' && other.role === 'water') return food.soaking === other.soaking;
  if (food.role === 'grains' && other.role === 'grains') return true;
  if (food.key !== null || other.key !== null) return food.key === other.key;
  return sharesName(food, other);
}

function sharesName(food: FoodGuess, other: FoodGuess): boolean {
  const words = other.name.toLowerCase().split(' ');
  return food.name
    .toLowerCase()
    .split(' ')
    .some((word) => words.includes(word));
}
