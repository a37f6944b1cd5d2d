import type { Sealed } from '../../../src/formula/models/fizz';
import { henryAt } from '../../../src/formula/models/solubility';

// The sheet has these three as formulas of its terms. Here they are written apart from it, to hold those against.

/** Gas dissolved in water open to the air of the jar, which is all carbon dioxide at 1 atm: mol per m³. */
export function saturationAt(celsius: number): number {
  return henryAt(celsius) * 101325;
}

/** Hexose, g per L, that gives so much gas, mol per m³: 180.156 g give two moles. */
export function sugarFromGas(gas: number): number {
  return (gas * 180.156) / 2000;
}

/** The gas, mol per m³ of liquid, that brings a sealed bottle to a gauge pressure in bar. */
export function gasAtPressure(bar: number, { water, room }: Sealed, celsius: number): number {
  return bar * 1e5 * (henryAt(celsius) * water + room / (8.314462618 * (celsius + 273.15)));
}
