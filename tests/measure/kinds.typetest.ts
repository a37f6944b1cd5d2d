import { convert } from '../../src/measure/units';

// What must compile.
export const cups = convert(1, 'L', 'cup');

// @ts-expect-error a mass is not said in millilitres
convert(1, 'g', 'mL');
// @ts-expect-error a temperature is not a difference of temperature
convert(1, '°C', 'Δ°F');
// @ts-expect-error a unit that is not in the table
convert(1, 'stone', 'g');
