import { depthBelowRim, roomAbove, wholeDepth } from '../models/vessel';
import { jarProfile } from '../profile';
import type { NumericRow } from '../row';

export const vesselCount: NumericRow = {
  label: 'Number of jars',
  symbol: 'n',
  kind: 'count',
  typed: 'amount',
  range: { least: 1, most: 1000, whole: true },
  ways: {
    usual: { words: 'One jar, unless you say otherwise.', formula: '1', rule: () => 1 },
    fewest: {
      words: 'The fewest jars of this kind that keep the headspace.',
      formula: '{totalFill} ÷ {fillAllowed}, rounded up',
      rule: (x) => fewest(x.of('totalFill') / x.of('fillAllowed')),
    },
    nearest: {
      words: 'The number of jars that keeps the water ratio nearest to its usual one.',
      formula: '{usualMilk} ÷ {fillVolume}, rounded',
      rule: (x) => Math.max(1, Math.round(x.of('usualMilk') / x.of('fillVolume'))),
    },
    nearestFill: {
      words: 'The number of jars whose fill is nearest to the one you typed.',
      formula: '{totalFill} ÷ the fill you typed, rounded',
      rule: (x) => Math.max(1, Math.round(x.of('totalFill') / x.typed('fillVolume'))),
    },
  },
};

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
  range: { least: 50, most: 60000 },
  check: (x, value) => {
    const shape = { ...jarProfileOf(x), brimful: Number.POSITIVE_INFINITY };
    const least = roomAbove(shape, shape.neckHeight + shape.shoulderHeight);
    return value > least ? null : { code: 'jarTooSmall', at: 'brimful', least };
  },
  ways: {
    usual: {
      words: 'What a jar of this kind holds to the very rim. Weigh the water yours holds to be sure.',
      formula: '{brimfulUsual}',
      rule: (x) => x.c('brimfulUsual'),
    },
  },
};

function jarProfileOf(x: Parameters<NonNullable<NumericRow['check']>>[0]) {
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
    return value < depth ? null : { code: 'headspaceTooDeep', at: 'headspaceDepth', depth };
  },
  ways: {
    usual: {
      words: 'The usual headspace, from the rim down to the surface, grains in.',
      formula: '{headspaceAsked}',
      rule: (x) => x.of('headspaceAsked'),
    },
    fromRoom: {
      words: 'How deep the room left reaches below the rim in a jar of this shape.',
      formula: 'depth({headspaceVolume})',
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
  range: { least: 0, most: 60000, zero: true },
  check: (x, value) =>
    value < x.of('brimful') ? null : { code: 'roomTooLarge', at: 'headspaceVolume', brimful: x.of('brimful') },
  ways: {
    fromDepth: {
      words: 'The room in the neck, shoulder and body of the jar above the surface.',
      formula: 'room({headspaceDepth})',
      rule: (x) => roomAbove(jarProfile(x), x.of('headspaceDepth')),
    },
    fromFill: {
      words: 'Brimful capacity less the fill.',
      formula: '{brimful} − {fillVolume}',
      rule: (x) => {
        const room = x.of('brimful') - x.of('fillVolume');
        return room < 0
          ? x.fail({ code: 'overBrim', at: 'headspaceVolume', over: -room, fits: x.of('brimful') })
          : room;
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
  range: { least: 0, most: 60000 },
  check: (x, value) =>
    value <= x.of('brimful') ? null : { code: 'fillOverBrim', at: 'fillVolume', brimful: x.of('brimful') },
  ways: {
    fromRoom: {
      words: 'Brimful capacity less the room left for rising. Milk, sweetener and grains together come up to here.',
      formula: '{brimful} − {headspaceVolume}',
      rule: (x) => x.of('brimful') - x.of('headspaceVolume'),
    },
    shared: {
      words: 'All that goes into the jars, shared equally.',
      formula: '{totalFill} ÷ {vesselCount}',
      rule: (x) => x.of('totalFill') / x.of('vesselCount'),
    },
  },
};
