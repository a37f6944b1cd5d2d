import { type Coefficient, commonPractice } from './origins';

/** What sources of one kind have in common. */
export interface Family {
  /** The heading it has in the menu. */
  readonly heading: string;
  /** How long its kefir, strained, keeps in a refrigerator. */
  readonly keeps: Coefficient;
  /** Kernels that are bought raw, and may carry what lives on raw food. */
  readonly raw: boolean;
  /** Whether mouldy ones can be seen and picked out of what is bought. */
  readonly pickedOver: boolean;
}

const week: Coefficient = { value: 7, unit: 'days', low: 6, high: 8, origin: commonPractice('About a week.') };

const table = {
  nut: { heading: 'Nuts', keeps: week, raw: true, pickedOver: true },
  ground: { heading: 'Ground nuts', keeps: week, raw: true, pickedOver: false },
  butter: { heading: 'Nut and seed butters', keeps: week, raw: false, pickedOver: false },
  legume: { heading: 'Legumes', keeps: week, raw: true, pickedOver: true },
  seed: { heading: 'Seeds and tiger nuts', keeps: week, raw: true, pickedOver: false },
  cereal: { heading: 'Cereals', keeps: week, raw: false, pickedOver: false },
  coconut: {
    heading: 'Coconut',
    keeps: { value: 8.5, unit: 'days', low: 7, high: 10, origin: commonPractice('Seven to ten days.') },
    raw: false,
    pickedOver: false,
  },
  carton: { heading: 'Ready made', keeps: week, raw: false, pickedOver: false },
  own: { heading: 'Your own', keeps: week, raw: true, pickedOver: true },
} satisfies Record<string, Family>;

export type FamilyId = keyof typeof table;

/** The kinds of sources, in the order of the menu. */
export const families: Readonly<Record<FamilyId, Family>> = table;
