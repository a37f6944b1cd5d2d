import { convertNumber } from '../../measure/units';
import { carrollHenry } from '../../reference/fermenting';
import { molarMasses, physics } from '../../reference/physics';
import { waterDensityAt } from './density';

export const pascalPerBar = convertNumber(1, 'bar', 'Pa');

/**
 * Solubility of carbon dioxide in water, mol per m³ and Pa, from 0 to 160 °C and to 1 MPa.
 * Source: Carroll, Slupsky and Mather 1991, turned from mole fractions by the density of water.
 */
export function henryAt(celsius: number): number {
  const kelvin = celsius + physics.zeroCelsius.value;
  const logarithm = carrollHenry.coefficients.reduceRight((sum, coefficient) => sum / kelvin + coefficient, 0);
  const pascal = 1000 * 1000 * Math.exp(logarithm);
  return (1000 * waterDensityAt(celsius)) / (molarMasses.water.value * pascal);
}
