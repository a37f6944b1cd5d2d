import type { NumericRow } from './row';

export const keepDays: NumericRow = {
  label: 'Keeps in the fridge',
  kind: 'count',
  unit: 'days',
  typed: 'never',
  range: { least: 0, most: 365 },
  bounds: { low: 'keepLeast', high: 'keepMost' },
  ways: { usual: '{keepUsual}' },
};
