import { coefficientInEffect } from '../coefficients';
import type { Access, Term } from '../row';

/** An end of the days that are usual; a figure of the cook's own is never made longer. */
function keeps(x: Access, end: 'low' | 'high'): number {
  const days = x.of('keepDays');
  return coefficientInEffect('keepUsual', x.recipe, x.choices)[end] ?? days;
}

/** How long the kefir keeps. */
export const keepTerms = {
  keepLeast: {
    label: 'Keeps at the least',
    symbol: 'K₋',
    kind: 'count',
    unit: 'days',
    ways: {
      usual: {
        rule: (x) => keeps(x, 'low'),
      },
    },
  },
  keepMost: {
    label: 'Keeps at the most',
    symbol: 'K₊',
    kind: 'count',
    unit: 'days',
    ways: {
      usual: {
        rule: (x) => keeps(x, 'high'),
      },
    },
  },
} satisfies Record<string, Term>;
