import type { NumericRow } from './row';

export const finalPH: NumericRow = {
  label: 'Acidity reached',
  kind: 'acidity',
  typed: 'measured',
  range: { least: 0, most: 14, zero: true },
  absent: () => 'measuredOnly',
  ways: { measured: '' },
};

export const drinkVolume: NumericRow = {
  label: 'Kefir to drink',
  kind: 'volume',
  typed: 'amount',
  weighing: 'milk',
  range: { least: 0.01, most: 500000 },
  ways: {
    strained: '{totalFill} − {grainMass} ÷ {grainDensity} − {grainMass} × {cling}, never below 0',
    whole: '{totalFill}',
    fromServings: '{servings} × {servingSize}',
  },
};

export const servingSize: NumericRow = {
  label: 'One glass',
  kind: 'volume',
  typed: 'rate',
  weighing: 'milk',
  range: { least: 5, most: 5000 },
  ways: { usual: '{servingUsual}', fromServings: '{drinkVolume} ÷ {servings}' },
};

export const servings: NumericRow = {
  label: 'Glasses',
  kind: 'count',
  typed: 'amount',
  range: { least: 0.01, most: 100000 },
  ways: { glasses: '{drinkVolume} ÷ {servingSize}' },
};
