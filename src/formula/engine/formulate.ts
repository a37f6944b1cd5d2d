import { settledFor } from '../composition/settled';
import type { Recipe } from '../recipe/recipe';
import { numericRows } from '../rows/sheet';
import { evaluate } from './evaluate';
import { ChoiceResult, everyRow, type Formulation } from './formulation';
import { isTypable } from './givens';
import { evaluateMeasured, isMeasured } from './measured';
import { notesFor } from './row-notes';
import { NumericResult } from './row-result';
import { planFor } from './size';
import { rowSlots } from './slots';
import { isRow } from './ways-of';
import { withoutNumbers } from './without-numbers';

export type { Formulation, RowResult } from './formulation';

/**
 * Works out a whole batch. Pure: the same recipe gives the same result. Never throws: what can't be worked out carries a
 * problem that names its root, and should a rule fail all the same, that batch alone has no number. Formulas: each
 * row's own definition under `rows/`.
 */
export function formulate(recipe: Recipe): Formulation {
  try {
    return workOut(recipe);
  } catch {
    return withoutNumbers(recipe);
  }
}

function workOut(recipe: Recipe): Formulation {
  const settled = settledFor(recipe);
  const given = recipe.given.filter(({ row }) => isTypable(numericRows[row]));
  const plan = planFor(given, {
    takesWater: settled.takesWater,
    sweetens: settled.fermentable.value > 0,
    stays: settled.choices.grain.starter !== undefined,
  });
  const planned = evaluate(settled, recipe, plan);
  const actual = isMeasured(recipe) ? evaluateMeasured(recipe, plan, planned) : planned;
  // Every row, so that each problem is known before the first is told, and a rule that fails does so here.
  for (let slot = 0; slot < rowSlots; slot += 1) {
    planned.at(slot);
    actual.at(slot);
  }
  const rows = everyRow((id) =>
    isRow(id)
      ? new NumericResult(id, numericRows[id], planned, actual)
      : new ChoiceResult(id, recipe, () => notesFor(id, actual)),
  );
  const { sizedFrom } = plan;
  const { choices } = settled;
  return { recipe, choices, rows, sizedFrom, of: (id) => actual.of(id), evaluation: actual, failed: false };
}
