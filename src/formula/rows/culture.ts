import { kitchen } from '../../reference/kitchen';
import type { Access, NumericRow } from '../row';
import { usualRange } from '../usual-range';

function absentSweetener(x: Access): 'noSweetener' | 'refusedSweetener' | null {
  if (x.of('fermentable') > 0) return null;
  return x.choices.sweetener.some(({ entry }) => entry.refused !== undefined) ? 'refusedSweetener' : 'noSweetener';
}

export const sugarRate: NumericRow = {
  label: 'Sugar added for the grains',
  symbol: 'r',
  kind: 'concentration',
  typed: 'rate',
  range: { least: 0, most: 300, zero: true },
  absent: absentSweetener,
  usual: (x) => {
    return x.of('nativeSugar') > x.c('nativeThreshold') ? null : usualRange(kitchen.addedSugar);
  },
  ways: {
    usual: {
      rule: (x) => {
        const counted = Math.max(x.of('nativeSugar') - x.c('nativeThreshold'), 0);
        return Math.max(x.c('sugarUsual') - counted, 0);
      },
    },
    none: { rule: () => 0 },
    fromMass: {
      rule: (x) => (1000 * x.of('sweetenerMass') * x.of('fermentable')) / x.of('milkVolume'),
    },
    fromStart: {
      rule: (x) => {
        const rate = x.of('startingSugar') - x.of('nativeSugar');
        return rate < 0 ? x.fail({ code: 'belowNative', at: 'startingSugar', native: x.of('nativeSugar') }) : rate;
      },
    },
  },
};

export const sweetenerMass: NumericRow = {
  label: 'Sweetener to add',
  symbol: 'Z',
  kind: 'mass',
  typed: 'mass',
  weighing: 'sweetener',
  range: { least: 0, most: 50000, zero: true },
  absent: absentSweetener,
  check: (x, value) => {
    const nothing = 1e-9; // tolerance: nothing on hand sizes nothing
    const sizes = x.plan.ways.milkVolume === 'fromSweetener';
    return sizes && value < nothing ? { code: 'notPositive', at: 'sweetenerMass', typed: value } : null;
  },
  ways: {
    rate: {
      rule: (x) => (x.of('sugarRate') * x.of('milkVolume')) / 1000 / x.of('fermentable'),
    },
    fromCane: {
      rule: (x) => (x.of('caneEquivalent') * x.of('caneFermentable')) / x.of('fermentable'),
    },
  },
};

export const caneEquivalent: NumericRow = {
  label: 'The same as cane sugar',
  symbol: 'Z_c',
  kind: 'mass',
  typed: 'mass',
  weighing: 'cane',
  range: { least: 0, most: 50000, zero: true },
  absent: absentSweetener,
  ways: {
    equal: {
      rule: (x) => (x.of('sweetenerMass') * x.of('fermentable')) / x.of('caneFermentable'),
    },
  },
};

export const startingSugar: NumericRow = {
  label: 'Sugar for the grains at the start, the milk’s own included',
  symbol: 's',
  kind: 'concentration',
  typed: 'rate',
  range: { least: 0, most: 300, zero: true },
  ways: {
    sum: {
      rule: (x) => x.of('nativeSugar') + x.of('sugarRate'),
    },
  },
};

export const grainRate: NumericRow = {
  label: 'Grains per litre',
  symbol: 'd',
  kind: 'concentration',
  typed: 'rate',
  range: { least: 0.01, most: 1000 },
  usual: (x) => usualRange(x.choices.grain.dose),
  ways: {
    usual: {
      rule: (x) => x.c('usualDose'),
    },
    fromMass: {
      rule: (x) => (1000 * x.of('grainMass')) / x.of('milkVolume'),
    },
  },
};

export const grainMass: NumericRow = {
  label: 'Grains to add',
  symbol: 'g',
  kind: 'mass',
  typed: 'mass',
  weighing: 'grains',
  range: { least: 0.01, most: 50000 },
  ways: {
    rate: {
      rule: (x) => (x.of('grainRate') * x.of('milkVolume')) / 1000,
    },
  },
};
