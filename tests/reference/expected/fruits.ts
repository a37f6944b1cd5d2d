import type { Figures } from './figures';

/**
 * USDA SR, Release 26: sucrose, glucose and fructose in g per 100 g, the hexose worked out from them beside the table as
 * it was read (1.05263 × sucrose + glucose + fructose), and grams of a cup and of a piece.
 */
export const printedFruits = {
  raspberries: [0.2, 1.86, 2.35, 4.421, 123, 19 / 10],
  strawberries: [0.47, 1.99, 2.44, 4.925, 152, 12],
  blueberries: [0.11, 4.88, 4.97, 9.966, 148, 68 / 50],
  banana: [2.39, 4.98, 4.85, 12.356, 225, 118],
  mango: [6.97, 2.01, 4.68, 14.027, 165, 336],
  pineapple: [5.99, 1.73, 2.12, 10.155, 165, null],
  sourCherries: [0.8, 4.18, 3.51, 8.532, 155, null],
  sweetCherries: [0.15, 6.59, 5.37, 12.834, 154, null],
  // Release 26 has single sugars of apples to 0.01 g; the hexose was worked out from more digits.
  apple: [2.07, 2.43, 5.9, 10.509, null, 182],
  peach: [4.76, 1.95, 1.53, 8.635, null, 150],
  driedFigs: [0.07, 24.79, 22.93, 47.8, null, 8.4],
  raisins: [0.45, 27.75, 29.68, 57.9, null, 26 / 50],
  driedApricots: [7.89, 33.08, 12.47, 53.9, null, 3.5],
  orangeJuice: [4.01, 2.08, 2.23, 8.531, 249, null],
  appleJuice: [1.26, 2.63, 5.73, 9.686, 248, null],
  grapeJuice: [0.04, 6.81, 7.36, 14.212, 253, null],
  pineappleJuice: [1.53, 4.65, 3.81, 10.071, 250, null],
  pomegranateJuice: [0, 6.28, 6.37, 12.65, 249, null],
  lemonJuice: [0.43, 0.99, 1.1, 2.543, 244, 48],
} as const;

/** What the hexose has beside those three: maltose and galactose. */
const others: Readonly<Record<string, number>> = {
  ...{ banana: 0.01, peach: 0.144, sweetCherries: 0.716, driedApricots: 0.045 },
};

export const fruitFigures: Figures = Object.fromEntries(
  Object.entries(printedFruits).flatMap(([id, [sucrose, glucose, fructose, , cupGrams, pieceGrams]]) =>
    Object.entries({ sucrose, glucose, fructose, otherHexose: others[id] ?? 0, cupGrams, pieceGrams }).map(
      ([part, grams]) => [`${id}.${part}`, grams],
    ),
  ),
);

// USDA SR, Release 26: vanilla extract tsp 4.2 g, cocoa powder tbsp 5.4 g, ground cinnamon tsp 2.6 g, table salt tsp 6 g.
const tablespoon = (231 * 2.54 ** 3) / 256;
const teaspoon = tablespoon / 3;

export const flavourFigures: Figures = {
  ...{ 'vanilla.spoon.grams': 4.2, 'vanilla.spoon.millilitres': teaspoon },
  ...{ 'cocoa.spoon.grams': 5.4, 'cocoa.spoon.millilitres': tablespoon },
  ...{ 'cinnamon.spoon.grams': 2.6, 'cinnamon.spoon.millilitres': teaspoon },
  ...{ 'salt.spoon.grams': 6, 'salt.spoon.millilitres': teaspoon },
};
