import { type Origin, published } from './origins';

export interface Allergen {
  readonly name: string;
  /** On the US list of major allergens. */
  readonly us: boolean;
  /** In Annex II of the EU regulation. */
  readonly eu: boolean;
  readonly origins: readonly Origin[];
  readonly note?: string;
}

const usTreeNut = published('fda-tree-nuts-2025', 'list of 12 tree nuts, January 2025');
const euTreeNut = published('eu-1169-2011', 'Annex II, nuts');

const table = {
  almond: { name: 'Almond (tree nut)', us: true, eu: true, origins: [usTreeNut, euTreeNut] },
  cashew: { name: 'Cashew (tree nut)', us: true, eu: true, origins: [usTreeNut, euTreeNut] },
  hazelnut: { name: 'Hazelnut (tree nut)', us: true, eu: true, origins: [usTreeNut, euTreeNut] },
  walnut: { name: 'Walnut (tree nut)', us: true, eu: true, origins: [usTreeNut, euTreeNut] },
  pecan: { name: 'Pecan (tree nut)', us: true, eu: true, origins: [usTreeNut, euTreeNut] },
  macadamia: { name: 'Macadamia (tree nut)', us: true, eu: true, origins: [usTreeNut, euTreeNut] },
  brazilNut: { name: 'Brazil nut (tree nut)', us: true, eu: true, origins: [usTreeNut, euTreeNut] },
  pistachio: { name: 'Pistachio (tree nut)', us: true, eu: true, origins: [usTreeNut, euTreeNut] },
  pineNut: {
    name: 'Pine nut (tree nut in the US)',
    us: true,
    eu: false,
    origins: [usTreeNut, published('eu-1169-2011', 'Annex II, nuts, pine nut not listed', 'Read off the list.')],
  },
  oats: {
    name: 'Oats (gluten)',
    us: false,
    eu: true,
    origins: [
      published('fda-allergens', 'major food allergens, of cereals wheat alone'),
      published('eu-1169-2011', 'Annex II, cereals containing gluten, oats among them'),
    ],
    note: 'Oats are often milled beside wheat. Only those sold as gluten-free are for people with coeliac disease, and not for all of them.',
  },
  peanut: {
    name: 'Peanut',
    us: true,
    eu: true,
    origins: [published('fda-allergens', 'major food allergens'), published('eu-1169-2011', 'Annex II, peanuts')],
  },
  sesame: {
    name: 'Sesame',
    us: true,
    eu: true,
    origins: [
      published('fda-allergens', 'major food allergens, sesame since 1 January 2023'),
      published('eu-1169-2011', 'Annex II, sesame seeds'),
    ],
  },
  soy: {
    name: 'Soy',
    us: true,
    eu: true,
    origins: [published('fda-allergens', 'major food allergens'), published('eu-1169-2011', 'Annex II, soybeans')],
  },
  milk: {
    name: 'Milk',
    us: true,
    eu: true,
    origins: [published('fda-allergens', 'major food allergens'), published('eu-1169-2011', 'Annex II, milk')],
    note: 'Milk kefir grains carry milk protein into a plant milk, and a starter may.',
  },
  coconut: {
    name: 'Coconut',
    us: false,
    eu: false,
    origins: [
      published('fda-tree-nuts-2025', 'frequent questions, coconut no longer among the tree nuts'),
      published('eu-1169-2011', 'Annex II, coconut not listed', 'Read off the list.'),
    ],
    note: 'On neither list since the US dropped it in January 2025, yet some people react to it and older US labels call it a tree nut.',
  },
} satisfies Record<string, Allergen>;

export type AllergenId = keyof typeof table;

/** Allergens by id, and whether the US and the EU lists name each; the two lists differ. */
export const allergens: Readonly<Record<AllergenId, Allergen>> = table;
