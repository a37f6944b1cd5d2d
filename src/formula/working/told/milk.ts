import type { ToldWays } from './told-ways';

export const milkTold = {
  sourceMass: {
    fromMilk: { words: 'Milk, divided by what a gram of the source gives.' },
    fromBlendWater: {
      words: 'Water to blend, divided by the water ratio (less the source’s own water).',
    },
  },
  soakWater: {
    usual: {
      words: 'Enough to cover it as it swells. It is poured away.',
    },
  },
  soakTime: {
    usual: { words: 'The middle of the usual time.' },
  },
  soakedMass: {
    uptake: {
      words: 'The source and the water it took up, less any sugar that leached out.',
    },
  },
  waterRatio: {
    usual: { words: 'The usual water ratio for this source.' },
    fromSolids: {
      words: 'The water at which the milk has the solids you typed, solved from the mass balance.',
      formula:
        'the ratio at which 100 × ({passing} × {sourceSolids} + {ownSolids} + (1 − {heldBack}) × {sourceSugars}) ÷ {milkBeforeLoss} = {milkSolids}',
    },
    fromSourceAndWater: {
      words: 'The water you typed, with the source’s own, divided by the source you typed.',
    },
    joined: {
      words: 'The water at which both amounts you typed come out, solved from the mass balance.',
      formula: 'the ratio at which {sourceMass} × {milkPerGram} = {milkVolume}',
    },
  },
  blendWater: {
    ratio: {
      words: 'Source times the water ratio (less the source’s own water), as a volume.',
    },
  },
  blenderLoads: {
    capacity: {
      words: 'Soaked source and water, divided by what the blender takes, rounded up.',
    },
  },
  pulpMass: {
    balance: {
      words: 'The solids that do not pass, and the water and sugar they hold at the moisture of pressed pulp.',
    },
  },
  milkVolume: {
    fromFill: {
      words: 'What the jars hold to the headspace, less the room the grains and the dissolved sweetener take.',
    },
    fromSource: {
      words: 'Source times what a gram of it gives: slurry less pulp and handling loss, as a volume.',
    },
    fromDrink: {
      words: 'The kefir wanted, with what clings to the grains, less the room of the dissolved sweetener.',
    },
    fromSweetener: {
      words: 'The milk that the sweetener on hand can sweeten.',
    },
    fromGrains: { words: 'The milk that the grains on hand can carry.' },
  },
  milkSolids: {
    balance: {
      words: 'Everything in the milk that is not water, by weight.',
      formula:
        '100 × ({passing} × {sourceSolids} + {ownSolids} + (1 − {heldBack}) × {sourceSugars}) ÷ {milkBeforeLoss}',
    },
  },
} as const satisfies ToldWays;
