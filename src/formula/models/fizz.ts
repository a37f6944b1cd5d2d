import { molarMasses, physics } from '../../reference/physics';
import { henryAt, pascalPerBar } from './solubility';

/** Gas in moles per m³ of liquid from hexose in g per L of it, all of it through yeast: two for each. */
export function gasFromSugar(hexose: number): number {
  return (2 * 1000 * hexose) / molarMasses.hexose.value;
}

/** A sealed bottle: share of its liquid that is water, and its gas space per liquid, both by volume. */
export interface Sealed {
  readonly water: number;
  readonly room: number;
}

/** Room for gas in mol per m³ of liquid and Pa: what dissolves in its water, and what its gas space takes. */
function capacity({ water, room }: Sealed, celsius: number): number {
  const kelvin = celsius + physics.zeroCelsius.value;
  return henryAt(celsius) * water + room / (physics.gasConstant.value * kelvin);
}

/**
 * Gauge pressure, bar, of so much carbon dioxide (mol per m³ of liquid) in a sealed bottle: closed form, air and
 * outside cancelling. Good to about 10 bar.
 */
export function pressureOf(gas: number, sealed: Sealed, celsius: number): number {
  return gas / capacity(sealed, celsius) / pascalPerBar;
}

/**
 * What may fill a sealed bottle of `volume` mL at a gauge pressure in bar, mL, where the liquid brings `gas` mol per m³
 * and what is put into the bottle `added` µmol besides, however full it is. Not above 0 where there is no such fill.
 */
export function fillAtPressure(
  { gas, added, volume }: { readonly gas: number; readonly added: number; readonly volume: number },
  water: number,
  celsius: number,
  bar: number,
): number {
  const pascal = bar * pascalPerBar;
  const perSpace = pascal / (physics.gasConstant.value * (celsius + physics.zeroCelsius.value));
  return (perSpace * volume - added) / (perSpace + gas - pascal * henryAt(celsius) * water);
}

/** How that gas is shared at a gauge pressure, mol per m³ of liquid. */
export function shareGas(bar: number, { water, room }: Sealed, celsius: number) {
  const pascal = bar * pascalPerBar;
  const kelvin = celsius + physics.zeroCelsius.value;
  return {
    dissolved: pascal * henryAt(celsius) * water,
    above: (pascal * room) / (physics.gasConstant.value * kelvin),
  };
}
