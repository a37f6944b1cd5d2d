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
        rule: (x) => x.of('sourceMass') * x.reduced().strain.leached,
      },
    },
  },
  slurryMass: perSource('What leaves the blender', 'G', 'mass', (s) => s.slurryMass),
  slurryVolume: perSource('Volume in the blender', 'V_G', 'volume', (s) => s.slurryVolume),
  heldBack: {
    label: 'Share of water and sugar kept in the pulp',
    symbol: 'q',
    kind: 'count',
    ways: {
      balance: {
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
  milkMass: perSource('Weight of the milk', 'M', 'mass', (s) => s.milkMass),
  milkDensity: {
    label: 'Density of the milk',
    symbol: 'ρ',
    kind: 'count',
    unit: 'g/mL',
    ways: {
      composition: {
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
        rule: (x) => treatedFood(x).milkDensity,
      },
    },
  },
  lost: perSource('Lost in handling', 'L', 'mass', (s) => s.lost),
  ownLiquid: perSource('Its own water, counted first', 'O', 'mass', (s) => s.ownLiquid),
  waterDensity: {
    label: 'Density of water',
    symbol: 'ρ_w',
    kind: 'count',
    unit: 'g/mL',
    ways: {
      plain: { rule: () => plainWater },
    },
  },
} satisfies Record<string, Term>;

/** Grams of milk per mL at this water ratio; the same for any size of batch. */
function milkDensityAt(x: Access): number {
  const stages = x.stages();
  return stages ? stages.milkMass / stages.milkVolume : Number.NaN;
}

type StageFigure = (stages: NonNullable<ReturnType<Access['stages']>>) => number;

function perSource(label: string, symbol: string, kind: 'mass' | 'volume', figure: StageFigure): Term {
  return {
    label,
    symbol,
    kind,
    ways: {
      balance: {
        rule: (x) => {
          const stages = x.stages();
          return stages ? x.of('sourceMass') * figure(stages) : Number.NaN;
        },
      },
    },
  };
}
