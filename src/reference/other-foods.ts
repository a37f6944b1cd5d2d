import { type Food, food } from './foods';

// The columns are those of `foods.ts`.
// biome-ignore format: one food a line is what makes a slip in a column visible
const table = {
  '01077': food('01077', 'Milk, whole, 3.25% milkfat, with added vitamin D', [88.13, 3.15, 3.25, 4.8, 0, 5.05, 0, 0, 0, 0, 5.05, 0, null, 0.67]),
  '01079': food('01079', 'Milk, reduced fat, fluid, 2% milkfat, with added vitamin A and vitamin D', [89.21, 3.3, 1.98, 4.8, 0, 5.06, 0.01, 0.01, 0.01, 0.01, 5.01, 0.02, null, 0.71]),
  '01085': food('01085', 'Milk, nonfat, fluid, with added vitamin A and vitamin D (fat free or skim)', [90.84, 3.37, 0.08, 4.96, 0, 5.09, 0, 0, 0, 0, 5.09, 0, null, 0.75]),
  '01151': food('01151', 'Milk, nonfat, fluid, without added vitamin A and vitamin D (fat free or skim)', [90.84, 3.37, 0.08, 4.96, 0, 5.09, 0, 0, 0, 0, 5.09, 0, null, 0.75]),
  '09087': food('09087', 'Dates, deglet noor', [20.53, 2.45, 0.39, 75.03, 8, 63.35, 23.84, 19.87, 19.56, 0.12, 0, 0, null, 1.6]),
  '12109': food('12109', 'Nuts, coconut meat, dried (desiccated), sweetened, flaked, packaged', [15.46, 3.13, 27.99, 51.85, 9.9, 36.75, 36.21, 0.53, 0.01, 0, 0, 0, 0, 1.57]),
  '12117': food('12117', 'Nuts, coconut milk, raw (liquid expressed from grated meat and water)', [67.62, 2.29, 23.84, 5.54, 2.2, 3.34, null, null, null, null, null, null, null, 0.72]),
  '12121': food('12121', 'Nuts, hazelnuts or filberts, blanched', [5.79, 13.7, 61.15, 17, 11, 3.49, 3.35, 0.07, 0.07, 0, 0, null, 0.93, 2.36]),
  '12177': food('12177', 'Nuts, coconut meat, dried (desiccated), creamed', [1.67, 5.3, 69.08, 21.52, null, null, null, null, null, null, null, null, null, 2.44]),
  '14411': food('14411', 'Beverages, water, tap, drinking', [99.9, 0, 0, 0, 0, 0, null, null, null, null, null, null, null, 0.1]),
  '14429': food('14429', 'Beverages, water, tap, municipal', [99.9, 0, 0, 0, 0, 0, null, null, null, null, null, null, null, 0.1]),
  '19336': food('19336', 'Sugars, powdered', [0.23, 0, 0, 99.77, 0, 97.81, null, 0, 0, 0, 0, 0, 1.26, 0.01]),
  '19349': food('19349', 'Syrups, corn, dark', [22.01, 0, 0, 77.59, 0, 77.59, null, null, null, null, null, null, null, 0.4]),
  '19911': food('19911', 'Syrup, maple, Canadian', [32.15, 0, 0, 67.38, 0, 59.92, 58.93, 0.65, 0.34, 0, 0, 0, null, 0.47]),
  '20038': food('20038', 'Oats', [8.22, 16.89, 6.9, 66.27, 10.6, null, null, null, null, null, null, null, null, 1.72]),
} satisfies Record<string, Food>;

export type OtherFoodId = keyof typeof table;

/** USDA records that no source or sweetener is made of: for looking up, and for checks. */
export const otherFoods: Readonly<Record<OtherFoodId, Food>> = table;
