import { measureInScoops } from '../measure/scoops';
import { isRow } from './evaluate';
import type { Formulation } from './formulate';
import { rowWeight } from './givens';
import { onScale } from './on-scale';
import type { NumericRowId } from './order';
import { numericRows } from './sheet';
import type { Kitchen } from './write-row';

/** What is measured out by hand, and so is only as right as the kit. */
const measuredOut: readonly NumericRowId[] = ['sourceMass', 'blendWater', 'sweetenerMass', 'grainMass'];

export interface KitError {
  readonly row: NumericRowId;
  /** As a share of the amount, without its sign. */
  readonly error: number;
}

/**
 * The worst that this kit does to the batch's ratios: by the scale where metric leads, by level scoops where US measure
 * does. Null where nothing is measured out, or where metric leads and no scale was named.
 */
export function worstError(formulation: Formulation, kitchen: Kitchen): KitError | null {
  const errors = measuredOut
    .map((row) => ({ row, error: errorOf(row, formulation, kitchen) }))
    .filter((one): one is KitError => one.error !== null);
  return errors.reduce<KitError | null>(
    (worst, one) => (worst === null || one.error > worst.error ? one : worst),
    null,
  );
}

function errorOf(id: NumericRowId, formulation: Formulation, kitchen: Kitchen): number | null {
  const { value } = formulation.rows[id];
  if (!isRow(id) || typeof value !== 'number' || value <= 0) return null;
  const row = numericRows[id];
  if (kitchen.leads === 'metric') {
    if (kitchen.scale === undefined || row.kind !== 'mass') return null;
    return Math.abs(onScale(value, kitchen.scale) - value) / value;
  }
  const weight = row.kind === 'mass' ? rowWeight(formulation.evaluation, row) : 1;
  if (weight === null) return null;
  const scooped = measureInScoops(value / weight, kitchen.scoops, kitchen.cups);
  return scooped.parts.length === 0 ? null : Math.abs(scooped.error);
}
