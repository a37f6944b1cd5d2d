import { type FoodId, fromRelease26 } from './foods';
import type { OtherFoodId } from './other-foods';

type HouseholdMeasure = readonly [amount: number, unit: string, grams: number];

export interface FoodMeasures {
  /** `amount` of `unit` weighs `grams`; US customary cups and spoons, in the wording of the release. */
  readonly measures: readonly { readonly amount: number; readonly unit: string; readonly grams: number }[];
  /** What to beware of in the record. */
  readonly notes: readonly string[];
}

function measured(measures: readonly HouseholdMeasure[], notes: readonly string[] = []): FoodMeasures {
  return { measures: measures.map(([amount, unit, grams]) => ({ amount, unit, grams })), notes };
}

/** Household measures of the foods, Release 28 or what `fromRelease26` says, and the warnings that go with a record. */
// biome-ignore format: one food a line is what makes a slip visible
export const foodMeasures: Readonly<Record<FoodId | OtherFoodId, FoodMeasures>> = {
  '01077': measured([[1, 'cup', 244], [1, 'fl oz', 30.5], [1, 'tbsp', 15], [1, 'quart', 976]], ['Lactose as analysed (5.05) exceeds carbohydrate by difference (4.80).']),
  '01079': measured([[1, 'cup', 244], [1, 'fl oz', 30.5], [1, 'quart', 976]], ['Lactose as analysed (5.01) exceeds carbohydrate by difference (4.80).']),
  '01085': measured([[1, 'cup', 245], [1, 'fl oz', 30.6], [1, 'quart', 980]], ['Lactose as analysed (5.09) exceeds carbohydrate by difference (4.96).']),
  '01151': measured([[1, 'cup', 245], [1, 'quart', 980]], ['Lactose as analysed (5.09) exceeds carbohydrate by difference (4.96).']),
  '08120': measured([[1, 'cup', 81], [0.333, 'cup', 27]]),
  '09087': measured([[1, 'cup, chopped', 147], [1, 'date, pitted', 7.1]]),
  '09421': measured([[1, 'date, pitted', 24]]),
  '12006': measured([[1, 'oz', 28.35]], ['No total or individual sugars in any release read; no cup weight, ounces only.']),
  '12012': measured([[3, 'tbsp', 30]], ['No individual sugars found.']),
  '12014': measured([[1, 'cup', 129], [1, 'oz', 28.35]]),
  '12023': measured([[1, 'cup', 144], [1, 'tbsp', 9]]),
  '12036': measured([[1, 'cup, with hulls, edible yield', 46], [1, 'cup', 140]], ['Of the individual sugars only sucrose has a row.']),
  '12061': measured([[1, 'cup, whole', 143], [1, 'cup, sliced', 92], [1, 'cup, slivered', 108], [1, 'cup, ground', 95], [1, 'oz (23 whole kernels)', 28.35], [1, 'almond', 1.2]], ['Release 24 printed an older set (water 4.70, sugars 3.89). Total sugars 4.35 is Legacy’s; the individual sugars sum to 4.34.']),
  '12062': measured([[1, 'cup whole kernels', 145], [1, 'tbsp', 9.1], [1, 'oz', 28.35]], ['Galactose 0 is assumed by the release, not analysed.']),
  '12078': measured([[1, 'cup, whole', 133], [1, 'kernel', 5], [1, 'oz (6 kernels)', 28.35]], ['Proximates were revised after Release 26, from which the individual sugars are.']),
  '12087': measured([[1, 'oz', 28.35]], ['No cup weight, ounces only. Galactose 0 is taken from a similar food. Sugars, starch and fibre exceed carbohydrate by difference by 2.5 g, as published.']),
  '12104': measured([[1, 'cup, shredded', 80], [1, 'medium', 397], [1, 'piece (2" x 2" x 1/2")', 45]]),
  '12108': measured([[1, 'oz', 28.35]], ['No individual sugars; no cup weight, ounces only.']),
  '12109': measured([[1, 'cup', 85], [1, 'oz', 28.35]]),
  '12115': measured([[1, 'tbsp', 15], [1, 'cup', 240]], ['No total or individual sugars in any release read.']),
  '12117': measured([[1, 'cup', 240], [1, 'tbsp', 15]]),
  '12118': measured([[1, 'cup', 226], [1, 'tbsp', 15]], ['No fibre, total or individual sugars in any release read. Cup 226 g and tablespoon 15 g differ by 6 % in density, as published.']),
  '12119': measured([[1, 'cup', 240], [1, 'tbsp', 15], [1, 'coconut yields', 206]]),
  '12120': measured([[1, 'cup, chopped', 115], [1, 'cup, ground', 75], [1, 'cup, whole', 135], [1, 'oz (21 whole kernels)', 28.35], [10, 'nuts', 14]]),
  '12121': measured([[1, 'oz', 28.35]], ['No cup weight, ounces only.']),
  '12131': measured([[1, 'cup, whole or halves', 134], [1, 'oz (10-12 kernels)', 28.35]]),
  '12142': measured([[1, 'cup, chopped', 109], [1, 'cup, halves', 99], [1, 'oz (19 halves)', 28.35]]),
  '12147': measured([[1, 'cup', 135], [1, 'oz (167 kernels)', 28.35], [10, 'nuts', 1.7]], ['Starch rests on one data point.']),
  '12151': measured([[1, 'cup', 123], [1, 'oz (49 kernels)', 28.35], [1, 'kernel', 0.7]], ['Proximates were revised after Release 26, from which the individual sugars are. Starch rests on one data point.']),
  '12155': measured([[1, 'cup, chopped', 117], [1, 'cup, ground', 80], [1, 'cup, in shell, edible yield (7 nuts)', 28], [1, 'cup shelled (50 halves)', 100], [1, 'cup pieces or chips', 120], [1, 'oz (14 halves)', 28.35]]),
  '12166': measured([[1, 'tbsp', 15]], ['No individual sugars.']),
  '12177': measured([[1, 'oz', 28.35]], ['No fibre, total or individual sugars in any release read; no cup weight, ounces only.']),
  '12179': measured([[1, 'cup, shredded', 93], [1, 'package (7 oz)', 199]]),
  '12195': measured([[1, 'tbsp', 16], [1, 'cup', 250]]),
  '12201': measured([[1, 'cup', 150], [1, 'tbsp', 8], [1, 'tsp', 2.7]], ['Cup 150 g and tablespoon 8 g differ by 16 % in density, as published. Fructose, lactose, maltose and galactose rest on one data point each.']),
  '12220': measured([[1, 'tbsp, whole', 10.3], [1, 'cup, whole', 168], [1, 'tbsp, ground', 7], [1, 'tsp, whole', 3.4], [1, 'tsp, ground', 2.5]], ['Galactose 0 is assumed by the release, not analysed.']),
  '14411': measured([[1, 'fl oz', 29.6], [1, 'serving 8 fl oz', 237], [1, 'liter', 1000]]),
  '14429': measured([[1, 'fl oz', 29.6], [1, 'bottle 8 fl oz', 237], [1, 'liter', 1000], [3, 'ice cube (3/4 fl oz)', 64]]),
  '16087': measured([[1, 'oz', 28.35], [1, 'cup', 146]], ['Total sugars 4.72 is Legacy’s; Releases 24 and 26 printed 3.97. No individual sugars.']),
  '16108': measured([[1, 'cup', 186]], ['Total sugars 7.33 was not analysed. No individual sugars.']),
  '16398': measured([[2, 'tbsp', 32], [1, 'cup', 258]], ['Sugar is often added to it.']),
  '19296': measured([[1, 'cup', 339], [1, 'tbsp', 21], [1, 'packet (0.5 oz)', 14]], ['Glucose, fructose and galactose rest on one data point each; galactose 3.10 is unusual for honey.']),
  '19304': measured([[1, 'cup', 337], [1, 'serving 1 tbsp', 20]], ['Total sugars 74.72 is carbohydrate by difference; Release 24 printed 55.49. The individual sugars sum to 54.11: use the sum for fermentable sugar.']),
  '19334': measured([[1, 'tsp unpacked', 3], [1, 'cup packed', 220], [1, 'cup unpacked', 145], [1, 'tsp packed', 4.6], [1, 'tsp free-flowing', 3.2]]),
  '19335': measured([[1, 'serving packet', 2.8], [1, 'tsp', 4.2], [1, 'cup', 200], [1, 'serving 1 cube', 2.3]]),
  '19336': measured([[1, 'cup unsifted', 120], [1, 'cup sifted', 100], [1, 'tbsp unsifted', 8], [1, 'tsp', 2.5]], ['No sucrose row, though the other five are analysed at zero and total sugars is 97.81.']),
  '19340': measured([[1, 'tsp', 3], [1, 'oz', 28.35], [1, 'piece (1-3/4" x 1-1/4" x 1/2")', 28]], ['Total sugars is derived; no individual sugars.']),
  '19349': measured([[1, 'cup', 328], [1, 'tbsp', 20]], ['Total sugars 77.59 equals carbohydrate by difference, so it counts the higher glucose polymers; Release 24 printed 26.70. No individual sugars.']),
  '19350': measured([[1, 'cup', 341], [1, 'tbsp', 22]], ['Total sugars 76.77 equals carbohydrate by difference, so it counts the higher glucose polymers; Release 24 printed 26.77. No individual sugars.']),
  '19353': measured([[1, 'tbsp', 20], [1, 'serving 1/4 cup', 83], [1, 'cup', 315]], ['Release 26 printed total sugars 67.90, more than its carbohydrate; Legacy’s 60.46 agrees with the individual sugars. The quarter-cup serving of 83 g does not agree with the cup and tablespoon.']),
  '19355': measured([[1, 'cup', 330], [1, 'tbsp', 21]], ['Total sugars equals carbohydrate by difference, not measured. No individual sugars.']),
  '19908': measured([[1, 'tsp', 4.6], [1, 'cup', 202]], ['Cup 202 g and teaspoon 4.6 g differ by 9 % in density, as published. No fibre row.']),
  '19911': measured([[60, 'milliliter', 80]], ['Lactose, maltose and galactose 0 are assumed by the release, not analysed.']),
  '19912': measured([[1, 'tsp', 6.9], [0.25, 'cup', 55]], ['Measures contradict each other: the teaspoon gives 1.40 g/mL, the quarter cup 0.93 g/mL, impossible for a syrup. Use the teaspoon.']),
  '20038': measured([[1, 'cup', 156]], ['No total or individual sugars in any release read; rolled oats 08120 have them.']),
  '20444': measured([[1, 'cup', 185]], ['No individual sugars.']),
  '90480': measured([[1, 'serving', 21]], ['Total sugars is derived and slightly above carbohydrate by difference. No individual sugars.']),
};

/** Where a household measure of a record is printed. */
export function measurePlace(record: string, measure: string): string {
  return `Release ${fromRelease26.includes(record) ? 26 : 28}, record ${record}, ${measure}`;
}
