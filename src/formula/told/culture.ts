import type { ToldWays } from './told-ways';

export const cultureTold = {
  sugarRate: {
    usual: {
      words:
        'The usual addition, as hexose per litre of milk, lowered by native sugar above what counts for nothing, never below 0.',
      formula: '{sugarUsual} − ({nativeSugar} − {nativeThreshold}, if above 0), never below 0',
    },
    none: { words: 'Nothing the grains can ferment is added.', formula: '0' },
    fromMass: {
      words: 'The sweetener you typed, as hexose, per litre of milk.',
      formula: '1000 × {sweetenerMass} × {fermentable} ÷ {milkVolume}',
    },
    fromStart: {
      words: 'The sugar wanted at the start, less what is native.',
      formula: '{startingSugar} − {nativeSugar}',
    },
  },
  sweetenerMass: {
    rate: {
      words: 'Sugar added per litre times the milk, divided by the fermentable sugar in a gram of the sweetener.',
      formula: '{sugarRate} × {milkVolume} ÷ 1000 ÷ {fermentable}',
    },
    fromCane: {
      words: 'The cane sugar you typed, at equal fermentable sugar.',
      formula: '{caneEquivalent} × {caneFermentable} ÷ {fermentable}',
    },
  },
  caneEquivalent: {
    equal: {
      words: 'White cane sugar with the same fermentable sugar: masses go as 1 over what a gram holds.',
      formula: '{sweetenerMass} × {fermentable} ÷ {caneFermentable}',
    },
  },
  startingSugar: {
    sum: {
      words: 'Native sugar of the milk and the sugar added, as hexose per litre of milk.',
      formula: '{nativeSugar} + {sugarRate}',
    },
  },
  grainRate: {
    usual: { words: 'The usual dose of this kind of grains, per litre of milk.', formula: '{usualDose}' },
    fromMass: { words: 'The grains you typed, per litre of milk.', formula: '1000 × {grainMass} ÷ {milkVolume}' },
  },
  grainMass: {
    rate: { words: 'Grains per litre times the milk.', formula: '{grainRate} × {milkVolume} ÷ 1000' },
  },
} as const satisfies ToldWays;
