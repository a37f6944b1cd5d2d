import { type Coefficient, commonPractice } from './origins';
import type { Source } from './sources';

const week: Coefficient = { value: 7, unit: 'days', low: 6, high: 8, origin: commonPractice('About a week.') };

/** How long strained kefir of each family of sources keeps in a refrigerator, from straining on. */
export const keepingTimes: Readonly<Record<Source['family'], Coefficient>> = {
  nut: week,
  legume: week,
  seed: week,
  coconut: { value: 8.5, unit: 'days', low: 7, high: 10, origin: commonPractice('Seven to ten days.') },
  carton: week,
};
