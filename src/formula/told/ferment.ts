import type { ToldWays } from './told-ways';

export const fermentTold = {
  finalPH: {
    measured: { words: 'Read off a strip or a meter; it is not worked out.', formula: '' },
  },
  drinkVolume: {
    strained: {
      words: 'The fill of all jars, less the grains and the liquid clinging to them, never below 0.',
      formula: '{totalFill} − {grainMass} ÷ {grainDensity} − {grainMass} × {cling}, never below 0',
    },
    fromServings: { words: 'The glasses wanted times one glass.', formula: '{servings} × {servingSize}' },
  },
  servingSize: {
    usual: { words: 'The usual glass.', formula: '{servingUsual}' },
    fromServings: { words: 'The kefir shared among the glasses you typed.', formula: '{drinkVolume} ÷ {servings}' },
  },
  servings: {
    glasses: { words: 'Kefir to drink divided by one glass.', formula: '{drinkVolume} ÷ {servingSize}' },
  },
} as const satisfies ToldWays;
