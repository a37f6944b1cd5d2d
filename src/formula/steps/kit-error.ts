import { isRow } from '../engine/evaluate';
import type { Formulation } from '../engine/formulate';
import { rowWeight } from '../engine/givens';
import type { NumericRowId } from '../recipe/order';
import { numericRows } from '../rows/sheet';
import { doScoopsDo, inScoops } from '../words/in-scoops';
import { onScale } from '../words/on-scale';
import type { Kitchen } from '../words/write-row';

/** The ratios of a batch, by the amounts that are measured out for them; each is only as right as the kit. */
const ratios: readonly (readonly [of: NumericRowId, to: NumericRowId])[] = [
  ['sourceMass', 'blendWater'],
  ['sweetenerMass', 'blendWater'],
  ['grainMass', 'blendWater'],
  ['sweetenerMass', 'sourceMass'],
  ['grainMass', 'sourceMass'],
];

export interface KitError {
  /** The two amounts of the ratio that suffers most. */
  readonly row: NumericRowId;
  readonly to: NumericRowId;
  /** As a share of the ratio, without its sign. */
  readonly error: number;
}

/**
 * The worst that this kit does to the batch's ratios: by the scale where metric leads, by level scoops where US measure
 * does. Null where nothing is measured out, or where metric leads and no scale was named.
 */
export function worstError(formulation: Formulation, kitchen: Kitchen): KitError | null {
  let worst: KitError | null = null;
  for (const [row, to] of ratios) {
    const [above, below] = [errorOf(row, formulation, kitchen), errorOf(to, formulation, kitchen)];
    if (above === null && below === null) continue;
    const error = Math.abs((1 + (above ?? 0)) / (1 + (below ?? 0)) - 1);
    if (worst === null || error > worst.error) worst = { row, to, error };
  }
  return worst;
}

/** How far an amount comes out by this kit, as a signed share of it; null where the kit says nothing of it. */
function errorOf(id: NumericRowId, formulation: Formulation, kitchen: Kitchen): number | null {
  const { value } = formulation.rows[id];
  if (!isRow(id) || typeof value !== 'number' || value <= 0) return null;
  const row = numericRows[id];
  if (kitchen.leads === 'metric') {
    if (kitchen.scale === undefined || row.kind !== 'mass') return null;
    return (onScale(value, kitchen.scale) - value) / value;
  }
  const weight = row.kind === 'mass' ? rowWeight(formulation.evaluation, row) : 1;
  if (weight === null) return null;
  const scooped = inScoops(value / weight, kitchen);
  return scooped.parts.length === 0 || (row.kind === 'mass' && !doScoopsDo(scooped)) ? null : scooped.error;
}
