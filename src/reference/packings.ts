import { type Coefficient, commonPractice } from './origins';

/** What a can of coconut milk holds where no size is given. Small and large cans are sold too, so it is always said. */
export const usualCan: Coefficient = {
  value: 400,
  unit: 'mL',
  low: 385,
  high: 415,
  origin: commonPractice('Cans of 13.5 fl oz or 400 mL are the usual ones; 160 to 200 mL and 800 mL are sold as well.'),
};
