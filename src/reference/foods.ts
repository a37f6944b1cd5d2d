type Known = number | null;
type Per100Grams = readonly [
  water: number,
  protein: number,
  fat: number,
  carbohydrate: number,
  fibre: Known,
  sugars: Known,
  sucrose: Known,
  glucose: Known,
  fructose: Known,
  maltose: Known,
  lactose: Known,
  galactose: Known,
  starch: Known,
  ash: number,
];

/** The six sugars, g per 100 g. `null`: no table gives it, which is not zero. */
export interface Sugars {
  readonly sucrose: number | null;
  readonly glucose: number | null;
  readonly fructose: number | null;
  readonly maltose: number | null;
  readonly lactose: number | null;
  readonly galactose: number | null;
}

/** What is in a food, g per 100 g edible portion. */
export interface Proximates extends Sugars {
  readonly water: number;
  readonly protein: number;
  readonly fat: number;
  /** By difference, fibre included. */
  readonly carbohydrate: number;
  readonly fibre: number | null;
  /** Total sugars as printed; not always the sum of the six. */
  readonly sugars: number | null;
  readonly ash: number;
}

/** A food record. */
export interface Food extends Proximates {
  readonly ndb: string;
  readonly name: string;
  readonly starch: number | null;
}

export function food(
  ndb: string,
  name: string,
  [water, protein, fat, carbohydrate, fibre, sugars, ...rest]: Per100Grams,
): Food {
  const [sucrose, glucose, fructose, maltose, lactose, galactose, starch, ash] = rest;
  return {
    ...{ ndb, name, water, protein, fat, carbohydrate, fibre, sugars },
    ...{ sucrose, glucose, fructose, maltose, lactose, galactose, starch, ash },
  };
}

// Columns: water, protein, fat, carbohydrate, fibre, sugars, sucrose, glucose, fructose, maltose, lactose, galactose,
// starch, ash. Kept as printed in `usda-sr`: names and measures Release 28, individual sugars and starch Release 26,
// the rest Legacy; of those in `fromRelease26` all, the name in short.
// biome-ignore format: one food a line is what makes a slip in a column visible
const table = {
  '08120': food('08120', 'Cereals, oats, regular and quick, not fortified, dry', [10.84, 13.15, 6.52, 67.7, 10.1, 0.99, 0.99, 0, 0, 0, 0, 0, 57.92, 1.77]),
  '09421': food('09421', 'Dates, medjool', [21.32, 1.81, 0.15, 74.97, 6.7, 66.47, 0.53, 33.68, 31.95, 0.3, 0, 0, null, 1.74]),
  '12006': food('12006', 'Seeds, chia seeds, dried', [5.8, 16.54, 30.74, 42.12, 34.4, null, null, null, null, null, null, null, null, 4.8]),
  '12012': food('12012', 'Seeds, hemp seed, hulled', [4.96, 31.56, 48.75, 8.67, 4, 1.5, null, null, null, null, null, null, null, 6.06]),
  '12014': food('12014', 'Seeds, pumpkin and squash seed kernels, dried', [5.23, 30.23, 49.05, 10.71, 6, 1.4, 1.13, 0.13, 0.15, 0, 0, 0, 1.47, 4.78]),
  '12023': food('12023', 'Seeds, sesame seeds, whole, dried', [4.69, 17.73, 49.67, 23.45, 11.8, 0.3, null, null, null, null, null, null, null, 4.45]),
  '12036': food('12036', 'Seeds, sunflower seed kernels, dried', [4.73, 20.78, 51.46, 20, 8.6, 2.62, 2.5, null, null, null, null, null, null, 3.02]),
  '12061': food('12061', 'Nuts, almonds', [4.41, 21.15, 49.93, 21.55, 12.5, 4.35, 3.95, 0.17, 0.11, 0.04, 0, 0.07, 0.72, 2.97]),
  '12062': food('12062', 'Nuts, almonds, blanched', [4.51, 21.4, 52.52, 18.67, 9.9, 4.63, 4.46, 0.03, 0, 0.14, 0, 0, 1, 2.91]),
  '12078': food('12078', 'Nuts, brazilnuts, dried, unblanched', [3.42, 14.32, 67.1, 11.74, 7.5, 2.33, 2.33, 0, 0, 0, 0, 0, 0.25, 3.43]),
  '12087': food('12087', 'Nuts, cashew nuts, raw', [5.2, 18.22, 43.85, 30.19, 3.3, 5.91, 5.81, 0.05, 0.05, 0, 0, 0, 23.49, 2.54]),
  '12104': food('12104', 'Nuts, coconut meat, raw', [46.99, 3.33, 33.49, 15.23, 9, 6.23, null, null, null, null, null, null, null, 0.97]),
  '12108': food('12108', 'Nuts, coconut meat, dried (desiccated), not sweetened', [3, 6.88, 64.53, 23.65, 16.3, 7.35, null, null, null, null, null, null, null, 1.94]),
  '12115': food('12115', 'Nuts, coconut cream, raw (liquid expressed from grated meat)', [53.9, 3.63, 34.68, 6.65, 2.2, null, null, null, null, null, null, null, null, 1.15]),
  '12118': food('12118', 'Nuts, coconut milk, canned (liquid expressed from grated meat and water)', [72.88, 2.02, 21.33, 2.81, null, null, null, null, null, null, null, null, null, 0.97]),
  '12119': food('12119', 'Nuts, coconut water (liquid from coconuts)', [94.99, 0.72, 0.2, 3.71, 1.1, 2.61, null, null, null, null, null, null, null, 0.39]),
  '12120': food('12120', 'Nuts, hazelnuts or filberts', [5.31, 14.95, 60.75, 16.7, 9.7, 4.34, 4.2, 0.07, 0.07, 0, 0, null, 0.48, 2.29]),
  '12131': food('12131', 'Nuts, macadamia nuts, raw', [1.36, 7.91, 75.77, 13.82, 8.6, 4.57, 4.43, 0.07, 0.07, 0, 0, null, 1.05, 1.14]),
  '12142': food('12142', 'Nuts, pecans', [3.52, 9.17, 71.97, 13.86, 9.6, 3.97, 3.9, 0.04, 0.04, 0, 0, null, 0.46, 1.49]),
  '12147': food('12147', 'Nuts, pine nuts, dried', [2.28, 13.69, 68.37, 13.08, 3.7, 3.59, 3.45, 0.07, 0.07, 0, 0, 0, 1.43, 2.59]),
  '12151': food('12151', 'Nuts, pistachio nuts, raw', [4.37, 20.16, 45.32, 27.17, 10.6, 7.66, 6.87, 0.32, 0.24, 0.17, 0, null, 1.67, 2.99]),
  '12155': food('12155', 'Nuts, walnuts, english', [4.07, 15.23, 65.21, 13.71, 6.7, 2.61, 2.43, 0.08, 0.09, 0, 0, null, 0.06, 1.78]),
  '12166': food('12166', 'Tahini, roasted', [3.05, 17, 53.76, 21.19, 9.3, 0.49, null, null, null, null, null, null, null, 5]),
  '12179': food('12179', 'Nuts, coconut meat, dried (desiccated), sweetened, shredded', [12.55, 2.88, 35.49, 47.67, 4.5, 43.17, null, null, null, null, null, null, null, 1.42]),
  '12195': food('12195', 'Almond butter', [1.64, 20.96, 55.5, 18.82, 10.3, 4.43, 4.34, 0.02, 0, null, null, null, 0.08, 3.09]),
  '12201': food('12201', 'Seeds, sesame seed kernels, dried (decorticated)', [3.75, 20.45, 61.21, 11.73, 11.6, 0.48, 0.34, 0.11, 0.07, 0, 0, 0, null, 2.86]),
  '12220': food('12220', 'Seeds, flaxseed', [6.96, 18.29, 42.16, 28.88, 27.3, 1.55, 1.15, 0.4, 0, 0, 0, 0, null, 3.72]),
  '16087': food('16087', 'Peanuts, all types, raw', [6.5, 25.8, 49.24, 16.13, 8.5, 4.72, null, null, null, null, null, null, null, 2.33]),
  '16108': food('16108', 'Soybeans, raw', [8.54, 36.49, 19.94, 30.16, 9.3, 7.33, null, null, null, null, null, null, null, 4.87]),
  '16398': food('16398', 'Peanut butter, no salt', [1.81, 25.09, 50.39, 19.56, 6, 9.22, 8.68, 0.54, 0, null, null, null, 4.79, 3.15]),
  '19296': food('19296', 'Honey', [17.1, 0.3, 0, 82.4, 0.2, 82.12, 0.89, 35.75, 40.94, 1.44, null, 3.1, null, 0.2]),
  '19304': food('19304', 'Molasses', [21.87, 0, 0.1, 74.73, 0, 74.72, 29.4, 11.92, 12.79, null, null, null, null, 3.3]),
  '19334': food('19334', 'Sugars, brown', [1.34, 0.12, 0, 98.09, 0, 97.02, 94.56, 1.35, 1.11, 0, 0, 0, null, 0.45]),
  '19335': food('19335', 'Sugars, granulated', [0.02, 0, 0, 99.98, 0, 99.8, 99.8, 0, 0, 0, 0, 0, null, 0.01]),
  '19340': food('19340', 'Sugars, maple', [8, 0.1, 0.2, 90.9, 0, 84.87, null, null, null, null, null, null, null, 0.8]),
  '19350': food('19350', 'Syrups, corn, light', [22.81, 0, 0.2, 76.79, 0, 76.77, null, null, null, null, null, null, null, 0.2]),
  '19353': food('19353', 'Syrups, maple', [32.39, 0.04, 0.06, 67.04, 0, 60.46, 58.32, 1.6, 0.52, 0, 0, 0, null, 0.47]),
  '19355': food('19355', 'Syrups, sorghum', [22.7, 0, 0, 74.9, 0, 74.9, null, null, null, null, null, null, null, 2.4]),
  '19908': food('19908', 'Sugar, turbinado', [0.03, 0, 0, 99.8, null, 99.19, 99.19, 0, 0, 0, 0, 0, null, 0.17]),
  '19912': food('19912', 'Sweetener, syrup, agave', [22.94, 0.09, 0.45, 76.37, 0.2, 68.03, 0, 12.43, 55.6, 0, 0, 0, null, 0.14]),
  '20444': food('20444', 'Rice, white, long', [11.62, 7.13, 0.66, 79.95, 1.3, 0.12, null, null, null, null, null, null, null, 0.64]),
  '90480': food('90480', 'Syrup, Cane', [26, 0, 0, 73.14, 0, 73.2, null, null, null, null, null, null, null, 0.86]),
} satisfies Record<string, Food>;

/** The record (NDB) number of a food, as text. */
export type FoodId = keyof typeof table;

/** The USDA records that sources and sweeteners are made of, by record number; the rest are in `other-foods.ts`. */
export const foods: Readonly<Record<FoodId, Food>> = table;

/** Records of which only Release 26 was read. */
export const fromRelease26: readonly string[] = ['12166', '12195', '16108', '16398', '20444'];
