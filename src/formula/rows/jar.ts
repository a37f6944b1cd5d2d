import { depthBelowRim, roomAbove, wholeDepth } from '../models/vessel';
import { jarProfile } from '../profile';
import type { Access, NumericRow } from '../row';

export const vesselCount: NumericRow = {
  label: 'Number of jars',
  symbol: 'n',
  kind: 'count',
  typed: 'amount',
  range: { least: 1, most: 1000, whole: true },
  ways: {
    usual: { rule: () => 1 },
    fewest: {
      rule: (x) => fewest(x.of('totalFill') / x.of('fillAllowed')),
    },
    nearest: {
      rule: (x) => nearest(x, ((x.c('sugarUsual') / 1000) * x.of('sweetenerRoom')) / x.of('fermentable')),
    },
    nearestUnsweetened: {
      rule: (x) => nearest(x, 0),
    },
    nearestGlasses: {
      rule: (x) => {
        const drink = (x.of('fillVolume') * x.of('drinkPerMilk')) / x.of('roomPerMilk');
        return Math.max(1, Math.round((x.of('servings') * x.c('servingUsual')) / drink));
      },
    },
    nearestFill: {
      rule: (x) => Math.max(1, Math.round(x.of('totalFill') / x.typed('fillVolume'))),
    },
  },
};

/** Jars that the source would fill at its usual ratio, `sweetener` being the room of its sugar per mL of milk. */
function nearest(x: Access, sweetener: number): number {
  const grains = x.c('usualDose') / 1000 / x.c('grainDensity');
  return Math.max(1, Math.round((x.of('usualMilk') * (1 + sweetener + grains)) / x.of('fillVolume')));
}

/** Jars to the next whole one; a hair over a whole number, from rounding, does not take another jar. */
function fewest(jars: number): number {
  return Math.max(1, Math.ceil(jars - 1e-9)); // tolerance
}

export const brimful: NumericRow = {
  label: 'Brimful capacity',
  symbol: 'V_b',
  kind: 'volume',
  typed: 'rate',
  weighing: 'water',
  weighed: true,
  range: { least: 50, most: 60000 },
  check: (x, value) => {
    const shape = { ...jarProfileOf(x), brimful: Number.POSITIVE_INFINITY };
    const least = roomAbove(shape, shape.neckHeight + shape.shoulderHeight);
    return value > least ? null : { code: 'jarTooSmall', at: 'brimful', least };
  },
  ways: {
    usual: {
      rule: (x) => x.c('brimfulUsual'),
    },
  },
};

function jarProfileOf(x: Access) {
  return {
    neckDiameter: x.c('neckDiameter'),
    neckHeight: x.c('neckHeight'),
    shoulderHeight: x.c('shoulderHeight'),
    bodyDiameter: x.c('bodyDiameter'),
  };
}

export const headspaceDepth: NumericRow = {
  label: 'Headspace',
  symbol: 'h',
  kind: 'length',
  typed: 'rate',
  range: { least: 0, most: 200, zero: true },
  check: (x, value) => {
    const depth = wholeDepth(jarProfile(x));
    return value >= depth ? { code: 'headspaceTooDeep', at: 'headspaceDepth', depth } : null;
  },
  ways: {
    usual: {
      rule: (x) => x.of('headspaceAsked'),
    },
    fromRoom: {
      rule: (x) => depthBelowRim(jarProfile(x), x.of('headspaceVolume')),
    },
  },
};

export const headspaceVolume: NumericRow = {
  label: 'Room left for rising',
  symbol: 'V_h',
  kind: 'volume',
  typed: 'rate',
  weighing: 'water',
  shareOf: 'brimful',
  range: { least: 0, most: 60000, zero: true },
  check: (x, value) =>
    value >= x.of('brimful') ? { code: 'roomTooLarge', at: 'headspaceVolume', brimful: x.of('brimful') } : null,
  ways: {
    fromDepth: {
      rule: (x) => {
        const jar = jarProfile(x);
        const asked = x.of('headspaceDepth');
        const depth = wholeDepth(jar);
        return asked >= depth
          ? x.fail({ code: 'headspaceTooDeep', at: 'headspaceDepth', depth })
          : roomAbove(jar, asked);
      },
    },
    fromFill: {
      rule: (x) => {
        const room = x.of('brimful') - x.of('fillVolume');
        const slack = 1e-9; // tolerance: full to the brim, give or take rounding
        return room < -slack * x.of('brimful')
          ? x.fail({ code: 'overBrim', at: 'headspaceVolume', over: -room, fits: x.of('brimful') })
          : Math.max(room, 0);
      },
    },
  },
};

export const fillVolume: NumericRow = {
  label: 'Fill, each jar',
  symbol: 'F',
  kind: 'volume',
  typed: 'amount',
  weighing: 'milk',
  range: { least: 0.01, most: 60000 },
  check: (x, value) =>
    value > x.of('brimful') ? { code: 'fillOverBrim', at: 'fillVolume', brimful: x.of('brimful') } : null,
  ways: {
    fromRoom: {
      rule: (x) => x.of('brimful') - x.of('headspaceVolume'),
    },
    shared: {
      rule: (x) => x.of('totalFill') / x.of('vesselCount'),
    },
  },
};
