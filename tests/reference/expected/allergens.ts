import { type Figures, underEach } from './figures';

/**
 * US: FDA, Questions and Answers Regarding Food Allergens (Edition 5, 2025), twelve tree nuts, coconut no longer; the
 * FASTER Act page, peanut, sesame, soy and milk. EU: Regulation (EU) No 1169/2011, Annex II, coconut not listed.
 */
export const allergenFigures: Figures = {
  ...underEach(['almond', 'cashew', 'hazelnut', 'walnut', 'pecan', 'macadamia', 'brazilNut', 'pistachio'], {
    ...{ us: true, eu: true },
  }),
  ...underEach(['peanut', 'sesame', 'soy', 'milk'], { us: true, eu: true }),
  // EU: pine nuts are not listed, oats are among the cereals containing gluten; in the US of cereals wheat alone.
  ...underEach(['pineNut'], { us: true, eu: false }),
  ...underEach(['oats'], { us: false, eu: true }),
  ...underEach(['coconut'], { us: false, eu: false }),
};
