import { rounding } from '../../measure/nearly';
import { ratioForSolids } from '../models/milk';
import type { NumericRowId } from '../recipe/order';
import { joinedRatio } from './joined-ratio';
import type { Access, NumericRow } from './row';
import { usualRange } from './usual-range';

const solid = (x: Access): boolean => x.choices.source.form === 'solid';

function notDrained(x: Access): 'notSoaked' | 'soaksInBlendingWater' | null {
  const { soak } = x.choices.source;
  if (!soak) return 'notSoaked';
  return soak.drained ? null : 'soaksInBlendingWater';
}

export const sourceMass: NumericRow = {
  label: 'Weight as bought',
  kind: 'mass',
  typed: 'amount',
  weighing: 'source',
  range: { least: 0.01, most: 100000 },
  ways: {
    fromMilk: '{milkVolume} ÷ {milkPerGram}',
    fromBlendWater: {
      formula: '{blendWater} × {waterDensity} ÷ ({waterRatio} − {ownWater})',
      guard: (x, mass) =>
        mass < 0 || mass === Number.POSITIVE_INFINITY
          ? x.fail({ code: 'noRatio', at: 'sourceMass', rows: ['blendWater', 'waterRatio'] })
          : mass,
    },
  },
};

export const soakWater: NumericRow = {
  label: 'Soaking water',
  kind: 'volume',
  typed: 'aside',
  weighing: 'water',
  range: { least: 0.01, most: 500000 },
  absent: notDrained,
  ways: { usual: '{sourceMass} × {soakWaterPerGram}' },
};

export const soakTime: NumericRow = {
  label: 'Soak for',
  kind: 'time',
  typed: 'aside',
  range: { least: 0, most: 72, zero: true },
  absent: (x) => (x.choices.source.soak ? null : 'notSoaked'),
  ways: { usual: '{soakHours}' },
  usual: (x) => usualRange(x.choices.source.soak?.hours),
};

export const soakedMass: NumericRow = {
  label: 'After soaking and draining',
  kind: 'mass',
  typed: 'measured',
  range: { least: 0.01, most: 200000 },
  absent: notDrained,
  ways: { uptake: '{sourceMass} × (1 + {uptake}) − {leached}' },
};

export const waterRatio: NumericRow = {
  label: 'Parts of water, by weight',
  kind: 'ratio',
  typed: 'rate',
  range: { least: 0, most: 100, zero: true },
  usual: (x) => {
    const usual = x.c('usualRatio');
    return usual > 0 && solid(x) ? { low: usual / 2, high: usual * 2 } : null;
  },
  ways: {
    usual: '{usualRatio}',
    fromSolids: (x) => {
      const ratio = ratioForSolids(x.reduced(), x.of('milkSolids') / 100);
      // The solids of a poured source as it is need no water.
      if (ratio !== null && ratio >= -rounding) return ratio > rounding ? ratio : 0;
      return Number.isNaN(x.of('milkSolids')) ? Number.NaN : x.fail({ code: 'noSolids', at: 'milkSolids' });
    },
    fromSourceAndWater: '{ownWater} + {blendWater} × {waterDensity} ÷ {sourceMass}',
    joined: joinedRatio,
  },
};

export const blendWater: NumericRow = {
  label: 'Water to blend',
  kind: 'volume',
  typed: 'amount',
  weighing: 'water',
  range: { least: 0.01, most: 500000 },
  absent: (x) => (!solid(x) && !x.plan.accepted.has('blendWater') && x.of('waterRatio') === 0 ? 'poured' : null),
  ways: { ratio: '({waterRatio} − {ownWater}) × {sourceMass} ÷ {waterDensity}, never below 0' },
};

export const blenderLoads: NumericRow = {
  label: 'Blender loads',
  kind: 'count',
  typed: 'never',
  range: { least: 0.01, most: 10000 },
  absent: (x) => (solid(x) ? null : 'noBlending'),
  ways: { capacity: '{slurryVolume} ÷ {blenderCapacity}, rounded up, at least 1' },
};

export const pulpMass: NumericRow = {
  label: 'Wet pulp left in the bag',
  kind: 'mass',
  typed: 'measured',
  range: { least: 0.01, most: 200000 },
  absent: (x) => (x.c('passing') < 1 ? null : 'noPulp'),
  ways: {
    balance: '{sourceMass} × ((1 − {passing}) × {sourceSolids} + {heldBack} × {sourceSugars}) ÷ (1 − {pulpMoisture})',
  },
};

export const milkVolume: NumericRow = {
  label: 'Milk after straining',
  kind: 'volume',
  typed: 'amount',
  weighing: 'milk',
  range: { least: 0.01, most: 500000 },
  bounds: { low: 'milkLeast', high: 'milkMost' },
  ways: {
    fromFill: {
      formula: '({vesselCount} × {fillVolume} − {fixedRoom}) ÷ {roomPerMilk}',
      guard: (x, milk) => roomForMilk(x, milk, x.of('vesselCount') * x.of('fillVolume')),
    },
    fromSource: '{sourceMass} × {milkPerGram}',
    fromDrink: {
      formula: '({drinkVolume} − {drinkFixed}) ÷ {drinkPerMilk}',
      guard: (x, milk) => roomForMilk(x, milk, x.of('drinkVolume')),
    },
    fromSweetener: {
      formula: '1000 × {sweetenerMass} × {fermentable} ÷ {sugarRate}',
      guard: (x, milk) => someRate(x, milk, ['sweetenerMass', 'sugarRate']),
    },
    fromGrains: {
      formula: '1000 × {grainMass} ÷ {grainRate}',
      guard: (x, milk) => someRate(x, milk, ['grainMass', 'grainRate']),
    },
  },
};

function roomForMilk(x: Access, milk: number, fill: number): number {
  return milk <= 0 ? x.fail({ code: 'noRoomForMilk', at: 'milkVolume', fill }) : milk;
}

function someRate(x: Access, milk: number, rows: readonly [NumericRowId, NumericRowId]): number {
  return milk === Number.POSITIVE_INFINITY ? x.fail({ code: 'noRatio', at: 'milkVolume', rows }) : milk;
}

export const milkSolids: NumericRow = {
  label: 'Solids in the milk',
  kind: 'share',
  typed: 'rate',
  range: { least: 0.01, most: 60 },
  bounds: { low: 'solidsLeast', high: 'solidsMost' },
  ways: {
    balance: (x) => {
      const stages = x.stages();
      return stages ? 100 * stages.milkSolids : Number.NaN;
    },
  },
};
