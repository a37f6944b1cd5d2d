import { isRow } from '../engine/evaluate';
import type { Formulation } from '../engine/formulate';
import { type NumericRowId, type RowId, rowOrder } from '../recipe/order';
import { type Kitchen, writeNumeric } from './write-row';

/** The rows in which these batches are not all alike: what this cook reads of one differs, or one has none of it at all. */
export function rowsThatDiffer(formulations: readonly Formulation[], kitchen: Kitchen): ReadonlySet<RowId> {
  const [first, ...rest] = formulations;
  if (first === undefined) return new Set();
  return new Set(rowOrder.filter((id) => rest.some((other) => !isAlike(id, first, other, kitchen))));
}

/** What is written alike is alike: 136.2 g and 136.4 g are one on any scale that 136 g is read from. */
export function isAlike(id: RowId, one: Formulation, other: Formulation, kitchen: Kitchen): boolean {
  const [a, b] = [one.rows[id].value, other.rows[id].value];
  if (a === b || !isRow(id) || typeof a !== 'number' || typeof b !== 'number') return a === b;
  return writeLeading(id, one, a, kitchen) === writeLeading(id, other, b, kitchen);
}

function writeLeading(id: NumericRowId, formulation: Formulation, value: number, kitchen: Kitchen): string {
  const { metric, us } = writeNumeric(formulation, id, value, kitchen);
  return kitchen.leads === 'us' ? (us ?? metric) : metric;
}
