import { fermenting } from '../../reference/fermenting';
import { isWithinModels } from '../models/ripening';
import { outsideModels } from './outside-models';
import type { Access, NumericRow } from './row';
import { usualRange } from './usual-range';

function noBottle(x: Access): 'noBottle' | null {
  return x.of('bottleTime') === 0 ? 'noBottle' : null;
}

export const sugarLeft: NumericRow = {
  label: 'Sugar left when strained',
  kind: 'concentration',
  typed: 'measured',
  range: { least: 0, most: 500, zero: true },
  ways: { likely: '{drinkSugar} × (1 − {usedWhenReady})' },
};

export const bottleSugar: NumericRow = {
  label: 'Sugar or fruit added to the bottle, as fermentable sugar',
  kind: 'concentration',
  typed: 'rate',
  inEach: 'bottle',
  range: { least: 0, most: 300, zero: true },
  ways: { none: '0' },
};

export const bottleTime: NumericRow = {
  label: 'Second ferment for',
  kind: 'time',
  typed: 'rate',
  range: { least: 0, most: 1000, zero: true },
  usual: (x) => {
    return x.of('bottleTime') === 0 ? null : usualRange(fermenting.bottleTime);
  },
  ways: { usual: '{bottleTimeUsual}' },
};

export const bottleTemperature: NumericRow = {
  label: 'Temperature of the bottle',
  kind: 'temperature',
  typed: 'rate',
  range: { least: -2, most: 60, zero: true },
  absent: noBottle,
  ways: { room: '{roomTemperature}' },
};

export const bottleVolume: NumericRow = {
  label: 'One bottle, to the rim',
  kind: 'volume',
  typed: 'rate',
  weighing: 'water',
  range: { least: 50, most: 20000 },
  absent: noBottle,
  ways: { usual: '{bottleVolumeUsual}' },
};

export const bottleHeadspace: NumericRow = {
  label: 'Left empty in the bottle',
  kind: 'volume',
  typed: 'rate',
  weighing: 'water',
  shareOf: 'bottleVolume',
  range: { least: 0, most: 20000, zero: true },
  absent: noBottle,
  check: (x, value) => {
    const whole = x.of('bottleVolume');
    const least = fermenting.leastHeadspace.value * whole;
    if (value < least) return { code: 'bottleTooFull', at: 'bottleHeadspace', least };
    return value >= whole ? { code: 'roomTooLarge', at: 'bottleHeadspace', brimful: whole } : null;
  },
  ways: { usual: '{bottleRoomUsual} × {bottleVolume}' },
};

export const bottleCount: NumericRow = {
  label: 'Bottles to fill',
  kind: 'count',
  typed: 'never',
  range: { least: 0, most: 100000, zero: true },
  absent: noBottle,
  ways: { fewest: '{drinkVolume} ÷ ({bottleVolume} − {bottleHeadspace}), rounded up' },
};

export const bottlePressureLikely: NumericRow = {
  label: 'Bottle pressure, likely',
  kind: 'pressure',
  typed: 'never',
  range: { least: 0, most: 1000 },
  absent: noBottle,
  bounds: { low: 'pressureLeast', high: 'pressureMost' },
  ways: {
    sealed: {
      formula:
        '{gasLikely} ÷ ({solubilityBottle} × {waterShare} + {bottleRoom} ÷ ({gasConstant} × {kelvinBottle})) ÷ {pascalPerBar}',
      guard: (x, pressure) => {
        const celsius = x.of('bottleTemperature');
        if (isWithinModels(celsius)) return pressure;
        return Number.isNaN(celsius) ? celsius : x.fail(outsideModels('bottlePressureLikely', celsius));
      },
    },
  },
};

export const bottlePressureForgotten: NumericRow = {
  label: 'Bottle pressure, if forgotten',
  kind: 'pressure',
  typed: 'never',
  range: { least: 0, most: 1000 },
  absent: noBottle,
  ways: {
    sealed:
      '{gasForgotten} ÷ ({solubilityForgotten} × {waterShare} + {bottleRoom} ÷ ({gasConstant} × {kelvinForgotten})) ÷ {pascalPerBar}',
  },
};

export const bottleLimit: NumericRow = {
  label: 'Pressure the bottle’s maker allows',
  kind: 'pressure',
  typed: 'aside',
  range: { least: 0.1, most: 100 },
  absent: () => 'noLimit',
  ways: { typed: '' },
};

export const bottleSugarMost: NumericRow = {
  label: 'Most sugar in the bottle under that limit',
  kind: 'concentration',
  typed: 'never',
  range: { least: 0, most: 1000, zero: true },
  absent: (x) => noBottle(x) ?? (x.of('bottleLimit') === 0 ? 'noLimit' : null),
  ways: {
    underLimit:
      '({limitCounted} × {pascalPerBar} × ({solubilityForgotten} × {waterShare} + {bottleRoom} ÷ ({gasConstant} × {kelvinForgotten})) − {dissolvedGas}) × {hexoseMass} ÷ 2 ÷ 1000, never below 0',
  },
};
