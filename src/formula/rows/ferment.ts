import type { NumericRow } from '../row';

export const finalPH: NumericRow = {
  label: 'Acidity reached',
  symbol: 'pH',
  kind: 'acidity',
  typed: 'measured',
  range: { least: 0, most: 14, zero: true },
  absent: () => 'measuredOnly',
  ways: { measured: { words: 'Read off a strip or a meter; it is not worked out.', formula: '', rule: () => 0 } },
};

export const drinkVolume: NumericRow = {
  label: 'Kefir to drink, grains out',
  symbol: 'D',
  kind: 'volume',
  typed: 'amount',
  weighing: 'milk',
  range: { least: 0.01, most: 500000 },
  ways: {
    strained: {
      words: 'The fill of all jars, less the grains and the liquid clinging to them, never below 0.',
      formula: '{totalFill} − {grainMass} ÷ {grainDensity} − {grainMass} × {cling}, never below 0',
      rule: (x) =>
        Math.max(x.of('totalFill') - x.of('grainMass') / x.c('grainDensity') - x.of('grainMass') * x.c('cling'), 0),
    },
    fromServings: {
      words: 'The glasses wanted times one glass.',
      formula: '{servings} × {servingSize}',
      rule: (x) => x.of('servings') * x.of('servingSize'),
    },
  },
};

export const servingSize: NumericRow = {
  label: 'One glass',
  symbol: 'G₁',
  kind: 'volume',
  typed: 'rate',
  weighing: 'milk',
  range: { least: 5, most: 5000 },
  ways: {
    usual: { words: 'The usual glass.', formula: '{servingUsual}', rule: (x) => x.c('servingUsual') },
    fromServings: {
      words: 'The kefir shared among the glasses you typed.',
      formula: '{drinkVolume} ÷ {servings}',
      rule: (x) => x.of('drinkVolume') / x.of('servings'),
    },
  },
};

export const servings: NumericRow = {
  label: 'Glasses',
  symbol: 'N_g',
  kind: 'count',
  typed: 'amount',
  range: { least: 0.01, most: 100000 },
  ways: {
    glasses: {
      words: 'Kefir to drink divided by one glass.',
      formula: '{drinkVolume} ÷ {servingSize}',
      rule: (x) => x.of('drinkVolume') / x.of('servingSize'),
    },
  },
};
