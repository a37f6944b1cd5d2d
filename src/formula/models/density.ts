import { type Component, componentDensities, physics, waterDensity } from '../../reference/physics';

const components: readonly Component[] = ['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash'];
const kitchenTemperature = physics.densityTemperature.value;

/** Grams of each component; they need not add up to anything. */
export type Parts = Readonly<Partial<Record<Component, number>>>;

/**
 * Specific volume of one food component, mL per g.
 * Range −40 to 150 °C (water 0 to 150 °C); outside it the polynomial still answers, but nobody has checked it.
 * Source: Choi & Okos 1986, component densities; the page always asks at 20 °C.
 */
export function specificVolume(component: Component, celsius: number = kitchenTemperature): number {
  let density = 0;
  let power = 1;
  for (const coefficient of componentDensities[component].coefficients) {
    density += coefficient * power;
    power *= celsius;
  }
  return 1000 / density;
}

/**
 * Volume of a mixture from its parts, mL: 1/ρ = Σ xᵢ/ρᵢ with no pores, so the volumes of the parts add.
 * Source: Choi & Okos 1986. Sugar solutions come out 0.3 to 0.5 % light, water 0.25 %; the page says so.
 */
export function volumeOf(parts: Parts, celsius: number = kitchenTemperature): number {
  return components.reduce((sum, part) => sum + (parts[part] ?? 0) * specificVolume(part, celsius), 0);
}

/** Density of a mixture, g/mL. The parts must hold some mass; an empty mixture gives 1. Source: Choi & Okos 1986. */
export function densityOf(parts: Parts, celsius: number = kitchenTemperature): number {
  const mass = components.reduce((sum, part) => sum + (parts[part] ?? 0), 0);
  return mass > 0 ? mass / volumeOf(parts, celsius) : 1;
}

/**
 * Density of plain water, kg/m³, from 0 to 100 °C (ITS-90) at 1 atm; at kitchen temperature unless told otherwise. Not
 * that of the water in a mixture, which is Choi's and Okos's. Source: Kell, on ITS-90.
 */
export function waterDensityAt(celsius: number = kitchenTemperature): number {
  const numerator = waterDensity.numerator.reduceRight((sum, coefficient) => sum * celsius + coefficient, 0);
  return numerator / (1 + waterDensity.denominator * celsius);
}
