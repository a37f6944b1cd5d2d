import { convertNumber } from '../../measure/units';
import { waterDensityAt } from '../models/density';
import { stagesAt } from '../models/milk';
import type { Access, Term } from '../row';
import { reducedAt, reducedFor, treatedFood } from '../treated';

/** Density of plain water at the temperature volumes are read at, g/mL. Source: Kell, on ITS-90. */
const plainWater = waterDensityAt() / convertNumber(1, 'L', 'mL');

/** The stages of the mass balance between source and milk. */
export const balanceTerms = {
  sourceWeight: {
    label: 'Weight of a mL of the source',
    symbol: 'ρₘ',
    kind: 'count',
    unit: 'g/mL',
    ways: {
      cup: {
        words: 'The published weight of a cup of it, or the density of a liquid from its composition.',
        formula: '{measureWeight} ÷ {measureVolume}',
        rule: (x) => treatedFood(x).weight ?? Number.NaN,
      },
    },
  },
  sourceSugars: {
    label: 'Sugars that reach the blender',
    symbol: 'S',
    kind: 'ratio',
    ways: {
      composition: {
        words:
          'Total sugars of the source, g per g, less what leached into the soaking water, and those of its own liquid.',
        formula: '{totalSugars} × (1 − {leaching}) + {ownSugars}',
        rule: (x) => {
          const ratio = x.of('waterRatio');
          const { sugars, own } = reducedAt(x, ratio).strain;
          return Number.isNaN(ratio) ? ratio : sugars + own.sugars;
        },
      },
    },
  },
  sourceSolids: {
    label: 'Dry solids other than sugars in the source',
    symbol: 'N',
    kind: 'ratio',
    ways: {
      composition: {
        words: 'What is neither water nor sugar, g per g.',
        formula: '1 − {sourceWater} − {totalSugars}',
        rule: (x) => x.reduced().nonSugar,
      },
    },
  },
  leached: {
    label: 'Sugar lost to drained soaking water',
    symbol: 'Sₗ',
    kind: 'mass',
    ways: {
      share: {
        words: 'The sugar of the source that goes down the sink with the soaking water.',
        formula: '{sourceMass} × {totalSugars} × {leaching}',
        rule: (x) => x.of('sourceMass') * x.reduced().strain.leached,
      },
    },
  },
  slurryMass: perSource(
    'What leaves the blender',
    'G',
    'mass',
    'Soaked source and all water together.',
    '{slurryPerGram}',
    (s) => s.slurryMass,
  ),
  slurryVolume: perSource(
    'Volume in the blender',
    'V_G',
    'volume',
    'Soaked source and water, by the densities of their components.',
    '{slurryVolumePerGram}',
    (s) => s.slurryVolume,
  ),
  heldBack: {
    label: 'Share of water and sugar kept in the pulp',
    symbol: 'q',
    kind: 'count',
    ways: {
      balance: {
        words:
          'The pulp is pressed to its moisture, and sugar follows the water: k(1 − x)N ÷ (W − kS), with k = p ÷ (1 − p) and W the water of the slurry, per g of source.',
        formula: '{waterPerDry} × (1 − {passing}) × {sourceSolids} ÷ ({slurryWater} − {waterPerDry} × {sourceSugars})',
        rule: (x) => x.stages()?.heldBack ?? Number.NaN,
      },
    },
  },
  milkPerGram: {
    label: 'Milk per gram of source',
    symbol: 'y',
    kind: 'count',
    unit: 'mL/g',
    ways: {
      balance: {
        words:
          'From the mass balance at this water ratio: what the pulp does not keep and handling does not lose, in mL.',
        formula: '({slurryPerGram} − {pulpPerGram}) × (1 − {handlingLoss}) ÷ {milkDensity}',
        rule: (x) => x.stages()?.milkVolume ?? Number.NaN,
      },
    },
  },
  usualMilk: {
    label: 'Milk at the usual water ratio',
    symbol: 'V₀',
    kind: 'volume',
    ways: {
      usual: {
        words: 'What the source gives at its usual water ratio; 0 where it gels at that.',
        formula: '{usualSourceMass} × {usualMilkPerGram}',
        rule: (x) => {
          const ratio = x.c('usualRatio');
          const tap = ratio - x.c('ownWater');
          const mass = x.plan.accepted.has('sourceMass')
            ? x.of('sourceMass')
            : (x.of('blendWater') * x.of('waterDensity')) / tap;
          return mass * (stagesAt(reducedFor(x, ratio), ratio)?.milkVolume ?? 0);
        },
      },
    },
  },
  milkMass: perSource(
    'Weight of the milk',
    'M',
    'mass',
    'Slurry less pulp, less handling loss.',
    '{milkBeforeLoss} × (1 − {handlingLoss})',
    (s) => s.milkMass,
  ),
  milkDensity: {
    label: 'Density of the milk',
    symbol: 'ρ',
    kind: 'count',
    unit: 'g/mL',
    ways: {
      composition: {
        words: 'From what is in the milk: its parts take up their own volumes.',
        formula: '{densityOfMilk}',
        rule: milkDensityAt,
      },
    },
  },
  usualMilkDensity: {
    label: 'Density of the milk, for reading a typed weight',
    symbol: 'ρ′',
    kind: 'count',
    unit: 'g/mL',
    ways: {
      usual: {
        words: 'From the composition of milk at the usual ratio.',
        formula: '{densityOfUsualMilk}',
        rule: (x) => treatedFood(x).milkDensity,
      },
    },
  },
  lost: perSource(
    'Lost in handling',
    'L',
    'mass',
    'What stays on sides and cloth.',
    '{milkBeforeLoss} × {handlingLoss}',
    (s) => s.lost,
  ),
  ownLiquid: perSource(
    'Its own water, counted first',
    'O',
    'mass',
    'Liquid that came with the source.',
    '{ownUsed}',
    (s) => s.ownLiquid,
  ),
  waterDensity: {
    label: 'Density of water',
    symbol: 'ρ_w',
    kind: 'count',
    unit: 'g/mL',
    ways: {
      plain: { words: 'Plain water at 20 °C.', formula: '{waterWeighs} ÷ 1000', rule: () => plainWater },
    },
  },
} satisfies Record<string, Term>;

/** Grams of milk per mL at this water ratio; the same for any size of batch. */
function milkDensityAt(x: Access): number {
  const stages = x.stages();
  return stages ? stages.milkMass / stages.milkVolume : Number.NaN;
}

type StageFigure = (stages: NonNullable<ReturnType<Access['stages']>>) => number;

function perSource(
  label: string,
  symbol: string,
  kind: 'mass' | 'volume',
  words: string,
  each: string,
  figure: StageFigure,
): Term {
  return {
    label,
    symbol,
    kind,
    ways: {
      balance: {
        words,
        formula: `{sourceMass} × ${each}`,
        rule: (x) => {
          const stages = x.stages();
          return stages ? x.of('sourceMass') * figure(stages) : Number.NaN;
        },
      },
    },
  };
}
