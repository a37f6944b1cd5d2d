import { fermenting } from '../../reference/fermenting';
import { gasAtPressure, pressureOf, type Sealed, sugarFromGas } from '../models/fizz';
import { isWithinModels } from '../models/ripening';
import { outsideModels } from '../outside-models';
import type { Access, NumericRow } from '../row';
import { usualRange } from '../usual-range';

function noBottle(x: Access): 'noBottle' | null {
  return x.of('bottleTime') === 0 ? 'noBottle' : null;
}

/** The bottle as it is sealed. */
function sealed(x: Access): Sealed {
  return { water: x.of('waterShare'), room: x.of('bottleRoom') };
}

export const sugarLeft: NumericRow = {
  label: 'Sugar left when strained',
  symbol: 's₁',
  kind: 'concentration',
  typed: 'measured',
  range: { least: 0, most: 500, zero: true },
  ways: {
    likely: {
      rule: (x) => x.of('drinkSugar') * (1 - x.c('usedWhenReady')),
    },
  },
};

export const bottleSugar: NumericRow = {
  label: 'Sugar or fruit added to the bottle, as fermentable sugar',
  symbol: 's₂',
  kind: 'concentration',
  typed: 'rate',
  inEach: 'bottle',
  range: { least: 0, most: 300, zero: true },
  ways: { none: { rule: () => 0 } },
};

export const bottleTime: NumericRow = {
  label: 'Second ferment for',
  symbol: 'τ',
  kind: 'time',
  typed: 'rate',
  range: { least: 0, most: 1000, zero: true },
  usual: (x) => {
    return x.of('bottleTime') === 0 ? null : usualRange(fermenting.bottleTime);
  },
  ways: {
    usual: {
      rule: (x) => x.c('bottleTimeUsual'),
    },
  },
};

export const bottleTemperature: NumericRow = {
  label: 'Temperature of the bottle',
  symbol: 'T_b',
  kind: 'temperature',
  typed: 'rate',
  range: { least: -2, most: 60, zero: true },
  absent: noBottle,
  ways: {
    room: { rule: (x) => x.of('roomTemperature') },
  },
};

export const bottleVolume: NumericRow = {
  label: 'One bottle, to the rim',
  symbol: 'V_s',
  kind: 'volume',
  typed: 'rate',
  weighing: 'water',
  range: { least: 50, most: 20000 },
  absent: noBottle,
  ways: {
    usual: { rule: (x) => x.c('bottleVolumeUsual') },
  },
};

export const bottleHeadspace: NumericRow = {
  label: 'Left empty in the bottle',
  symbol: 'V_e',
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
  ways: {
    usual: {
      rule: (x) => x.c('bottleRoomUsual') * x.of('bottleVolume'),
    },
  },
};

export const bottleCount: NumericRow = {
  label: 'Bottles to fill',
  symbol: 'N_b',
  kind: 'count',
  typed: 'never',
  range: { least: 0, most: 100000, zero: true },
  absent: noBottle,
  ways: {
    fewest: {
      rule: (x) => {
        const bottles = x.of('drinkVolume') / (x.of('bottleVolume') - x.of('bottleHeadspace'));
        return Math.max(Math.ceil(bottles - 1e-9), 0); // tolerance: a hair over a whole number takes no other bottle
      },
    },
  },
};

export const bottlePressureLikely: NumericRow = {
  label: 'Bottle pressure, likely',
  symbol: 'p₁',
  kind: 'pressure',
  typed: 'never',
  range: { least: 0, most: 1000 },
  absent: noBottle,
  ways: {
    sealed: {
      rule: (x) => {
        const celsius = x.of('bottleTemperature');
        if (!isWithinModels(celsius)) {
          return Number.isNaN(celsius) ? celsius : x.fail(outsideModels('bottlePressureLikely', celsius));
        }
        return pressureOf(x.of('gasLikely'), sealed(x), celsius);
      },
    },
  },
};

export const bottlePressureForgotten: NumericRow = {
  label: 'Bottle pressure, if forgotten',
  symbol: 'p₂',
  kind: 'pressure',
  typed: 'never',
  range: { least: 0, most: 1000 },
  absent: noBottle,
  ways: {
    sealed: {
      rule: (x) => pressureOf(x.of('gasForgotten'), sealed(x), x.of('forgottenHeat')),
    },
  },
};

export const bottleLimit: NumericRow = {
  label: 'Pressure the bottle’s maker allows',
  symbol: 'p_m',
  kind: 'pressure',
  typed: 'aside',
  range: { least: 0.1, most: 100 },
  absent: () => 'noLimit',
  ways: { typed: { rule: () => 0 } },
};

export const bottleSugarMost: NumericRow = {
  label: 'Most sugar in the bottle under that limit',
  symbol: 's_m',
  kind: 'concentration',
  typed: 'never',
  range: { least: 0, most: 1000, zero: true },
  absent: (x) => noBottle(x) ?? (x.of('bottleLimit') === 0 ? 'noLimit' : null),
  ways: {
    underLimit: {
      rule: (x) => {
        const gas = gasAtPressure(x.of('limitCounted'), sealed(x), x.of('forgottenHeat')) - x.of('dissolvedGas');
        return Math.max(sugarFromGas(gas), 0);
      },
    },
  },
};
