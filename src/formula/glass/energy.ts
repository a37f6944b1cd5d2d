import { energy } from '../../reference/energy';

/** What gives energy, g. */
export interface Burnt {
  readonly protein: number;
  readonly fat: number;
  /** Sugars and fibre included, as by difference. */
  readonly carbohydrate: number;
  readonly alcohol: number;
  readonly acid: number;
}

/** Energy of so much of each, kcal. Source: one factor for each, in `reference/energy`. */
export function energyOf({ protein, fat, carbohydrate, alcohol, acid }: Burnt): number {
  const { proteinEnergy, fatEnergy, carbohydrateEnergy, alcoholEnergy, acidEnergy } = energy;
  return (
    protein * proteinEnergy.value +
    fat * fatEnergy.value +
    carbohydrate * carbohydrateEnergy.value +
    alcohol * alcoholEnergy.value +
    acid * acidEnergy.value
  );
}

/** kcal in kJ. */
export function inKilojoules(kilocalories: number): number {
  return kilocalories * energy.kilojoules.value;
}
