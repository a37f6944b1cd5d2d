import { fermenting } from '../../reference/fermenting';
import { countedUnder } from '../left-out';
import { gasFromSugar, saturationAt } from '../models/fizz';
import { isWithinModels, timesAsLong, usedAfter } from '../models/ripening';
import type { Term } from '../row';

/** What a sealed bottle comes from. */
export const bottleTerms = {
  liquid: {
    label: 'Liquid in the jars, the room of the grains taken off',
    symbol: 'V_L',
    kind: 'volume',
    ways: {
      fill: {
        words: 'The fill of all jars less the room of the grains.',
        formula: '{totalFill} − {grainMass} ÷ {grainDensity}',
        rule: (x) => x.of('totalFill') - x.of('grainMass') / x.c('grainDensity'),
      },
    },
  },
  drinkSugar: {
    label: 'Sugar at the start, per litre of liquid',
    symbol: 's_L',
    kind: 'concentration',
    ways: {
      perLiquid: {
        words: 'The sugar at the start, shared by all the liquid that holds it.',
        formula: '{startingSugar} × {milkVolume} ÷ {liquid}',
        rule: (x) => (x.of('startingSugar') * x.of('milkVolume')) / x.of('liquid'),
      },
    },
  },
  drinkSugarMost: {
    label: 'Sugar at the start per litre of liquid, at most',
    symbol: 's_L₊',
    kind: 'concentration',
    ways: {
      perLiquid: {
        words: 'The same, with as much sugar as the tables leave open.',
        formula: '({startingSugar} + {sugarUnsure}) × {milkVolume} ÷ {liquid}',
        rule: (x) => ((x.of('startingSugar') + x.of('sugarUnsure')) * x.of('milkVolume')) / x.of('liquid'),
      },
    },
  },
  waterShare: {
    label: 'Share of the liquid that is water',
    symbol: 'ω',
    kind: 'count',
    unit: 'mL/mL',
    ways: {
      ofMilk: {
        words: 'The water of the milk, by volume, over all the liquid: gas dissolves in water only.',
        formula: '(1 − {milkSolids} ÷ 100) × {milkDensity} ÷ {waterDensity} × {milkVolume} ÷ {liquid}',
        rule: (x) =>
          ((((1 - x.of('milkSolids') / 100) * x.of('milkDensity')) / x.of('waterDensity')) * x.of('milkVolume')) /
          x.of('liquid'),
      },
    },
  },
  bottleRoom: {
    label: 'Gas space per mL of liquid in the bottle',
    symbol: 'r_g',
    kind: 'count',
    unit: 'mL/mL',
    ways: {
      ofBottle: {
        words: 'What is left empty, over what is filled.',
        formula: '{bottleHeadspace} ÷ ({bottleVolume} − {bottleHeadspace})',
        rule: (x) => {
          const room = x.of('bottleHeadspace');
          return room / (x.of('bottleVolume') - room);
        },
      },
    },
  },
  dissolvedGas: {
    label: 'Gas dissolved when strained, at most',
    symbol: 'c₀',
    kind: 'count',
    unit: 'mol/m³',
    ways: {
      saturated: {
        words: 'What water holds at the temperature of the first ferment under carbon dioxide at one atmosphere.',
        formula: '{solubilityRoom} × {atmosphere}',
        rule: (x) => saturationAt(x.of('roomTemperature')),
      },
    },
  },
  bottleReady: {
    label: 'The ready time at the temperature of the bottle',
    symbol: 't_b',
    kind: 'time',
    ways: {
      atBottle: {
        words: 'The ready time, as long as the temperature of the bottle would take it.',
        formula: '{readyTime} × {asLongInBottle} ÷ {asLong}',
        rule: (x) => {
          const celsius = x.of('bottleTemperature');
          if (!isWithinModels(celsius)) return Number.NaN;
          const { likely } = timesAsLong(celsius, x.choices.grain.readyTemperature.value);
          return (x.of('readyTime') * likely) / x.of('asLong');
        },
      },
    },
  },
  bottleUsed: {
    label: 'Share of the sugar used in the bottle',
    symbol: 'u₂',
    kind: 'count',
    ways: {
      firstOrder: {
        words: 'What the hours allow, at the pace that is left without the grains.',
        formula: '1 − (1 − {usedWhenReady})^({bottleTime} × {withoutGrains} ÷ {bottleReady})',
        rule: (x) => usedAfter((x.of('bottleTime') * x.c('withoutGrains')) / x.of('bottleReady'), x.c('usedWhenReady')),
      },
    },
  },
  gasLikely: {
    label: 'Gas in the bottle, likely',
    symbol: 'n₁',
    kind: 'count',
    unit: 'mol/m³',
    ways: {
      hours: {
        words:
          'What stayed dissolved through straining, and two of gas for each hexose that yeast uses in these hours.',
        formula:
          '{carriedOver} × {dissolvedGas} + 2 × 1000 × {yeastShare} × {bottleUsed} × ({sugarLeft} + {bottleSugar}) ÷ {hexoseMass}',
        rule: (x) => {
          const used = x.of('bottleUsed') * (x.of('sugarLeft') + x.of('bottleSugar'));
          return x.c('carriedOver') * x.of('dissolvedGas') + gasFromSugar(x.c('yeastShare') * used);
        },
      },
    },
  },
  sugarForgotten: {
    label: 'Sugar that a forgotten bottle can turn to gas',
    symbol: 's_f',
    kind: 'concentration',
    ways: {
      all: {
        words: 'All that there may have been at the start, since nobody measured what is left, and all that is added.',
        formula: '{drinkSugarMost} + {bottleSugar}',
        rule: (x) => x.of('drinkSugarMost') + x.of('bottleSugar'),
      },
      measured: {
        words: 'What was measured to be left, and all that is added.',
        formula: '{sugarLeft} + {bottleSugar}',
        rule: (x) => x.of('sugarLeft') + x.of('bottleSugar'),
      },
    },
  },
  gasForgotten: {
    label: 'Gas in a forgotten bottle, at most',
    symbol: 'n₂',
    kind: 'count',
    unit: 'mol/m³',
    ways: {
      bound: {
        words: 'All that can be dissolved already, and two of gas for each hexose, all through yeast.',
        formula: '{dissolvedGas} + 2 × 1000 × {sugarForgotten} ÷ {hexoseMass}',
        rule: (x) => x.of('dissolvedGas') + gasFromSugar(x.of('sugarForgotten')),
      },
    },
  },
  limitCounted: {
    label: 'Pressure by these sums that the limit leaves room for',
    symbol: 'p_c',
    kind: 'pressure',
    ways: {
      counted: {
        words:
          'What these sums may come to under that limit: they leave out some for warm air, vapour and swelling, and some more for each bar, since no gas is ideal; never below 0.',
        formula:
          '2 × ({bottleLimit} − {leftOut}) ÷ (1 + √(1 + 4 × {realGas} × ({bottleLimit} − {leftOut}))), never below 0',
        rule: (x) => countedUnder(x.of('bottleLimit')),
      },
    },
  },
  forgottenHeat: {
    label: 'Temperature of a forgotten bottle',
    symbol: 'T_f',
    kind: 'temperature',
    ways: {
      warmer: {
        words: 'The warmer of the bottle’s temperature and a warm kitchen.',
        formula: 'the warmer of {bottleTemperature}, {warmKitchen}',
        rule: (x) => Math.max(x.of('bottleTemperature'), fermenting.forgottenTemperature.value),
      },
    },
  },
} satisfies Record<string, Term>;
