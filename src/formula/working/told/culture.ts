import type { ToldWays } from './told-ways';

export const cultureTold = {
  sugarRate: {
    usual: {
      words:
        'The usual addition, as hexose per litre of milk, lowered by native sugar above what counts for nothing, never below 0.',
    },
    none: { words: 'Nothing that can be fermented is added.' },
    fromMass: {
      words: 'The sweetener you typed, as hexose, per litre of milk.',
    },
    fromStart: {
      words: 'The sugar wanted at the start, less what is native.',
    },
  },
  sweetenerMass: {
    rate: {
      words: 'Sugar added per litre times the milk, divided by the fermentable sugar in a gram of the sweetener.',
    },
    fromCane: {
      words: 'The cane sugar you typed, at equal fermentable sugar.',
    },
  },
  caneEquivalent: {
    equal: {
      words: 'White cane sugar with the same fermentable sugar: masses go as 1 over what a gram holds.',
    },
  },
  startingSugar: {
    sum: {
      words: 'Native sugar of the milk and the sugar added, as hexose per litre of milk.',
    },
  },
  grainRate: {
    usual: { words: 'The usual dose of this culture, per litre of milk.' },
    fromMass: { words: 'The culture you typed, per litre of milk.' },
  },
  grainMass: {
    rate: { words: 'Culture per litre times the milk.' },
  },
} as const satisfies ToldWays;
