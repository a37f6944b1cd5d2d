import type { UnitRow } from './unit-row';
import { volumeUnits } from './volume-units';

/** Every unit that can be typed or written, by its id; the words it is typed as are in `unitAliases`. */
export const units = {
  g: { id: 'g', kind: 'mass', symbol: 'g', relation: { base: true } },
  kg: { id: 'kg', kind: 'mass', symbol: 'kg', relation: { times: '1000', of: 'g' } },
  mg: { id: 'mg', kind: 'mass', symbol: 'mg', relation: { part: '1000', of: 'g' } },
  lb: { id: 'lb', kind: 'mass', symbol: 'lb', relation: { times: '453.59237', of: 'g' } },
  oz: { id: 'oz', kind: 'mass', symbol: 'oz', relation: { part: '16', of: 'lb' } },

  ...volumeUnits,

  cm: { id: 'cm', kind: 'length', symbol: 'cm', relation: { base: true } },
  mm: { id: 'mm', kind: 'length', symbol: 'mm', relation: { part: '10', of: 'cm' } },
  in: { id: 'in', kind: 'length', symbol: 'in', relation: { times: '2.54', of: 'cm' } },

  '°C': { id: '°C', kind: 'temperature', symbol: '°C', relation: { base: true } },
  '°F': {
    id: '°F',
    kind: 'temperature',
    symbol: '°F',
    relation: { stepOf: '°C', numerator: '5', denominator: '9', zeroAt: '32' },
  },
  'Δ°C': { id: 'Δ°C', kind: 'temperatureDifference', symbol: '°C', relation: { base: true } },
  'Δ°F': {
    id: 'Δ°F',
    kind: 'temperatureDifference',
    symbol: '°F',
    relation: { stepOf: 'Δ°C', numerator: '5', denominator: '9', zeroAt: '0' },
  },

  h: { id: 'h', kind: 'time', symbol: 'h', relation: { base: true } },
  min: { id: 'min', kind: 'time', symbol: 'min', relation: { part: '60', of: 'h' } },
  s: { id: 's', kind: 'time', symbol: 's', relation: { part: '60', of: 'min' } },
  day: { id: 'day', kind: 'time', symbol: 'd', relation: { times: '24', of: 'h' } },

  bar: { id: 'bar', kind: 'pressure', symbol: 'bar', relation: { base: true } },
  kPa: { id: 'kPa', kind: 'pressure', symbol: 'kPa', relation: { part: '100', of: 'bar' } },
  Pa: { id: 'Pa', kind: 'pressure', symbol: 'Pa', relation: { part: '1000', of: 'kPa' } },
  atm: { id: 'atm', kind: 'pressure', symbol: 'atm', relation: { times: '101325', of: 'Pa' } },
  psi: { id: 'psi', kind: 'pressure', symbol: 'psi', relation: { weightOf: 'lb', onSquareOf: 'in' } },

  'g/g': { id: 'g/g', kind: 'ratio', symbol: 'g/g', relation: { base: true } },
  'g/L': { id: 'g/L', kind: 'concentration', symbol: 'g/L', relation: { base: true } },
  '%': { id: '%', kind: 'share', symbol: '%', relation: { base: true } },
  '': { id: '', kind: 'count', symbol: '', relation: { base: true } },
  pH: { id: 'pH', kind: 'acidity', symbol: 'pH', relation: { base: true } },
} as const satisfies Record<string, UnitRow>;
