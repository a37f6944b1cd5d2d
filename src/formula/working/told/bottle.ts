import type { ToldWays } from './told-ways';

export const bottleTold = {
  sugarLeft: {
    likely: {
      words: 'What is likely left when it is ready to taste: an estimate. A forgotten bottle is worked out without it.',
    },
  },
  bottleSugar: {
    none: { words: 'Nothing, unless you say otherwise.' },
  },
  bottleTime: {
    usual: {
      words: 'None until you ask for one: type its hours, such as 8 h. It stands sealed, without the grains.',
    },
  },
  bottleTemperature: {
    room: { words: 'It stands in the same room.' },
  },
  bottleVolume: {
    usual: { words: 'The usual bottle.' },
  },
  bottleHeadspace: {
    usual: { words: 'The usual share of a bottle.' },
  },
  bottleCount: {
    fewest: {
      words: 'The fewest bottles that take all the kefir.',
    },
  },
  bottlePressureLikely: {
    sealed: {
      words:
        'The gas shared between the water of the liquid and the empty space, at the temperature of the bottle, above the air outside. An estimate with a wide range.',
    },
  },
  bottlePressureForgotten: {
    sealed: {
      words:
        'All the sugar there was or is added turns to gas, in a warm kitchen, with what was dissolved already. Warm air, vapour, the swelling of the liquid and that no gas is ideal are left out, so it can come out higher still; they are counted where it is held against the maker’s limit.',
    },
  },
  bottleLimit: {
    typed: { words: 'As the maker of the bottle states it.' },
  },
  bottleSugarMost: {
    underLimit: {
      words:
        'The sugar, left and added together, that would bring a forgotten bottle just to that limit, what the sums leave out taken off it and what is dissolved already counted first; never below 0.',
    },
  },
  liquid: {
    fill: {
      words: 'The fill of all jars less the room of the grains.',
    },
    whole: { words: 'The fill of all jars: the starter is liquid too.' },
  },
  drinkSugar: {
    perLiquid: {
      words: 'The sugar at the start, shared by all the liquid that holds it.',
    },
    withStarter: { words: 'The sugar at the start, and what the starter brings, shared by all the liquid.' },
  },
  drinkSugarMost: {
    perLiquid: {
      words: 'The same, with as much sugar as the tables leave open.',
    },
    withStarter: { words: 'The same, with as much sugar as tables and starter leave open.' },
  },
  waterShare: {
    ofMilk: {
      words: 'The water of the milk, by volume, over all the liquid: gas dissolves in water only.',
    },
  },
  bottleRoom: {
    ofBottle: {
      words: 'What is left empty, over what is filled.',
    },
  },
  dissolvedGas: {
    saturated: {
      words: 'What water holds at the temperature of the first ferment under carbon dioxide at one atmosphere.',
    },
  },
  bottleReady: {
    atBottle: {
      words: 'The ready time, as long as the temperature of the bottle would take it.',
    },
  },
  bottleUsed: {
    firstOrder: {
      words: 'What the hours allow, at the pace that is left without the grains.',
    },
  },
  gasLikely: {
    hours: {
      words: 'What stayed dissolved through straining, and two of gas for each hexose that yeast uses in these hours.',
    },
  },
  gasLeast: {
    all: { words: 'As the likely gas, with the least that each of its estimates may be.' },
    measured: { words: 'As the likely gas, of the sugar measured, with the least that each estimate may be.' },
  },
  gasMost: {
    all: { words: 'As the likely gas, with the most that each of its estimates may be.' },
    measured: { words: 'As the likely gas, of the sugar measured, with the most that each estimate may be.' },
  },
  pressureLeast: { least: { words: 'The pressure of the least gas, in the same bottle.' } },
  pressureMost: { most: { words: 'The pressure of the most gas, in the same bottle.' } },
  sugarForgotten: {
    all: {
      words: 'All that there may have been at the start, since nobody measured what is left, and all that is added.',
    },
    measured: { words: 'What was measured to be left, and all that is added.' },
  },
  gasForgotten: {
    bound: {
      words: 'All that can be dissolved already, and two of gas for each hexose, all through yeast.',
    },
  },
  limitCounted: {
    counted: {
      words:
        'What these sums may come to under that limit: they leave out some for warm air, vapour and swelling, and some more for each bar, since no gas is ideal; never below 0.',
      formula:
        '2 × ({bottleLimit} − {leftOut}) ÷ (1 + √(1 + 4 × {realGas} × ({bottleLimit} − {leftOut}))), never below 0',
    },
  },
  forgottenHeat: {
    warmer: {
      words: 'The warmer of the bottle’s temperature and a warm kitchen.',
    },
  },
} as const satisfies ToldWays;
