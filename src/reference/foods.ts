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
type HouseholdMeasure = readonly [amount: number, unit: string, grams: number];

/** A food record, g per 100 g edible portion. `null`: the release prints no value, which is not zero. */
export interface Food {
  readonly ndb: string;
  readonly name: string;
  readonly water: number;
  readonly protein: number;
  readonly fat: number;
  /** By difference, fibre included. */
  readonly carbohydrate: number;
  readonly fibre: number | null;
  /** Total sugars as printed; see the notes where it is not the sum of the six. */
  readonly sugars: number | null;
  readonly sucrose: number | null;
  readonly glucose: number | null;
  readonly fructose: number | null;
  readonly maltose: number | null;
  readonly lactose: number | null;
  readonly galactose: number | null;
  readonly starch: number | null;
  readonly ash: number;
  /** `amount` of `unit` weighs `grams`; US customary cups and spoons, in the wording of the release. */
  readonly measures: readonly { readonly amount: number; readonly unit: string; readonly grams: number }[];
  readonly notes?: readonly string[];
}

function food(
  ndb: string,
  name: string,
  [water, protein, fat, carbohydrate, fibre, sugars, ...rest]: Per100Grams,
  measures: readonly HouseholdMeasure[],
  notes?: readonly string[],
): Food {
  const [sucrose, glucose, fructose, maltose, lactose, galactose, starch, ash] = rest;
  const record = {
    ...{ ndb, name, water, protein, fat, carbohydrate, fibre, sugars },
    ...{ sucrose, glucose, fructose, maltose, lactose, galactose, starch, ash },
    measures: measures.map(([amount, unit, grams]) => ({ amount, unit, grams })),
  };
  return notes === undefined ? record : { ...record, notes };
}

// Columns: water, protein, fat, carbohydrate, fibre, sugars, sucrose, glucose, fructose, maltose, lactose, galactose,
// starch, ash. Kept as printed in `usda-sr`: names and measures Release 28, individual sugars and starch Release 26,
// the rest Legacy.
// biome-ignore format: one food a line is what makes a slip in a column visible
const table = {
  '01077': food('01077', 'Milk, whole, 3.25% milkfat, with added vitamin D', [88.13, 3.15, 3.25, 4.8, 0, 5.05, 0, 0, 0, 0, 5.05, 0, null, 0.67], [[1, 'cup', 244], [1, 'fl oz', 30.5], [1, 'tbsp', 15], [1, 'quart', 976]], ['Lactose as analysed (5.05) exceeds carbohydrate by difference (4.80).']),
  '01079': food('01079', 'Milk, reduced fat, fluid, 2% milkfat, with added vitamin A and vitamin D', [89.21, 3.3, 1.98, 4.8, 0, 5.06, 0.01, 0.01, 0.01, 0.01, 5.01, 0.02, null, 0.71], [[1, 'cup', 244], [1, 'fl oz', 30.5], [1, 'quart', 976]], ['Lactose as analysed (5.01) exceeds carbohydrate by difference (4.80).']),
  '01085': food('01085', 'Milk, nonfat, fluid, with added vitamin A and vitamin D (fat free or skim)', [90.84, 3.37, 0.08, 4.96, 0, 5.09, 0, 0, 0, 0, 5.09, 0, null, 0.75], [[1, 'cup', 245], [1, 'fl oz', 30.6], [1, 'quart', 980]], ['Lactose as analysed (5.09) exceeds carbohydrate by difference (4.96).']),
  '01151': food('01151', 'Milk, nonfat, fluid, without added vitamin A and vitamin D (fat free or skim)', [90.84, 3.37, 0.08, 4.96, 0, 5.09, 0, 0, 0, 0, 5.09, 0, null, 0.75], [[1, 'cup', 245], [1, 'quart', 980]], ['Lactose as analysed (5.09) exceeds carbohydrate by difference (4.96).']),
  '08120': food('08120', 'Cereals, oats, regular and quick, not fortified, dry', [10.84, 13.15, 6.52, 67.7, 10.1, 0.99, 0.99, 0, 0, 0, 0, 0, 57.92, 1.77], [[1, 'cup', 81], [0.333, 'cup', 27]]),
  '09087': food('09087', 'Dates, deglet noor', [20.53, 2.45, 0.39, 75.03, 8, 63.35, 23.84, 19.87, 19.56, 0.12, 0, 0, null, 1.6], [[1, 'cup, chopped', 147], [1, 'date, pitted', 7.1]]),
  '09421': food('09421', 'Dates, medjool', [21.32, 1.81, 0.15, 74.97, 6.7, 66.47, 0.53, 33.68, 31.95, 0.3, 0, 0, null, 1.74], [[1, 'date, pitted', 24]]),
  '12006': food('12006', 'Seeds, chia seeds, dried', [5.8, 16.54, 30.74, 42.12, 34.4, null, null, null, null, null, null, null, null, 4.8], [[1, 'oz', 28.35]], ['No total or individual sugars in any release read; no cup weight, ounces only.']),
  '12012': food('12012', 'Seeds, hemp seed, hulled', [4.96, 31.56, 48.75, 8.67, 4, 1.5, null, null, null, null, null, null, null, 6.06], [[3, 'tbsp', 30]], ['No individual sugars found.']),
  '12014': food('12014', 'Seeds, pumpkin and squash seed kernels, dried', [5.23, 30.23, 49.05, 10.71, 6, 1.4, 1.13, 0.13, 0.15, 0, 0, 0, 1.47, 4.78], [[1, 'cup', 129], [1, 'oz', 28.35]]),
  '12023': food('12023', 'Seeds, sesame seeds, whole, dried', [4.69, 17.73, 49.67, 23.45, 11.8, 0.3, null, null, null, null, null, null, null, 4.45], [[1, 'cup', 144], [1, 'tbsp', 9]]),
  '12036': food('12036', 'Seeds, sunflower seed kernels, dried', [4.73, 20.78, 51.46, 20, 8.6, 2.62, 2.5, null, null, null, null, null, null, 3.02], [[1, 'cup, with hulls, edible yield', 46], [1, 'cup', 140]], ['Of the individual sugars only sucrose has a row.']),
  '12061': food('12061', 'Nuts, almonds', [4.41, 21.15, 49.93, 21.55, 12.5, 4.35, 3.95, 0.17, 0.11, 0.04, 0, 0.07, 0.72, 2.97], [[1, 'cup, whole', 143], [1, 'cup, sliced', 92], [1, 'cup, slivered', 108], [1, 'cup, ground', 95], [1, 'oz (23 whole kernels)', 28.35], [1, 'almond', 1.2]], ['Release 24 printed an older set (water 4.70, sugars 3.89). Total sugars 4.35 is Legacy’s; the individual sugars sum to 4.34.']),
  '12062': food('12062', 'Nuts, almonds, blanched', [4.51, 21.4, 52.52, 18.67, 9.9, 4.63, 4.46, 0.03, 0, 0.14, 0, 0, 1, 2.91], [[1, 'cup whole kernels', 145], [1, 'tbsp', 9.1], [1, 'oz', 28.35]], ['Galactose 0 is assumed by the release, not analysed.']),
  '12078': food('12078', 'Nuts, brazilnuts, dried, unblanched', [3.42, 14.32, 67.1, 11.74, 7.5, 2.33, 2.33, 0, 0, 0, 0, 0, 0.25, 3.43], [[1, 'cup, whole', 133], [1, 'kernel', 5], [1, 'oz (6 kernels)', 28.35]], ['Proximates were revised after Release 26, from which the individual sugars are.']),
  '12087': food('12087', 'Nuts, cashew nuts, raw', [5.2, 18.22, 43.85, 30.19, 3.3, 5.91, 5.81, 0.05, 0.05, 0, 0, 0, 23.49, 2.54], [[1, 'oz', 28.35]], ['No cup weight, ounces only. Galactose 0 is taken from a similar food. Sugars, starch and fibre exceed carbohydrate by difference by 2.5 g, as published.']),
  '12104': food('12104', 'Nuts, coconut meat, raw', [46.99, 3.33, 33.49, 15.23, 9, 6.23, null, null, null, null, null, null, null, 0.97], [[1, 'cup, shredded', 80], [1, 'medium', 397], [1, 'piece (2" x 2" x 1/2")', 45]]),
  '12108': food('12108', 'Nuts, coconut meat, dried (desiccated), not sweetened', [3, 6.88, 64.53, 23.65, 16.3, 7.35, null, null, null, null, null, null, null, 1.94], [[1, 'oz', 28.35]], ['No individual sugars; no cup weight, ounces only.']),
  '12109': food('12109', 'Nuts, coconut meat, dried (desiccated), sweetened, flaked, packaged', [15.46, 3.13, 27.99, 51.85, 9.9, 36.75, 36.21, 0.53, 0.01, 0, 0, 0, 0, 1.57], [[1, 'cup', 85], [1, 'oz', 28.35]]),
  '12115': food('12115', 'Nuts, coconut cream, raw (liquid expressed from grated meat)', [53.9, 3.63, 34.68, 6.65, 2.2, null, null, null, null, null, null, null, null, 1.15], [[1, 'tbsp', 15], [1, 'cup', 240]], ['No total or individual sugars in any release read.']),
  '12117': food('12117', 'Nuts, coconut milk, raw (liquid expressed from grated meat and water)', [67.62, 2.29, 23.84, 5.54, 2.2, 3.34, null, null, null, null, null, null, null, 0.72], [[1, 'cup', 240], [1, 'tbsp', 15]]),
  '12118': food('12118', 'Nuts, coconut milk, canned (liquid expressed from grated meat and water)', [72.88, 2.02, 21.33, 2.81, null, null, null, null, null, null, null, null, null, 0.97], [[1, 'cup', 226], [1, 'tbsp', 15]], ['No fibre, total or individual sugars in any release read. Cup 226 g and tablespoon 15 g differ by 6 % in density, as published.']),
  '12119': food('12119', 'Nuts, coconut water (liquid from coconuts)', [94.99, 0.72, 0.2, 3.71, 1.1, 2.61, null, null, null, null, null, null, null, 0.39], [[1, 'cup', 240], [1, 'tbsp', 15], [1, 'coconut yields', 206]]),
  '12120': food('12120', 'Nuts, hazelnuts or filberts', [5.31, 14.95, 60.75, 16.7, 9.7, 4.34, 4.2, 0.07, 0.07, 0, 0, null, 0.48, 2.29], [[1, 'cup, chopped', 115], [1, 'cup, ground', 75], [1, 'cup, whole', 135], [1, 'oz (21 whole kernels)', 28.35], [10, 'nuts', 14]]),
  '12121': food('12121', 'Nuts, hazelnuts or filberts, blanched', [5.79, 13.7, 61.15, 17, 11, 3.49, 3.35, 0.07, 0.07, 0, 0, null, 0.93, 2.36], [[1, 'oz', 28.35]], ['No cup weight, ounces only.']),
  '12131': food('12131', 'Nuts, macadamia nuts, raw', [1.36, 7.91, 75.77, 13.82, 8.6, 4.57, 4.43, 0.07, 0.07, 0, 0, null, 1.05, 1.14], [[1, 'cup, whole or halves', 134], [1, 'oz (10-12 kernels)', 28.35]]),
  '12142': food('12142', 'Nuts, pecans', [3.52, 9.17, 71.97, 13.86, 9.6, 3.97, 3.9, 0.04, 0.04, 0, 0, null, 0.46, 1.49], [[1, 'cup, chopped', 109], [1, 'cup, halves', 99], [1, 'oz (19 halves)', 28.35]]),
  '12147': food('12147', 'Nuts, pine nuts, dried', [2.28, 13.69, 68.37, 13.08, 3.7, 3.59, 3.45, 0.07, 0.07, 0, 0, 0, 1.43, 2.59], [[1, 'cup', 135], [1, 'oz (167 kernels)', 28.35], [10, 'nuts', 1.7]], ['Starch rests on one data point.']),
  '12151': food('12151', 'Nuts, pistachio nuts, raw', [4.37, 20.16, 45.32, 27.17, 10.6, 7.66, 6.87, 0.32, 0.24, 0.17, 0, null, 1.67, 2.99], [[1, 'cup', 123], [1, 'oz (49 kernels)', 28.35], [1, 'kernel', 0.7]], ['Proximates were revised after Release 26, from which the individual sugars are. Starch rests on one data point.']),
  '12155': food('12155', 'Nuts, walnuts, english', [4.07, 15.23, 65.21, 13.71, 6.7, 2.61, 2.43, 0.08, 0.09, 0, 0, null, 0.06, 1.78], [[1, 'cup, chopped', 117], [1, 'cup, ground', 80], [1, 'cup, in shell, edible yield (7 nuts)', 28], [1, 'cup shelled (50 halves)', 100], [1, 'cup pieces or chips', 120], [1, 'oz (14 halves)', 28.35]]),
  '12177': food('12177', 'Nuts, coconut meat, dried (desiccated), creamed', [1.67, 5.3, 69.08, 21.52, null, null, null, null, null, null, null, null, null, 2.44], [[1, 'oz', 28.35]], ['No fibre, total or individual sugars in any release read; no cup weight, ounces only.']),
  '12179': food('12179', 'Nuts, coconut meat, dried (desiccated), sweetened, shredded', [12.55, 2.88, 35.49, 47.67, 4.5, 43.17, null, null, null, null, null, null, null, 1.42], [[1, 'cup, shredded', 93], [1, 'package (7 oz)', 199]]),
  '12201': food('12201', 'Seeds, sesame seed kernels, dried (decorticated)', [3.75, 20.45, 61.21, 11.73, 11.6, 0.48, 0.34, 0.11, 0.07, 0, 0, 0, null, 2.86], [[1, 'cup', 150], [1, 'tbsp', 8], [1, 'tsp', 2.7]], ['Cup 150 g and tablespoon 8 g differ by 16 % in density, as published. Fructose, lactose, maltose and galactose rest on one data point each.']),
  '12220': food('12220', 'Seeds, flaxseed', [6.96, 18.29, 42.16, 28.88, 27.3, 1.55, 1.15, 0.4, 0, 0, 0, 0, null, 3.72], [[1, 'tbsp, whole', 10.3], [1, 'cup, whole', 168], [1, 'tbsp, ground', 7], [1, 'tsp, whole', 3.4], [1, 'tsp, ground', 2.5]], ['Galactose 0 is assumed by the release, not analysed.']),
  '14411': food('14411', 'Beverages, water, tap, drinking', [99.9, 0, 0, 0, 0, 0, null, null, null, null, null, null, null, 0.1], [[1, 'fl oz', 29.6], [1, 'serving 8 fl oz', 237], [1, 'liter', 1000]]),
  '14429': food('14429', 'Beverages, water, tap, municipal', [99.9, 0, 0, 0, 0, 0, null, null, null, null, null, null, null, 0.1], [[1, 'fl oz', 29.6], [1, 'bottle 8 fl oz', 237], [1, 'liter', 1000], [3, 'ice cube (3/4 fl oz)', 64]]),
  '16087': food('16087', 'Peanuts, all types, raw', [6.5, 25.8, 49.24, 16.13, 8.5, 4.72, null, null, null, null, null, null, null, 2.33], [[1, 'oz', 28.35], [1, 'cup', 146]], ['Total sugars 4.72 is Legacy’s; Releases 24 and 26 printed 3.97. No individual sugars.']),
  '19296': food('19296', 'Honey', [17.1, 0.3, 0, 82.4, 0.2, 82.12, 0.89, 35.75, 40.94, 1.44, null, 3.1, null, 0.2], [[1, 'cup', 339], [1, 'tbsp', 21], [1, 'packet (0.5 oz)', 14]], ['Glucose, fructose and galactose rest on one data point each; galactose 3.10 is unusual for honey.']),
  '19304': food('19304', 'Molasses', [21.87, 0, 0.1, 74.73, 0, 74.72, 29.4, 11.92, 12.79, null, null, null, null, 3.3], [[1, 'cup', 337], [1, 'serving 1 tbsp', 20]], ['Total sugars 74.72 is carbohydrate by difference; Release 24 printed 55.49. The individual sugars sum to 54.11: use the sum for fermentable sugar.']),
  '19334': food('19334', 'Sugars, brown', [1.34, 0.12, 0, 98.09, 0, 97.02, 94.56, 1.35, 1.11, 0, 0, 0, null, 0.45], [[1, 'tsp unpacked', 3], [1, 'cup packed', 220], [1, 'cup unpacked', 145], [1, 'tsp packed', 4.6], [1, 'tsp brownulated', 3.2]]),
  '19335': food('19335', 'Sugars, granulated', [0.02, 0, 0, 99.98, 0, 99.8, 99.8, 0, 0, 0, 0, 0, null, 0.01], [[1, 'serving packet', 2.8], [1, 'tsp', 4.2], [1, 'cup', 200], [1, 'serving 1 cube', 2.3]]),
  '19336': food('19336', 'Sugars, powdered', [0.23, 0, 0, 99.77, 0, 97.81, null, 0, 0, 0, 0, 0, 1.26, 0.01], [[1, 'cup unsifted', 120], [1, 'cup sifted', 100], [1, 'tbsp unsifted', 8], [1, 'tsp', 2.5]], ['No sucrose row, though the other five are analysed at zero and total sugars is 97.81.']),
  '19340': food('19340', 'Sugars, maple', [8, 0.1, 0.2, 90.9, 0, 84.87, null, null, null, null, null, null, null, 0.8], [[1, 'tsp', 3], [1, 'oz', 28.35], [1, 'piece (1-3/4" x 1-1/4" x 1/2")', 28]], ['Total sugars is derived; no individual sugars.']),
  '19349': food('19349', 'Syrups, corn, dark', [22.01, 0, 0, 77.59, 0, 77.59, null, null, null, null, null, null, null, 0.4], [[1, 'cup', 328], [1, 'tbsp', 20]], ['Total sugars 77.59 equals carbohydrate by difference, so it counts the higher glucose polymers; Release 24 printed 26.70. No individual sugars.']),
  '19350': food('19350', 'Syrups, corn, light', [22.81, 0, 0.2, 76.79, 0, 76.77, null, null, null, null, null, null, null, 0.2], [[1, 'cup', 341], [1, 'tbsp', 22]], ['Total sugars 76.77 equals carbohydrate by difference, so it counts the higher glucose polymers; Release 24 printed 26.77. No individual sugars.']),
  '19353': food('19353', 'Syrups, maple', [32.39, 0.04, 0.06, 67.04, 0, 60.46, 58.32, 1.6, 0.52, 0, 0, 0, null, 0.47], [[1, 'tbsp', 20], [1, 'serving 1/4 cup', 83], [1, 'cup', 315]], ['Release 26 printed total sugars 67.90, more than its carbohydrate; Legacy’s 60.46 agrees with the individual sugars. The quarter-cup serving of 83 g does not agree with the cup and tablespoon.']),
  '19355': food('19355', 'Syrups, sorghum', [22.7, 0, 0, 74.9, 0, 74.9, null, null, null, null, null, null, null, 2.4], [[1, 'cup', 330], [1, 'tbsp', 21]], ['Total sugars equals carbohydrate by difference, not measured. No individual sugars.']),
  '19908': food('19908', 'Sugar, turbinado', [0.03, 0, 0, 99.8, null, 99.19, 99.19, 0, 0, 0, 0, 0, null, 0.17], [[1, 'tsp', 4.6], [1, 'cup', 202]], ['Cup 202 g and teaspoon 4.6 g differ by 9 % in density, as published. No fibre row.']),
  '19911': food('19911', 'Syrup, maple, Canadian', [32.15, 0, 0, 67.38, 0, 59.92, 58.93, 0.65, 0.34, 0, 0, 0, null, 0.47], [[60, 'milliliter', 80]], ['Lactose, maltose and galactose 0 are assumed by the release, not analysed.']),
  '19912': food('19912', 'Sweetener, syrup, agave', [22.94, 0.09, 0.45, 76.37, 0.2, 68.03, 0, 12.43, 55.6, 0, 0, 0, null, 0.14], [[1, 'tsp', 6.9], [0.25, 'cup', 55]], ['Measures contradict each other: the teaspoon gives 1.40 g/mL, the quarter cup 0.93 g/mL, impossible for a syrup. Use the teaspoon.']),
  '20038': food('20038', 'Oats', [8.22, 16.89, 6.9, 66.27, 10.6, null, null, null, null, null, null, null, null, 1.72], [[1, 'cup', 156]], ['No total or individual sugars in any release read; rolled oats 08120 have them.']),
  '90480': food('90480', 'Syrup, Cane', [26, 0, 0, 73.14, 0, 73.2, null, null, null, null, null, null, null, 0.86], [[1, 'serving', 21]], ['Total sugars is derived and slightly above carbohydrate by difference. No individual sugars.']),
} satisfies Record<string, Food>;

/** The record (NDB) number of a food, as text. */
export type FoodId = keyof typeof table;

/** The USDA records used, by record number. */
export const foods: Readonly<Record<FoodId, Food>> = table;
