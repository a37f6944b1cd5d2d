import { joinedRatio } from '../joined';
import { ratioForSolids } from '../models/milk';
import type { Access, NumericRow } from '../row';

const solid = (x: Access): boolean => x.choices.source.form === 'solid';

export const sourceMass: NumericRow = {
  label: 'Weight as bought',
  symbol: 'm',
  kind: 'mass',
  typed: 'amount',
  weighing: 'source',
  range: { least: 0.01, most: 100000 },
  ways: {
    fromMilk: {
      rule: (x) => x.of('milkVolume') / x.of('milkPerGram'),
    },
    fromBlendWater: {
      rule: (x) => {
        const tap = x.of('waterRatio') - x.c('ownWater');
        const mass = (x.of('blendWater') * x.of('waterDensity')) / tap;
        return tap <= 0 || mass === Number.POSITIVE_INFINITY
          ? x.fail({ code: 'noRatio', at: 'sourceMass', rows: ['blendWater', 'waterRatio'] })
          : mass;
      },
    },
  },
};

export const soakWater: NumericRow = {
  label: 'Soaking water',
  symbol: 'A',
  kind: 'volume',
  typed: 'aside',
  weighing: 'water',
  range: { least: 0.01, most: 500000 },
  absent: (x) => {
    const { soak } = x.choices.source;
    if (!soak) return 'notSoaked';
    return soak.drained ? null : 'soaksInBlendingWater';
  },
  ways: {
    usual: {
      rule: (x) => x.of('sourceMass') * x.c('soakWaterPerGram'),
    },
  },
};

export const soakTime: NumericRow = {
  label: 'Soak for',
  symbol: 't_s',
  kind: 'time',
  typed: 'aside',
  range: { least: 0, most: 72, zero: true },
  absent: (x) => (x.choices.source.soak ? null : 'notSoaked'),
  ways: {
    usual: { rule: (x) => x.c('soakHours') },
  },
  usual: (x) => rangeOf(x.choices.source.soak?.hours),
};

function rangeOf(of: { readonly low?: number; readonly high?: number } | undefined) {
  return of?.low === undefined || of.high === undefined ? null : { low: of.low, high: of.high };
}

export const soakedMass: NumericRow = {
  label: 'After soaking and draining',
  symbol: 'm_s',
  kind: 'mass',
  typed: 'measured',
  range: { least: 0.01, most: 200000 },
  absent: (x) => {
    const { soak } = x.choices.source;
    if (!soak) return 'notSoaked';
    return soak.drained ? null : 'soaksInBlendingWater';
  },
  ways: {
    uptake: {
      rule: (x) => x.of('sourceMass') * (1 + x.c('uptake')) - x.of('leached'),
    },
  },
};

export const waterRatio: NumericRow = {
  label: 'Parts of water, by weight',
  symbol: 'R',
  kind: 'ratio',
  typed: 'rate',
  range: { least: 0, most: 100, zero: true },
  usual: (x) => {
    const usual = x.c('usualRatio');
    return usual > 0 && solid(x) ? { low: usual / 2, high: usual * 2 } : null;
  },
  ways: {
    usual: {
      rule: (x) => x.c('usualRatio'),
    },
    fromSolids: {
      rule: (x) => {
        const ratio = ratioForSolids(x.reduced(), x.of('milkSolids') / 100);
        const slack = 1e-9; // tolerance: the solids of a poured source as it is need no water, give or take rounding
        if (ratio !== null && ratio >= -slack) return ratio > slack ? ratio : 0;
        return Number.isNaN(x.of('milkSolids')) ? Number.NaN : x.fail({ code: 'noSolids', at: 'milkSolids' });
      },
    },
    fromSourceAndWater: {
      rule: (x) => x.c('ownWater') + (x.of('blendWater') * x.of('waterDensity')) / x.of('sourceMass'),
    },
    joined: {
      rule: joinedRatio,
    },
  },
};

export const blendWater: NumericRow = {
  label: 'Water to blend',
  symbol: 'B',
  kind: 'volume',
  typed: 'amount',
  weighing: 'water',
  range: { least: 0.01, most: 500000 },
  absent: (x) => (!solid(x) && !x.plan.accepted.has('blendWater') && x.of('waterRatio') === 0 ? 'poured' : null),
  ways: {
    ratio: {
      rule: (x) => (Math.max(x.of('waterRatio') - x.c('ownWater'), 0) * x.of('sourceMass')) / x.of('waterDensity'),
    },
  },
};

export const blenderLoads: NumericRow = {
  label: 'Blender loads',
  symbol: 'k_b',
  kind: 'count',
  typed: 'never',
  range: { least: 0.01, most: 10000 },
  absent: (x) => (solid(x) ? null : 'noBlending'),
  ways: {
    capacity: {
      rule: (x) => Math.max(1, Math.ceil(x.of('slurryVolume') / x.c('blenderCapacity') - 1e-9)), // tolerance
    },
  },
};

export const pulpMass: NumericRow = {
  label: 'Wet pulp left in the bag',
  symbol: 'P',
  kind: 'mass',
  typed: 'measured',
  range: { least: 0.01, most: 200000 },
  absent: (x) => (solid(x) || x.c('passing') < 1 ? null : 'noPulp'),
  ways: {
    balance: {
      rule: (x) =>
        (x.of('sourceMass') * ((1 - x.c('passing')) * x.of('sourceSolids') + x.of('heldBack') * x.of('sourceSugars'))) /
        (1 - x.c('pulpMoisture')),
    },
  },
};

export const milkVolume: NumericRow = {
  label: 'Milk after straining',
  symbol: 'V',
  kind: 'volume',
  typed: 'amount',
  weighing: 'milk',
  range: { least: 0.01, most: 500000 },
  bounds: { low: 'milkLeast', high: 'milkMost' },
  ways: {
    fromFill: {
      rule: (x) => {
        const fill = x.of('vesselCount') * x.of('fillVolume');
        return roomForMilk(x, (fill - x.of('fixedRoom')) / x.of('roomPerMilk'), fill);
      },
    },
    fromSource: {
      rule: (x) => x.of('sourceMass') * x.of('milkPerGram'),
    },
    fromDrink: {
      rule: (x) =>
        roomForMilk(x, (x.of('drinkVolume') - x.of('drinkFixed')) / x.of('drinkPerMilk'), x.of('drinkVolume')),
    },
    fromSweetener: {
      rule: (x) => {
        const milk = (1000 * x.of('sweetenerMass') * x.of('fermentable')) / x.of('sugarRate');
        return milk === Number.POSITIVE_INFINITY
          ? x.fail({ code: 'noRatio', at: 'milkVolume', rows: ['sweetenerMass', 'sugarRate'] })
          : milk;
      },
    },
    fromGrains: {
      rule: (x) => {
        const milk = (1000 * x.of('grainMass')) / x.of('grainRate');
        return milk === Number.POSITIVE_INFINITY
          ? x.fail({ code: 'noRatio', at: 'milkVolume', rows: ['grainMass', 'grainRate'] })
          : milk;
      },
    },
  },
};

function roomForMilk(x: Access, milk: number, fill: number): number {
  return milk <= 0 ? x.fail({ code: 'noRoomForMilk', at: 'milkVolume', fill }) : milk;
}

export const milkSolids: NumericRow = {
  label: 'Solids in the milk',
  symbol: 'σ_m',
  kind: 'share',
  typed: 'rate',
  range: { least: 0.01, most: 60 },
  bounds: { low: 'solidsLeast', high: 'solidsMost' },
  ways: {
    balance: {
      rule: (x) => {
        const stages = x.stages();
        return stages ? 100 * stages.milkSolids : Number.NaN;
      },
    },
  },
};
