import type { ToldWays } from './told-ways';

export const sugarTold = {
  nativeSugar: {
    balance: {
      words: 'The sugar of the source that reaches the milk, turned into hexose, per litre of milk.',
    },
  },
  fermentable: {
    composition: {
      words: 'glucose + fructose + (sucrose + maltose) × 1.0526, and what else these grains take, per g of sweetener.',
    },
  },
  sugarUnsure: {
    ranges: {
      words:
        'How much more than the likely figure the milk and the sweetener may bring, where a table does not say which sugars there are, or a label has not been read; 0 where it is known.',
    },
  },
  caneFermentable: {
    composition: { words: 'sucrose × 1.0526, per g of granulated sugar.' },
  },
  sweetenerRoom: {
    composition: {
      words: 'Its dry part at the room of dissolved sugar, its water as water, mL per g.',
    },
  },
  sweetenerWeight: {
    spoon: {
      words: 'From the published weight of a level spoon or cup of it.',
      formula: '{spoonWeight} ÷ {spoonVolume}',
    },
  },
  caneWeight: {
    spoon: {
      words: 'From the published weight of a level spoon of granulated sugar.',
      formula: '{caneSpoonWeight} ÷ {caneSpoonVolume}',
    },
  },
} as const satisfies ToldWays;
