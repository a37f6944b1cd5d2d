import type { NumericRow } from '../row';

export const finalPH: NumericRow = {
  label: 'Acidity reached',
  symbol: 'pH',
  kind: 'acidity',
  typed: 'measured',
  range: { least: 0, most: 14, zero: true },
  absent: () => 'measuredOnly',
  ways: { measured: { rule: () => 0 } },
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
      rule: (x) =>
        Math.max(x.of('totalFill') - x.of('grainMass') / x.c('grainDensity') - x.of('grainMass') * x.c('cling'), 0),
    },
    fromServings: {
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
    usual: { rule: (x) => x.c('servingUsual') },
    fromServings: {
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
      rule: (x) => x.of('drinkVolume') / x.of('servingSize'),
    },
  },
};
