import * as bottle from './bottle';
import * as culture from './culture';
import * as ferment from './ferment';
import * as jar from './jar';
import * as keep from './keep';
import * as milk from './milk';
import * as ripen from './ripen';
import type { ChoiceRows, NumericRows } from './row';

/** Every numeric row of the sheet by its id; the order of the work is in `order.ts`. */
export const numericRows: NumericRows = {
  ...jar,
  ...milk,
  ...culture,
  ...ripen,
  ...ferment,
  ...bottle,
  ...keep,
};

export const choiceRows: ChoiceRows = {
  vessel: { label: 'Kind of jar' },
  source: { label: 'Nut, seed or coconut' },
  sweetener: { label: 'Kind of sweetener' },
  grains: { label: 'Kind of culture' },
};
