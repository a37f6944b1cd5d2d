import { answerSwap, type SwapAnswer } from '../formula/advice/swap-answer';
import { listFoods } from '../formula/foods/look-up';
import type { SweetenerPart } from '../formula/recipe/recipe';
import type { SweetenerId } from '../reference/sweeteners';
import { lookUpAmount } from './look-up-amount';
import type { Habits } from './recipe-reading/shape';

export type SwapAmountResult =
  | {
      readonly ok: true;
      /** What was typed, as it was taken: g, or mL of a measure. */
      readonly typed: { readonly kind: 'mass' | 'volume'; readonly amount: number };
      readonly answer: SwapAnswer;
    }
  | { readonly ok: false; readonly why: string };

/**
 * What a typed amount of a sweetener is in others at equal fermentable sugar: "2 tbsp", "30 g"; a bare number is grams. A
 * measure is weighed by the published spoon or cup of that sweetener, with its range.
 */
export function swapAmount(
  text: string,
  from: SweetenerId,
  to: readonly SweetenerPart[],
  habits: Habits,
): SwapAmountResult {
  const food = listFoods().find(({ part }) => part.role === 'sweetener' && part.id === from);
  if (food === undefined) return { ok: false, why: 'Choose a sweetener.' };
  const found = lookUpAmount(text, food.key, null, habits);
  if (!found.ok) return found;
  const { typed, other } = found;
  const grams =
    typed.kind === 'volume' ? other.spread : { low: typed.amount, likely: typed.amount, high: typed.amount };
  const swapped = answerSwap(grams, from, to);
  return swapped.ok ? { ok: true, typed, answer: swapped.answer } : swapped;
}
