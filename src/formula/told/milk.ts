import type { ToldWays } from './told-ways';

export const milkTold = {
  sourceMass: {
    fromMilk: { words: 'Milk, divided by what a gram of the source gives.', formula: '{milkVolume} ÷ {milkPerGram}' },
    fromBlendWater: {
      words: 'Water to blend, divided by the water ratio (less the source’s own water).',
      formula: '{blendWater} × {waterDensity} ÷ ({waterRatio} − {ownWater})',
    },
  },
  soakWater: {
    usual: {
      words: 'Enough to cover it as it swells. It is poured away.',
      formula: '{sourceMass} × {soakWaterPerGram}',
    },
  },
  soakTime: {
    usual: { words: 'The middle of the usual time.', formula: '{soakHours}' },
  },
  soakedMass: {
    uptake: {
      words: 'The source and the water it took up, less any sugar that leached out.',
      formula: '{sourceMass} × (1 + {uptake}) − {leached}',
    },
  },
  waterRatio: {
    usual: { words: 'The usual water ratio for this source.', formula: '{usualRatio}' },
    fromSolids: {
      words: 'The water at which the milk has the solids you typed, solved from the mass balance.',
      formula:
        'the ratio at which 100 × ({passing} × {sourceSolids} + {ownSolids} + (1 − {heldBack}) × {sourceSugars}) ÷ {milkBeforeLoss} = {milkSolids}',
    },
    fromSourceAndWater: {
      words: 'The water you typed, with the source’s own, divided by the source you typed.',
      formula: '{ownWater} + {blendWater} × {waterDensity} ÷ {sourceMass}',
    },
    joined: {
      words: 'The water at which both amounts you typed come out, solved from the mass balance.',
      formula: 'the ratio at which {sourceMass} × {milkPerGram} = {milkVolume}',
    },
  },
  blendWater: {
    ratio: {
      words: 'Source times the water ratio (less the source’s own water), as a volume.',
      formula: '({waterRatio} − {ownWater}) × {sourceMass} ÷ {waterDensity}, never below 0',
    },
  },
  blenderLoads: {
    capacity: {
      words: 'Soaked source and water, divided by what the blender takes, rounded up.',
      formula: '{slurryVolume} ÷ {blenderCapacity}, rounded up, at least 1',
    },
  },
  pulpMass: {
    balance: {
      words: 'The solids that do not pass, and the water and sugar they hold at the moisture of pressed pulp.',
      formula: '{sourceMass} × ((1 − {passing}) × {sourceSolids} + {heldBack} × {sourceSugars}) ÷ (1 − {pulpMoisture})',
    },
  },
  milkVolume: {
    fromFill: {
      words: 'What the jars hold to the headspace, less the room the grains and the dissolved sweetener take.',
      formula: '({vesselCount} × {fillVolume} − {fixedRoom}) ÷ {roomPerMilk}',
    },
    fromSource: {
      words: 'Source times what a gram of it gives: slurry less pulp and handling loss, as a volume.',
      formula: '{sourceMass} × {milkPerGram}',
    },
    fromDrink: {
      words: 'The kefir wanted, with what clings to the grains, less the room of the dissolved sweetener.',
      formula: '({drinkVolume} − {drinkFixed}) ÷ {drinkPerMilk}',
    },
    fromSweetener: {
      words: 'The milk that the sweetener on hand can sweeten.',
      formula: '1000 × {sweetenerMass} × {fermentable} ÷ {sugarRate}',
    },
    fromGrains: { words: 'The milk that the grains on hand can carry.', formula: '1000 × {grainMass} ÷ {grainRate}' },
  },
  milkSolids: {
    balance: {
      words: 'Everything in the milk that is not water, by weight.',
      formula:
        '100 × ({passing} × {sourceSolids} + {ownSolids} + (1 − {heldBack}) × {sourceSugars}) ÷ {milkBeforeLoss}',
    },
  },
} as const satisfies ToldWays;
