import type { Kind } from '../../measure/units';

const volume = ['mL', 'L', 'cup', 'tbsp', 'tsp', 'fl oz', 'qt'] as const;

/** The units of each kind as keys at the thumb, the usual ones first. */
export const unitKeys: Readonly<Record<Kind, readonly string[]>> = {
  mass: ['g', 'cup', 'tbsp', 'tsp', 'oz', 'lb'],
  volume,
  length: ['cm', 'in'],
  temperature: ['°C', '°F'],
  temperatureDifference: ['°C', '°F'],
  time: ['h', 'min', 'days'],
  pressure: ['bar', 'psi'],
  count: [],
  ratio: [],
  share: ['%'],
  concentration: ['g/L'],
  acidity: [],
};

export const fractionKeys = ['½', '⅓', '⅔', '¼', '¾', '⅛'] as const;

/** The pad of a phone that a kind is typed with. */
export function keypadFor(kind: Kind): 'decimal' | 'numeric' {
  return kind === 'count' ? 'numeric' : 'decimal';
}
