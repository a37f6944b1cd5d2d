import type { volumeUnits } from './volume-units';

/** The measures whose plain word means something else from kitchen to kitchen. */
export type KitchenMeasure = 'cup' | 'tbsp' | 'tsp' | 'flOz';

type CupStandard = { readonly id: string; readonly name: string } & {
  readonly [M in KitchenMeasure]: keyof typeof volumeUnits;
};

/** What a plain "cup", "tbsp", "tsp" and "fl oz" mean, by the standard the cook has chosen. */
export const cupStandards = {
  us: { id: 'us', name: 'US cup, 236.6 mL', cup: 'cup', tbsp: 'tbsp', tsp: 'tsp', flOz: 'flOz' },
  'us-label': {
    id: 'us-label',
    name: 'US label cup, 240 mL',
    cup: 'labelCup',
    tbsp: 'labelTbsp',
    tsp: 'labelTsp',
    flOz: 'labelFlOz',
  },
  // No metric fluid ounce is in use; the word then means the US customary one.
  metric: {
    id: 'metric',
    name: 'Metric cup, 250 mL, with a 15 mL tablespoon',
    cup: 'metricCup',
    tbsp: 'metricTbsp',
    tsp: 'metricTsp',
    flOz: 'flOz',
  },
  'metric-20': {
    id: 'metric-20',
    name: 'Metric cup, 250 mL, with a 20 mL tablespoon',
    cup: 'metricCup',
    tbsp: 'australianTbsp',
    tsp: 'metricTsp',
    flOz: 'flOz',
  },
} as const satisfies Record<string, CupStandard>;

export type CupStandardId = keyof typeof cupStandards;
