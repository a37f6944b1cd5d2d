import { physics, waterDensity } from '../../../reference/physics';
import { waterDensityAt } from '../../models/density';
import { entry, type Figure, ofTable, workedOut } from '../figure';
import { perPower, powersOf } from './powers';

/**
 * Density of plain water, kg/m³, at so many °C: a quantity named `warmth` in its formula, which `parts` has where it is
 * none of the sheet's.
 */
export function plainWater(celsius: number, warmth: string, parts: Readonly<Record<string, Figure>> = {}): Figure {
  const { numerator, denominator, unit, origin } = waterDensity;
  const terms = numerator.map((value, at): readonly [string, Figure] => {
    return [
      `n${at}`,
      entry(`k${at}`, `Coefficient ${at} of the density of water`, value, perPower(unit, '/', '°C', at), origin),
    ];
  });
  const powers = powersOf(warmth, terms.length);
  const sum = terms.map(([name], at) => (at === 0 ? `{${name}}` : `{${name}} × ${powers[at] ?? ''}`)).join(' + ');
  return workedOut('ρ_K', 'Density of water at that temperature', 'kg/m³', waterDensityAt(celsius), {
    words: 'By the formula of the table.',
    formula: `(${sum}) ÷ (1 + {below} × {${warmth}})`,
    parts: {
      ...Object.fromEntries(terms),
      below: entry('k', 'Coefficient below the line', denominator, '/°C', origin),
      ...parts,
    },
  });
}

/** The same at the temperature volumes are read at. */
export function waterInKitchen(): Figure {
  const { densityTemperature } = physics;
  return plainWater(densityTemperature.value, 'temperature', {
    temperature: ofTable('T₂₀', 'Temperature volumes are read at', densityTemperature),
  });
}
