import type { JarId } from '../../reference/jars';
import { isMeasuredRow, type MeasuredRowId, type NumericRowId, type StockId } from '../recipe/order';
import type { Amount, Recipe } from '../recipe/recipe';
import { numericRows } from '../rows/sheet';

/** One change to what is typed; a way out is a few of them, taken together. */
export type Change =
  | { readonly do: 'clear'; readonly row: NumericRowId }
  | (Typing & { readonly do: 'type' })
  | (Amount & { readonly do: 'measure'; readonly row: MeasuredRowId; readonly text: string })
  | { readonly do: 'unmeasure'; readonly row: MeasuredRowId }
  | { readonly do: 'vessel'; readonly vessel: JarId }
  | { readonly do: 'forget'; readonly stock: StockId };

/** A text to type, with the amount it reads as. */
interface Typing extends Amount {
  readonly row: NumericRowId;
  readonly text: string;
  readonly use?: 'onHand';
}

/** The recipe after these changes, in their order: what they would do, before anything is typed. */
export function changeRecipe(recipe: Recipe, changes: readonly Change[]): Recipe {
  return changes.reduce(takeChange, recipe);
}

function takeChange(recipe: Recipe, change: Change): Recipe {
  switch (change.do) {
    case 'clear':
      return letGo(recipe, change.row);
    case 'type': {
      const { row, amount, kind, use } = change;
      const cell = { row, amount, kind, ...(use === undefined ? {} : { use }) };
      const isTyped = recipe.given.some((one) => one.row === row);
      return isTyped
        ? { ...recipe, given: recipe.given.map((one) => (one.row === row ? { ...one, ...cell } : one)) }
        : { ...recipe, given: [...recipe.given, cell] };
    }
    case 'measure': {
      const { row, amount, kind } = change;
      return { ...recipe, measured: { ...recipe.measured, [row]: { kind, amount } } };
    }
    case 'unmeasure':
      return forgetMeasured(recipe, change.row);
    case 'vessel':
      return { ...recipe, vessel: change.vessel };
    case 'forget': {
      const { [change.stock]: _, ...onHand } = recipe.onHand ?? {};
      return { ...recipe, onHand };
    }
  }
}

/** A row that is only measured is cleared of its measurement. */
function letGo(recipe: Recipe, row: NumericRowId): Recipe {
  const cleared = { ...recipe, given: recipe.given.filter((cell) => cell.row !== row) };
  return numericRows[row].typed === 'measured' && isMeasuredRow(row) ? forgetMeasured(cleared, row) : cleared;
}

function forgetMeasured(recipe: Recipe, row: MeasuredRowId): Recipe {
  const { [row]: _, ...measured } = recipe.measured;
  return { ...recipe, measured };
}
