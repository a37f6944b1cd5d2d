import { Settled } from '../composition/settled';
import type { Problem } from '../recipe/problem';
import type { Recipe } from '../recipe/recipe';
import { numericRows } from '../rows/sheet';
import { evaluate } from './evaluate';
import { ChoiceResult, everyRow, type Formulation, nothing } from './formulation';
import { planBatch } from './size';
import { termIds } from './slots';
import { isRow } from './ways-of';

/** A batch of which nothing can be told but its choices: every term is NaN, and every row waits for the first. */
export function withoutNumbers(recipe: Recipe): Formulation {
  const plan = planBatch([], { takesWater: true, sweetens: true, stays: false });
  const bare: Recipe = { ...recipe, given: [], measured: {}, yours: {}, onHand: {} };
  const values = new Map(termIds.map((id) => [id, Number.NaN]));
  const settled = new Settled(bare, new Map());
  const x = evaluate(settled, bare, plan, { values, coefficients: new Map() });
  const why: Problem = { code: 'notWorkedOut', at: 'vessel' };
  const rows = everyRow((id) => {
    if (!isRow(id)) return new ChoiceResult(id, recipe, () => (id === why.at ? [why] : []));
    const waits: Problem = { code: 'waits', at: id, for: why.at };
    return { id, kind: numericRows[id].kind, value: null, status: 'refused', problems: [waits], ...nothing };
  });
  return {
    recipe,
    choices: settled.choices,
    rows,
    sizedFrom: 'jar',
    of: (id) => x.of(id),
    evaluation: x,
    failed: true,
  };
}
