import { chooseFrom } from './coefficients';
import { Evaluation, isRow } from './evaluate';
import { choiceResult, everyRow, type Formulation, nothing } from './formulation';
import { intermediateIds, rowOrder } from './order';
import type { Problem } from './problem';
import type { Recipe } from './recipe';
import type { TermId } from './row';
import { numericRows } from './sheet';
import { planBatch } from './size';

/** A batch of which nothing can be told but its choices: every term is NaN, and every row waits for the first. */
export function withoutNumbers(recipe: Recipe): Formulation {
  const plan = planBatch([], { takesWater: true, sweetens: true });
  const terms: readonly TermId[] = [...rowOrder.filter(isRow), ...intermediateIds];
  const bare: Recipe = { ...recipe, given: [], measured: {}, yours: {}, onHand: {} };
  const values = new Map(terms.map((id) => [id, Number.NaN]));
  const x = new Evaluation(bare, plan, { values, coefficients: new Map() });
  const why: Problem = { code: 'notWorkedOut', at: 'vessel' };
  const rows = everyRow((id) => {
    if (!isRow(id)) return choiceResult(id, recipe, id === why.at ? [why] : []);
    const waits: Problem = { code: 'waits', at: id, for: why.at };
    return { id, kind: numericRows[id].kind, value: null, status: 'refused', problems: [waits], ...nothing };
  });
  return {
    ...{ recipe, choices: chooseFrom(recipe), rows, sizedFrom: 'jar' },
    ...{ of: (id) => x.of(id), evaluation: x, failed: true },
  };
}
