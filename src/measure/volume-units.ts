import type { UnitRow } from './unit-row';

/** Every unit of volume. */
export const volumeUnits = {
  mL: { id: 'mL', kind: 'volume', symbol: 'mL', relation: { base: true } },
  cL: { id: 'cL', kind: 'volume', symbol: 'cL', relation: { times: '10', of: 'mL' } },
  dL: { id: 'dL', kind: 'volume', symbol: 'dL', relation: { times: '100', of: 'mL' } },
  L: { id: 'L', kind: 'volume', symbol: 'L', relation: { times: '1000', of: 'mL' } },
  in3: { id: 'in3', kind: 'volume', symbol: 'in³', relation: { cubeOf: 'in' } },
  gal: { id: 'gal', kind: 'volume', symbol: 'gal', relation: { times: '231', of: 'in3' } },
  qt: { id: 'qt', kind: 'volume', symbol: 'qt', relation: { part: '4', of: 'gal' } },
  pt: { id: 'pt', kind: 'volume', symbol: 'pt', relation: { part: '2', of: 'qt' } },
  cup: { id: 'cup', kind: 'volume', symbol: 'cup', relation: { part: '2', of: 'pt' } },
  flOz: { id: 'flOz', kind: 'volume', symbol: 'fl oz', relation: { part: '8', of: 'cup' } },
  tbsp: { id: 'tbsp', kind: 'volume', symbol: 'tbsp', relation: { part: '16', of: 'cup' } },
  tsp: { id: 'tsp', kind: 'volume', symbol: 'tsp', relation: { part: '48', of: 'cup' } },
  labelCup: { id: 'labelCup', kind: 'volume', symbol: 'cup', relation: { times: '240', of: 'mL' } },
  labelFlOz: { id: 'labelFlOz', kind: 'volume', symbol: 'fl oz', relation: { times: '30', of: 'mL' } },
  labelTbsp: { id: 'labelTbsp', kind: 'volume', symbol: 'tbsp', relation: { times: '15', of: 'mL' } },
  labelTsp: { id: 'labelTsp', kind: 'volume', symbol: 'tsp', relation: { times: '5', of: 'mL' } },
  metricCup: { id: 'metricCup', kind: 'volume', symbol: 'cup', relation: { times: '250', of: 'mL' } },
  metricTbsp: { id: 'metricTbsp', kind: 'volume', symbol: 'tbsp', relation: { times: '15', of: 'mL' } },
  metricTsp: { id: 'metricTsp', kind: 'volume', symbol: 'tsp', relation: { times: '5', of: 'mL' } },
  australianTbsp: { id: 'australianTbsp', kind: 'volume', symbol: 'tbsp', relation: { times: '20', of: 'mL' } },
} as const satisfies Record<string, UnitRow>;
