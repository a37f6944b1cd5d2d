import { rounding } from '../../measure/nearly';
import type { Formulation } from '../engine/formulate';
import { type CoefficientId, coefficientInEffect, coefficientKey } from '../recipe/coefficients';
import type { MeasuredRowId } from '../recipe/order';
import { coefficientNames } from '../words/coefficient-names';

/** A figure of the cook's own that a measurement has brought to light, in the coefficient's unit. */
export interface Found {
  readonly key: string;
  readonly label: string;
  readonly value: number;
}

/** What each measurement can correct, the likeliest first. */
const corrects: Readonly<Partial<Record<MeasuredRowId, readonly CoefficientId[]>>> = {
  soakedMass: ['uptake'],
  pulpMass: ['pulpMoisture'],
  milkVolume: ['handlingLoss', 'pulpMoisture'],
};

/**
 * The coefficient that the measurement in this row corrects, to be kept for other batches. Null where nothing was
 * measured, where it corrects nothing, and where the figure in effect is the same. Source: the mass balance, solved in
 * `correct.ts`.
 */
export function findMeasured(row: MeasuredRowId, { recipe, choices, evaluation }: Formulation): Found | null {
  if (recipe.measured[row] === undefined) return null;
  const solved = evaluation.standing.coefficients;
  // A pulp that was hardly pressed says nothing of the next.
  if (solved.has('passing')) return null;
  // Moisture that a weighed pulp has given is that row's to keep.
  const own = (corrects[row] ?? []).filter((id) => row === 'pulpMass' || id !== 'pulpMoisture' || !isWeighed(recipe));
  for (const id of own) {
    const value = solved.get(id);
    if (value === undefined) continue;
    const key = coefficientKey(id, recipe);
    const known = [coefficientInEffect(id, recipe, choices).value, recipe.yours[key]?.value ?? Number.NaN];
    if (known.some((figure) => Math.abs(value - figure) <= rounding)) return null;
    return { key, label: coefficientNames[id].label, value };
  }
  return null;
}

function isWeighed({ measured }: Formulation['recipe']): boolean {
  return measured.pulpMass !== undefined;
}
