import { rounding } from '../../measure/nearly';
import { depthBelowRim, roomAbove, wholeDepth } from '../models/vessel';
import { jarProfile } from './jar-profile';
import type { NumericRow } from './row';

export const vesselCount: NumericRow = {
  label: 'Number of jars',
  kind: 'count',
  typed: 'amount',
  range: { least: 1, most: 1000, whole: true },
  ways: {
    usual: '1',
    fewest: '{totalFill} ÷ {fillMost} − {jarSlack} ÷ 100, rounded up, at least 1',
    nearest:
      '{usualMilk} × (1 + {sugarUsual} ÷ 1000 ÷ {fermentable} × {sweetenerRoom} + {usualDose} ÷ 1000 ÷ {grainDensity}) ÷ {fillVolume}, rounded, at least 1',
    nearestUnsweetened: '{usualMilk} × (1 + {usualDose} ÷ 1000 ÷ {grainDensity}) ÷ {fillVolume}, rounded, at least 1',
    nearestGlasses:
      '{servings} × {servingUsual} ÷ ({fillVolume} × {drinkPerMilk} ÷ {roomPerMilk}), rounded, at least 1',
    nearestFill: '{totalFill} ÷ {fillTyped}, rounded, at least 1',
  },
};

export const brimful: NumericRow = {
  label: 'Brimful capacity',
  kind: 'volume',
  typed: 'rate',
  weighing: 'water',
  weighed: true,
  range: { least: 50, most: 60000 },
  check: (x, value) => {
    const shape = jarProfile(x, Number.POSITIVE_INFINITY);
    const least = roomAbove(shape, shape.neckHeight + shape.shoulderHeight);
    return value > least ? null : { code: 'jarTooSmall', at: 'brimful', least };
  },
  ways: { usual: '{brimfulUsual}' },
};

export const headspaceDepth: NumericRow = {
  label: 'Headspace',
  kind: 'length',
  typed: 'rate',
  range: { least: 0, most: 200, zero: true },
  check: (x, value) => {
    const depth = wholeDepth(jarProfile(x));
    return value >= depth ? { code: 'headspaceTooDeep', at: 'headspaceDepth', depth } : null;
  },
  ways: {
    usual: '{headspaceAsked}',
    fromRoom: (x) => depthBelowRim(jarProfile(x), x.of('headspaceVolume')),
  },
};

export const headspaceVolume: NumericRow = {
  label: 'Room left for rising',
  kind: 'volume',
  typed: 'rate',
  weighing: 'water',
  shareOf: 'brimful',
  range: { least: 0, most: 60000, zero: true },
  check: (x, value) =>
    value >= x.of('brimful') ? { code: 'roomTooLarge', at: 'headspaceVolume', brimful: x.of('brimful') } : null,
  ways: {
    fromDepth: (x) => {
      const jar = jarProfile(x);
      const asked = x.of('headspaceDepth');
      const depth = wholeDepth(jar);
      return asked >= depth ? x.fail({ code: 'headspaceTooDeep', at: 'headspaceDepth', depth }) : roomAbove(jar, asked);
    },
    fromFill: {
      formula: '{brimful} − {fillVolume}',
      guard: (x, room) => {
        return room < -rounding * x.of('brimful')
          ? x.fail({ code: 'overBrim', at: 'headspaceVolume', over: -room, fits: x.of('brimful') })
          : Math.max(room, 0);
      },
    },
  },
};

export const fillVolume: NumericRow = {
  label: 'Fill, each jar',
  kind: 'volume',
  typed: 'amount',
  weighing: 'milk',
  range: { least: 0.01, most: 60000 },
  check: (x, value) =>
    value > x.of('brimful') ? { code: 'fillOverBrim', at: 'fillVolume', brimful: x.of('brimful') } : null,
  ways: { fromRoom: '{brimful} − {headspaceVolume}', shared: '{totalFill} ÷ {vesselCount}' },
};
