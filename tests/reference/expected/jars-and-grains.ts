import { type Figures, type Spread, under } from './figures';

// Jars are from memory: neck 7.6 cm wide or 6.0 cm regular, neck height 2.0 to 2.5 cm, shoulder 1 to 2 cm, body 8.0 cm
// (pint, half-litre), 9.0 cm (quart, litre), 11.5 cm (half-gallon, two litres), 14 cm (gallon, four litres); brimful 4
// to 8 % above the nominal size. US sizes: NIST Handbook 44, Appendix C, a gallon is 231 cubic inches.
const gallon = 231 * 2.54 ** 3;
const wide: Spread = [7.6, 7.2, 7.8];
const regular: Spread = [6, 5.8, 6.3];
const big: Spread = [10, 8.5, 11.5];

function jar(nominal: number, neck: Spread, body: Spread): Figures {
  return {
    nominal,
    'brimful, mL': [nominal + (6 * nominal) / 100, nominal + (4 * nominal) / 100, nominal + (8 * nominal) / 100],
    'neckDiameter, cm': neck,
    'neckHeight, cm': [2.25, 2, 2.5],
    'shoulderHeight, cm': [1.5, 1, 2],
    'bodyDiameter, cm': body,
  };
}

/** Figures of the jars. */
export const jarFigures: Figures = {
  ...under('pint', jar(gallon / 8, wide, [8, 7.5, 8.5])),
  ...under('halfLitre', jar(500, wide, [8, 7.6, 9])),
  ...under('litre', jar(1000, wide, [9, 8.5, 9.8])),
  ...under('quartWide', jar(gallon / 4, wide, [9, 8.5, 9.5])),
  ...under('quartRegular', jar(gallon / 4, regular, [9, 8.5, 9.5])),
  ...under('litreAndHalf', jar(1500, wide, [10.5, 9.8, 11.2])),
  ...under('halfGallon', jar(gallon / 2, wide, [11.5, 10.8, 12.2])),
  ...under('twoLitre', jar(2000, wide, [11.5, 10.8, 12.8])),
  ...under('threeLitre', jar(3000, [8, 7.2, 10], [13, 12.5, 15])),
  ...under('gallon', jar(gallon, big, [14, 13.5, 16])),
  ...under('fourLitre', jar(4000, big, [14, 13.5, 16.5])),
  ...under('fiveLitre', jar(5000, big, [16.5, 15.5, 18])),
  // Starts as the litre jar, with no range: it is to be measured.
  ...under('own', {
    ...{ nominal: 1000, 'brimful, mL': [1060], 'neckDiameter, cm': [7.6] },
    ...{ 'neckHeight, cm': [2.25], 'shoulderHeight, cm': [1.5], 'bodyDiameter, cm': [9] },
  }),
};

const bothGrains: Figures = {
  // From memory: drained grains weigh 1.0 to 1.1 g/mL, and 0.1 to 0.5 mL of liquid clings to a gram.
  'density, g/mL': [1.05, 1, 1.1],
  'cling, mL/g': [0.25, 0.1, 0.5],
  // Common practice: 8 to 16 h in a room of 21 °C.
  'readyTime, h': [12, 8, 16],
  'readyTemperature, °C': [21],
};

/** Figures of the grains: doses are common practice, rounded tablespoons from memory. */
export const grainFigures: Figures = {
  ...under('water', {
    ...bothGrains,
    ...{ 'dose, g/L': [54, 45, 65], 'tablespoon, g': [17.5, 15, 20] },
    // From memory: milk grains use more of the sugar at their dose, and give more fizz.
    'usedWhenReady, share': [0.35, 0.2, 0.5],
    ...{ floats: false, dairy: false, 'takes.lactose': false, 'takes.galactose': true },
  }),
  ...under('milk', {
    ...bothGrains,
    ...{ 'dose, g/L': [31, 25, 40], 'tablespoon, g': [21.5, 18, 25] },
    'usedWhenReady, share': [0.4, 0.2, 0.6],
    ...{ floats: true, dairy: true, 'takes.lactose': true, 'takes.galactose': true, 'notes.0.caution': true },
  }),
};
