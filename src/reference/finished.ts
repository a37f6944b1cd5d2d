import { type Coefficient, fromMemory, judgement, published } from './origins';

/** How much longer than meant a bottle is looked at, h: a night, a day, two, a week. */
export const leftTooLong: readonly number[] = [0, 12, 24, 48, 168];

/** How so many volumes of carbon dioxide drink, each up to `most`. */
export const liveliness = {
  bands: [
    { most: 0.9, words: 'hardly any fizz' },
    { most: 1.4, words: 'gentle fizz' },
    { most: 2.5, words: 'lively fizz' },
    { most: Number.POSITIVE_INFINITY, words: 'very lively: it may gush' },
  ],
  unit: 'volumes',
  origin: judgement('Water left open under carbon dioxide at room temperature holds 0.86 volumes; soda has 3 to 4.'),
} as const;

/** How sweet kefir tastes by the sugar left in it, g/L as hexose: up to `most` of it. Ours, for a sour drink. */
export const sweetness = {
  steps: [
    { most: 4, words: 'dry: hardly any sweetness left' },
    { most: 12, words: 'tart, with a little sweetness' },
    { most: 25, words: 'balanced, sweet and sour' },
    { most: Number.POSITIVE_INFINITY, words: 'clearly sweet' },
  ],
  unit: 'g/L',
  origin: judgement('Acid hides sweetness, and tongues differ; the steps are ours.'),
} as const;

/** Where law draws a line for what may be sold as not alcoholic, % by volume. */
export const alcoholLine: Coefficient = {
  value: 0.5,
  unit: '% ABV',
  origin: published('ttb-kombucha', 'information pages', 'In the US, when sold; other places draw other lines.'),
};

/** One volume of gas: a litre at 0 °C and 1 atm in a litre of liquid, as bottlers state it. */
export const gasVolume: Coefficient = {
  value: 1.977,
  unit: 'g/L',
  low: 1.96,
  high: 2,
  origin: fromMemory('Real gas; the trade rounds to 1.96 or 2.'),
};
