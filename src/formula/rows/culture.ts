import { kitchen } from '../../reference/kitchen';
import type { Access, NumericRow } from './row';
import { usualRange } from './usual-range';

function absentSweetener(x: Access): 'noSweetener' | 'refusedSweetener' | null {
  if (x.of('fermentable') > 0) return null;
  return x.choices.sweetener.some(({ entry }) => entry.refused !== undefined) ? 'refusedSweetener' : 'noSweetener';
}

export const sugarRate: NumericRow = {
  label: 'Sugar added to ferment',
  kind: 'concentration',
  typed: 'rate',
  range: { least: 0, most: 300, zero: true },
  absent: absentSweetener,
  usual: (x) => {
    return x.of('nativeSugar') > x.c('nativeThreshold') ? null : usualRange(kitchen.addedSugar);
  },
  ways: {
    usual: '{sugarUsual} − ({nativeSugar} − {nativeThreshold}, if above 0), never below 0',
    none: '0',
    fromMass: '1000 × {sweetenerMass} × {fermentable} ÷ {milkVolume}',
    fromStart: {
      formula: '{startingSugar} − {nativeSugar}',
      guard: (x, rate) =>
        rate < 0 ? x.fail({ code: 'belowNative', at: 'startingSugar', native: x.of('nativeSugar') }) : rate,
    },
  },
};

export const sweetenerMass: NumericRow = {
  label: 'Sweetener to add',
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
    rate: '{sugarRate} × {milkVolume} ÷ 1000 ÷ {fermentable}',
    fromCane: '{caneEquivalent} × {caneFermentable} ÷ {fermentable}',
  },
};

export const caneEquivalent: NumericRow = {
  label: 'The same as cane sugar',
  kind: 'mass',
  typed: 'mass',
  weighing: 'cane',
  range: { least: 0, most: 50000, zero: true },
  absent: absentSweetener,
  ways: { equal: '{sweetenerMass} × {fermentable} ÷ {caneFermentable}' },
};

export const startingSugar: NumericRow = {
  label: 'Sugar to ferment at the start, the milk’s own included',
  kind: 'concentration',
  typed: 'rate',
  range: { least: 0, most: 300, zero: true },
  ways: { sum: '{nativeSugar} + {sugarRate}' },
};

export const grainRate: NumericRow = {
  label: 'Culture per litre',
  ofMilk: true,
  kind: 'concentration',
  typed: 'rate',
  range: { least: 0.01, most: 1000 },
  usual: (x) => usualRange(x.choices.grain.dose),
  ways: { usual: '{usualDose}', fromMass: '1000 × {grainMass} ÷ {milkVolume}' },
};

export const grainMass: NumericRow = {
  label: 'Culture to add',
  kind: 'mass',
  typed: 'mass',
  weighing: 'grains',
  range: { least: 0.01, most: 50000 },
  ways: { rate: '{grainRate} × {milkVolume} ÷ 1000' },
};
