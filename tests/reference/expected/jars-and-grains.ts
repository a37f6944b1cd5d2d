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
  'readyTemperature, °C': [21],
  // Near half through yeast in published series with either kind; the ends are a judgement.
  'yeastShare, share': [0.5, 0.2, 0.9],
};

const bothStarters: Figures = {
  // Nothing is strained out, so nothing clings and nothing slows down in the bottle.
  'cling, mL/g': [0],
  'withoutGrains, times as fast': [1, 0.7, 1.5],
  ...{ floats: false, dairy: true, 'takes.lactose': true, 'takes.galactose': true },
};

/** Figures of the grains: doses are common practice, rounded tablespoons from memory. */
export const grainFigures: Figures = {
  ...under('water', {
    ...bothGrains,
    ...{ 'dose, g/L': [54, 45, 65], 'tablespoon, g': [17.5, 15, 20] },
    // From memory: milk grains use more of the sugar at their dose, and give more fizz.
    'usedWhenReady, share': [0.35, 0.2, 0.5],
    // Common practice: 8 to 16 h in a room of 21 °C.
    'readyTime, h': [12, 8, 16],
    'withoutGrains, times as fast': [1.4, 0.5, 2],
    ...{ floats: false, dairy: false, 'takes.lactose': false, 'takes.galactose': true },
  }),
  ...under('milk', {
    ...bothGrains,
    ...{ 'dose, g/L': [31, 25, 40], 'tablespoon, g': [21.5, 18, 25] },
    'usedWhenReady, share': [0.4, 0.2, 0.6],
    // Judgements: an hour before water grains, and a little faster in the bottle.
    'readyTime, h': [11, 7, 16],
    'withoutGrains, times as fast': [1.5, 0.6, 2.2],
    ...{ floats: true, dairy: true, 'takes.lactose': true, 'takes.galactose': true },
  }),
  // Common practice: a packet of 1 to 5 g to a litre, 16 to 24 h at 22 to 25 °C.
  ...under('powder', {
    ...bothStarters,
    ...{ 'dose, g/L': [3, 1, 5], 'density, g/mL': [1.5, 1.3, 1.6], 'tablespoon, g': [9, 6, 11] },
    ...{ 'readyTime, h': [20, 16, 24], 'readyTemperature, °C': [(22 + 25) / 2] },
    ...{ 'usedWhenReady, share': [0.3, 0.15, 0.5], 'yeastShare, share': [0.3, 0.05, 0.9] },
    ...{ 'starter.ownSugar, g/g': [0.5, 0, 1], 'starter.ownAcid, g/g': [0, 0, 0.01] },
    ...{ 'starter.ownEthanol, g/g': [0], 'starter.packet, g': [3, 1, 5] },
  }),
  // A judgement: 3 % of the milk, 1 to 10 %; 8 to 24 h at 21 °C.
  ...under('kefir', {
    ...bothStarters,
    ...{ 'dose, g/L': [30, 10, 100], 'density, g/mL': [1.02, 1, 1.04], 'tablespoon, g': [15.1, 14.8, 15.4] },
    ...{ 'readyTime, h': [16, 8, 24], 'readyTemperature, °C': [21] },
    ...{ 'usedWhenReady, share': [0.35, 0.2, 0.6], 'yeastShare, share': [0.4, 0.1, 0.9] },
    ...{ 'starter.ownSugar, g/g': [0.015, 0, 0.045], 'starter.ownAcid, g/g': [0.007, 0.003, 0.013] },
    'starter.ownEthanol, g/g': [0.004, 0, 0.016],
  }),
};

/** Which notes of a culture can hurt: that it carries milk. */
export const grainNoteFigures: Figures = {
  ...{ 'milk.0.caution': true, 'powder.0.caution': true, 'kefir.0.caution': true },
};
