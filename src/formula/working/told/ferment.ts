import type { ToldWays } from './told-ways';

export const fermentTold = {
  finalPH: {
    measured: { words: 'Read off a strip or a meter; it is not worked out.' },
  },
  drinkVolume: {
    strained: {
      words: 'The fill of all jars, less the grains and the liquid clinging to them, never below 0.',
    },
    whole: { words: 'The fill of all jars: nothing is strained out of it.' },
    fromServings: { words: 'The glasses wanted times one glass.' },
  },
  servingSize: {
    usual: { words: 'The usual glass.' },
    fromServings: { words: 'The kefir shared among the glasses you typed.' },
  },
  servings: {
    glasses: { words: 'Kefir to drink divided by one glass.' },
  },
} as const satisfies ToldWays;
