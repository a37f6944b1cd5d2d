import { published } from './origins';

/** The model that the cardinal temperatures belong to: growth at a temperature as a share of growth at the optimum. */
export const growthModel = {
  name: 'Cardinal temperature model with inflection',
  origin: published('rosso-1995', 'the cardinal temperature model with inflection'),
} as const;
