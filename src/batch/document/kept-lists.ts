import { mostBlends, mostCartons, mostClasses, mostOwnFoods, mostPackages, mostStocks } from './document-limits';

/** The lists of a sheet that not every sheet has, in the order in which they are read. */
export const listNames = ['ownFoods', 'stocks', 'cartons', 'packages', 'classes', 'blends'] as const;
export type ListName = (typeof listNames)[number];

interface ListWords {
  /** What the whole list is called where it is missing. */
  readonly title: string;
  readonly one: string;
  readonly many: string;
  /** How many a sheet holds. */
  readonly most: number;
}

/** What each list and one of its entries is called, and how many it holds. */
export const listWords: Readonly<Record<ListName, ListWords>> = {
  ownFoods: { title: 'Own foods', one: 'own food', many: 'own foods', most: mostOwnFoods },
  stocks: { title: 'Jars of grains', one: 'jar of grains', many: 'jars of grains', most: mostStocks },
  cartons: { title: 'Cartons', one: 'carton', many: 'cartons', most: mostCartons },
  packages: { title: 'Prices', one: 'price', many: 'prices', most: mostPackages },
  classes: { title: 'Classes', one: 'class', many: 'classes', most: mostClasses },
  blends: { title: 'Blends', one: 'blend', many: 'blends', most: mostBlends },
};
