import { writeScoops } from '../../measure/scoops';
import { writeNumber, writeUS } from '../../measure/write-quantity';
import { isRow } from '../engine/evaluate';
import type { Formulation } from '../engine/formulate';
import type { NumericRowId, RowId } from '../recipe/order';
import { numericRows } from '../rows/sheet';
import { isAlike } from './compare';
import { inScoops } from './in-scoops';
import { type Kitchen, writeAmount, writeValue } from './write-row';

/**
 * How far a batch's value is from another's: the difference in the row's unit and in per cent of the other, with its
 * sign. Null for a choice, where either has no number, and where they are alike.
 */
export function compareRow(id: RowId, batch: Formulation, other: Formulation, kitchen: Kitchen): string | null {
  const value = batch.rows[id].value;
  const base = other.rows[id].value;
  if (!isRow(id) || typeof value !== 'number' || typeof base !== 'number' || isAlike(id, batch, other, kitchen))
    return null;
  const difference = value - base;
  const sign = difference < 0 ? '−' : '+';
  const size = writeDifference(batch, id, Math.abs(difference), kitchen);
  if (base === 0) return `${sign}${size}`;
  const share = Math.abs(100 * (difference / base));
  return `${sign}${size}, ${sign}${writeNumber(share, share < 1 ? 1 : 0, kitchen.decimalComma)}\u00A0%`;
}

/** A difference is weighed, or scooped without saying how nearly. */
function writeDifference(batch: Formulation, id: NumericRowId, size: number, kitchen: Kitchen): string {
  const { kind } = numericRows[id];
  const step = kind === 'temperature' ? 'temperatureDifference' : kind;
  if (kitchen.leads === 'us' && kind === 'volume') return writeScoops(inScoops(size, kitchen));
  const us = kitchen.leads === 'us' ? writeUS(size, step, kitchen.decimalComma) : null;
  if (us !== null) return us;
  return kind === 'temperature'
    ? writeValue(size, step, null, kitchen).metric
    : writeAmount(batch, id, size, kitchen).metric;
}
