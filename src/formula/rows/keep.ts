import type { NumericRow } from '../row';

export const keepDays: NumericRow = {
  label: 'Keeps in the fridge',
  symbol: 'K',
  kind: 'count',
  unit: 'days',
  typed: 'never',
  range: { least: 0, most: 365 },
  bounds: { low: 'keepLeast', high: 'keepMost' },
  ways: {
    usual: {
      rule: (x) => x.c('keepUsual'),
    },
  },
};
