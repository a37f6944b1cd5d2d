import type { ChoiceRows, NumericRows } from './row';
import * as bottle from './rows/bottle';
import * as culture from './rows/culture';
import * as ferment from './rows/ferment';
import * as jar from './rows/jar';
import * as keep from './rows/keep';
import * as milk from './rows/milk';
import * as ripen from './rows/ripen';

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
  grains: { label: 'Kind of grains' },
};
