import type { ToldWays } from './told-ways';

export const bottleTold = {
  sugarLeft: {
    likely: {
      words: 'What is likely left when it is ready to taste: an estimate. A forgotten bottle is worked out without it.',
      formula: '{drinkSugar} × (1 − {usedWhenReady})',
    },
  },
  bottleSugar: {
    none: { words: 'Nothing, unless you say otherwise.', formula: '0' },
  },
  bottleTime: {
    usual: {
      words: 'The usual second ferment, sealed, without the grains. Type 0 for none.',
      formula: '{bottleTimeUsual}',
    },
  },
  bottleTemperature: {
    room: { words: 'It stands in the same room.', formula: '{roomTemperature}' },
  },
  bottleVolume: {
    usual: { words: 'The usual bottle.', formula: '{bottleVolumeUsual}' },
  },
  bottleHeadspace: {
    usual: { words: 'The usual share of a bottle.', formula: '{bottleRoomUsual} × {bottleVolume}' },
  },
  bottleCount: {
    fewest: {
      words: 'The fewest bottles that take all the kefir.',
      formula: '{drinkVolume} ÷ ({bottleVolume} − {bottleHeadspace}), rounded up',
    },
  },
  bottlePressureLikely: {
    sealed: {
      words:
        'The gas shared between the water of the liquid and the empty space, at the temperature of the bottle, above the air outside. An estimate: it can come out higher.',
      formula:
        '{gasLikely} ÷ ({solubilityBottle} × {waterShare} + {bottleRoom} ÷ ({gasConstant} × {kelvinBottle})) ÷ {pascalPerBar}',
    },
  },
  bottlePressureForgotten: {
    sealed: {
      words:
        'All the sugar there was or is added turns to gas, in a warm kitchen, with what was dissolved already. Warm air, vapour, the swelling of the liquid and that no gas is ideal are left out, so it can come out higher still; they are counted where it is held against the maker’s limit.',
      formula:
        '{gasForgotten} ÷ ({solubilityForgotten} × {waterShare} + {bottleRoom} ÷ ({gasConstant} × {kelvinForgotten})) ÷ {pascalPerBar}',
    },
  },
  bottleLimit: {
    typed: { words: 'As the maker of the bottle states it.', formula: '' },
  },
  bottleSugarMost: {
    underLimit: {
      words:
        'The sugar, left and added together, that would bring a forgotten bottle just to that limit, what the sums leave out taken off it and what is dissolved already counted first; never below 0.',
      formula:
        '({limitCounted} × {pascalPerBar} × ({solubilityForgotten} × {waterShare} + {bottleRoom} ÷ ({gasConstant} × {kelvinForgotten})) − {dissolvedGas}) × {hexoseMass} ÷ 2 ÷ 1000, never below 0',
    },
  },
  liquid: {
    fill: {
      words: 'The fill of all jars less the room of the grains.',
      formula: '{totalFill} − {grainMass} ÷ {grainDensity}',
    },
  },
  drinkSugar: {
    perLiquid: {
      words: 'The sugar at the start, shared by all the liquid that holds it.',
      formula: '{startingSugar} × {milkVolume} ÷ {liquid}',
    },
  },
  drinkSugarMost: {
    perLiquid: {
      words: 'The same, with as much sugar as the tables leave open.',
      formula: '({startingSugar} + {sugarUnsure}) × {milkVolume} ÷ {liquid}',
    },
  },
  waterShare: {
    ofMilk: {
      words: 'The water of the milk, by volume, over all the liquid: gas dissolves in water only.',
      formula: '(1 − {milkSolids} ÷ 100) × {milkDensity} ÷ {waterDensity} × {milkVolume} ÷ {liquid}',
    },
  },
  bottleRoom: {
    ofBottle: {
      words: 'What is left empty, over what is filled.',
      formula: '{bottleHeadspace} ÷ ({bottleVolume} − {bottleHeadspace})',
    },
  },
  dissolvedGas: {
    saturated: {
      words: 'What water holds at the temperature of the first ferment under carbon dioxide at one atmosphere.',
      formula: '{solubilityRoom} × {atmosphere}',
    },
  },
  bottleReady: {
    atBottle: {
      words: 'The ready time, as long as the temperature of the bottle would take it.',
      formula: '{readyTime} × {asLongInBottle} ÷ {asLong}',
    },
  },
  bottleUsed: {
    firstOrder: {
      words: 'What the hours allow, at the pace that is left without the grains.',
      formula: '1 − (1 − {usedWhenReady})^({bottleTime} × {withoutGrains} ÷ {bottleReady})',
    },
  },
  gasLikely: {
    hours: {
      words: 'What stayed dissolved through straining, and two of gas for each hexose that yeast uses in these hours.',
      formula:
        '{carriedOver} × {dissolvedGas} + 2 × 1000 × {yeastShare} × {bottleUsed} × ({sugarLeft} + {bottleSugar}) ÷ {hexoseMass}',
    },
  },
  sugarForgotten: {
    all: {
      words: 'All that there may have been at the start, since nobody measured what is left, and all that is added.',
      formula: '{drinkSugarMost} + {bottleSugar}',
    },
    measured: { words: 'What was measured to be left, and all that is added.', formula: '{sugarLeft} + {bottleSugar}' },
  },
  gasForgotten: {
    bound: {
      words: 'All that can be dissolved already, and two of gas for each hexose, all through yeast.',
      formula: '{dissolvedGas} + 2 × 1000 × {sugarForgotten} ÷ {hexoseMass}',
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
      formula: 'the warmer of {bottleTemperature}, {warmKitchen}',
    },
  },
} as const satisfies ToldWays;
