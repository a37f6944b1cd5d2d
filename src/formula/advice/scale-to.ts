import type { JarId } from '../../reference/jars';
import { type Formulation, formulate } from '../engine/formulate';
import type { NumericRowId } from '../recipe/order';
import { numericRows } from '../rows/sheet';

/** What makes a recipe whatever its size, and what is kept of what was typed. */
const rates: readonly NumericRowId[] = ['waterRatio', 'sugarRate', 'grainRate'];
const kept: readonly NumericRowId[] = ['headspaceDepth', 'servingSize', 'soakTime'];

/**
 * The same recipe filling one jar of another kind to its headspace: its ratio, sugar and dose stay, every typed amount
 * gives way to them. Exact, since everything grows with the milk.
 */
export function scaleTo({ recipe, rows }: Formulation, vessel: JarId): Formulation {
  const given = rates.flatMap((row) => {
    const { value } = rows[row];
    return typeof value === 'number' ? [{ row, kind: numericRows[row].kind, amount: value }] : [];
  });
  const typed = recipe.given.filter(({ row }) => kept.includes(row));
  return formulate({ ...recipe, vessel, given: [...typed, ...given], measured: {}, onHand: {} });
}
