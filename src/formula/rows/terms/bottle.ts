import { countedUnder } from '../pressure-left-out';
import type { Ways } from '../row';

/** What a sealed bottle comes from. */
export const bottleTerms = {
  liquid: { fill: '{totalFill} − {grainMass} ÷ {grainDensity}' },
  drinkSugar: { perLiquid: '{startingSugar} × {milkVolume} ÷ {liquid}' },
  drinkSugarMost: { perLiquid: '({startingSugar} + {sugarUnsure}) × {milkVolume} ÷ {liquid}' },
  waterShare: { ofMilk: '(1 − {milkSolids} ÷ 100) × {milkDensity} ÷ {waterDensity} × {milkVolume} ÷ {liquid}' },
  bottleRoom: { ofBottle: '{bottleHeadspace} ÷ ({bottleVolume} − {bottleHeadspace})' },
  dissolvedGas: { saturated: '{solubilityRoom} × {atmosphere}' },
  bottleReady: { atBottle: '{readyTime} × {asLongInBottle} ÷ {asLong}' },
  bottleUsed: { firstOrder: '1 − (1 − {usedWhenReady})^({bottleTime} × {withoutGrains} ÷ {bottleReady})' },
  gasLikely: {
    hours:
      '{carriedOver} × {dissolvedGas} + 2 × 1000 × {yeastShare} × {bottleUsed} × ({sugarLeft} + {bottleSugar}) ÷ {hexoseMass}',
  },
  sugarForgotten: { all: '{drinkSugarMost} + {bottleSugar}', measured: '{sugarLeft} + {bottleSugar}' },
  gasForgotten: { bound: '{dissolvedGas} + 2 × 1000 × {sugarForgotten} ÷ {hexoseMass}' },
  limitCounted: { counted: (x) => countedUnder(x.of('bottleLimit')) },
  forgottenHeat: { warmer: 'the warmer of {bottleTemperature}, {warmKitchen}' },
} satisfies Record<string, Ways>;
