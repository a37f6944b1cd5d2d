import { writeNumber } from '../measure/write-quantity';
import { isRow } from './evaluate';
import type { Formulation } from './formulate';
import { type RowId, rowOrder } from './order';
import { numericRows } from './sheet';
import { type Kitchen, writeAmount, writeValue } from './write-row';

/** The rows in which these batches are not all alike, by value or by having one at all. */
export function rowsThatDiffer(formulations: readonly Formulation[]): ReadonlySet<RowId> {
  const [first, ...rest] = formulations;
  if (first === undefined) return new Set();
  return new Set(rowOrder.filter((id) => rest.some((other) => !isAlike(first.rows[id].value, other.rows[id].value))));
}

function isAlike(a: number | string | null, b: number | string | null): boolean {
  if (typeof a !== 'number' || typeof b !== 'number') return a === b;
  const slack = 1e-9; // tolerance
  return Math.abs(a - b) <= slack * Math.max(Math.abs(a), Math.abs(b));
}

/**
 * How far a batch's value is from another's: the difference in the row's unit and in per cent of the other, with its
 * sign. Null for a choice, where either has no number, and where they are alike.
 */
export function compareRow(id: RowId, batch: Formulation, other: Formulation, kitchen: Kitchen): string | null {
  const value = batch.rows[id].value;
  const base = other.rows[id].value;
  if (!isRow(id) || typeof value !== 'number' || typeof base !== 'number' || isAlike(value, base)) return null;
  const difference = value - base;
  const sign = difference < 0 ? '−' : '+';
  const { metric, us } =
    numericRows[id].kind === 'temperature'
      ? writeValue(Math.abs(difference), 'temperatureDifference', null, kitchen)
      : writeAmount(batch, id, Math.abs(difference), kitchen);
  const size = kitchen.leads === 'us' && us !== null ? us : metric;
  if (base === 0) return `${sign}${size}`;
  const share = Math.abs(100 * (difference / base));
  return `${sign}${size}, ${sign}${writeNumber(share, share < 1 ? 1 : 0, kitchen.decimalComma)}\u00A0%`;
}
