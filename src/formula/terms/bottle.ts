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
        rule: (x) => x.of('drinkSugarMost') + x.of('bottleSugar'),
      },
      measured: {
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
        rule: (x) => Math.max(x.of('bottleTemperature'), fermenting.forgottenTemperature.value),
      },
    },
  },
} satisfies Record<string, Term>;
