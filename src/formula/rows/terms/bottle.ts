import { countedUnder } from '../pressure-left-out';
import type { Ways } from '../row';

const gas = (carried: string, yeast: string, pace: string, left: string): string =>
  `{${carried}} × {dissolvedGas} + 2 × 1000 × {${yeast}} × (1 − (1 − {usedWhenReady})^({bottleTime} × {${pace}} ÷ {bottleReady})) × (${left} + {bottleSugar}) ÷ {hexoseMass}`;
const pressure = (term: string): string =>
  `{${term}} ÷ ({solubilityBottle} × {waterShare} + {bottleRoom} ÷ ({gasConstant} × {kelvinBottle})) ÷ {pascalPerBar}`;

/** What a sealed bottle comes from. */
export const bottleTerms = {
  liquid: { fill: '{totalFill} − {grainMass} ÷ {grainDensity}', whole: '{totalFill}' },
  drinkSugar: {
    perLiquid: '{startingSugar} × {milkVolume} ÷ {liquid}',
    withStarter: '({startingSugar} × {milkVolume} + 1000 × {starterSugar} × {grainMass}) ÷ {liquid}',
  },
  drinkSugarMost: {
    perLiquid: '({startingSugar} + {sugarUnsure}) × {milkVolume} ÷ {liquid}',
    withStarter:
      '(({startingSugar} + {sugarUnsure}) × {milkVolume} + 1000 × {starterSugarMost} × {grainMass}) ÷ {liquid}',
  },
  waterShare: { ofMilk: '(1 − {milkSolids} ÷ 100) × {milkDensity} ÷ {waterDensity} × {milkVolume} ÷ {liquid}' },
  bottleRoom: { ofBottle: '{bottleHeadspace} ÷ ({bottleVolume} − {bottleHeadspace})' },
  dissolvedGas: { saturated: '{solubilityRoom} × {atmosphere}' },
  bottleReady: { atBottle: '{readyTime} × {asLongInBottle} ÷ {asLong}' },
  bottleUsed: { firstOrder: '1 − (1 − {usedWhenReady})^({bottleTime} × {withoutGrains} ÷ {bottleReady})' },
  gasLikely: {
    hours:
      '{carriedOver} × {dissolvedGas} + 2 × 1000 × {yeastShare} × {bottleUsed} × ({sugarLeft} + {bottleSugar}) ÷ {hexoseMass}',
  },
  gasLeast: {
    all: gas('carriedLeast', 'yeastLeast', 'paceLeast', '{drinkSugar} × (1 − {usedMost})'),
    measured: gas('carriedLeast', 'yeastLeast', 'paceLeast', '{sugarLeft}'),
  },
  gasMost: {
    all: gas('carriedMost', 'yeastMost', 'paceMost', '{drinkSugar} × (1 − {usedLeast})'),
    measured: gas('carriedMost', 'yeastMost', 'paceMost', '{sugarLeft}'),
  },
  pressureLeast: { least: pressure('gasLeast') },
  pressureMost: { most: pressure('gasMost') },
  sugarForgotten: { all: '{drinkSugarMost} + {bottleSugar}', measured: '{sugarLeft} + {bottleSugar}' },
  gasForgotten: { bound: '{dissolvedGas} + 2 × 1000 × {sugarForgotten} ÷ {hexoseMass}' },
  limitCounted: { counted: (x) => countedUnder(x.of('bottleLimit')) },
  forgottenHeat: { warmer: 'the warmer of {bottleTemperature}, {warmKitchen}' },
} satisfies Record<string, Ways>;
