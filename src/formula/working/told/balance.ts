import type { ToldWays } from './told-ways';

export const balanceTold = {
  sourceWeight: {
    cup: {
      words: 'The published weight of a cup of it, or the density of a liquid from its composition.',
      formula: '{measureWeight} ÷ {measureVolume}',
    },
  },
  sourceSugars: {
    composition: {
      words:
        'Total sugars of the source, g per g, less what leached into the soaking water, and those of its own liquid.',
      formula: '{totalSugars} × (1 − {leaching}) + {ownSugars}',
    },
  },
  sourceSolids: {
    composition: { words: 'What is neither water nor sugar, g per g.', formula: '1 − {sourceWater} − {totalSugars}' },
  },
  leached: {
    share: {
      words: 'The sugar of the source that goes down the sink with the soaking water.',
    },
  },
  slurryMass: {
    balance: { words: 'Soaked source and all water together.' },
  },
  slurryVolume: {
    balance: {
      words: 'Soaked source and water, by the densities of their components.',
    },
  },
  heldBack: {
    balance: {
      words:
        'The pulp is pressed to its moisture, and sugar follows the water: k(1 − x)N ÷ (W − kS), with k = p ÷ (1 − p) and W the water of the slurry, per g of source.',
      formula: '{waterPerDry} × (1 − {passing}) × {sourceSolids} ÷ ({slurryWater} − {waterPerDry} × {sourceSugars})',
    },
  },
  milkPerGram: {
    balance: {
      words:
        'From the mass balance at this water ratio: what the pulp does not keep and handling does not lose, in mL.',
      formula: '({slurryPerGram} − {pulpPerGram}) × (1 − {handlingLoss}) ÷ {milkDensity}',
    },
  },
  usualMilk: {
    usual: {
      words: 'What the source gives at its usual water ratio; 0 where it gels at that.',
    },
  },
  milkMass: {
    balance: {
      words: 'Slurry less pulp, less handling loss.',
    },
  },
  milkDensity: {
    composition: {
      words: 'From what is in the milk: its parts take up their own volumes.',
    },
  },
  usualMilkDensity: {
    usual: { words: 'From the composition of milk at the usual ratio.' },
  },
  lost: {
    balance: { words: 'What stays on sides and cloth.' },
  },
  ownLiquid: {
    balance: { words: 'Liquid that came with the source.' },
  },
  waterDensity: {
    plain: { words: 'Plain water at 20 °C.' },
  },
} as const satisfies ToldWays;
