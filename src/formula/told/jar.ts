import type { ToldWays } from './told-ways';

export const jarTold = {
  vesselCount: {
    usual: { words: 'One jar, unless you say otherwise.', formula: '1' },
    fewest: {
      words: 'The fewest jars of this kind that keep the headspace.',
      formula: '{totalFill} ÷ {fillAllowed}, rounded up, at least 1',
    },
    nearest: {
      words: 'The number of jars that keeps the water ratio nearest to its usual one, at the usual sugar and dose.',
      formula:
        '{usualMilk} × (1 + {sugarUsual} ÷ 1000 ÷ {fermentable} × {sweetenerRoom} + {usualDose} ÷ 1000 ÷ {grainDensity}) ÷ {fillVolume}, rounded, at least 1',
    },
    nearestUnsweetened: {
      words: 'The number of jars that keeps the water ratio nearest to its usual one, at the usual dose.',
      formula: '{usualMilk} × (1 + {usualDose} ÷ 1000 ÷ {grainDensity}) ÷ {fillVolume}, rounded, at least 1',
    },
    nearestGlasses: {
      words: 'The number of jars that keeps a glass nearest to its usual size.',
      formula: '{servings} × {servingUsual} ÷ ({fillVolume} × {drinkPerMilk} ÷ {roomPerMilk}), rounded, at least 1',
    },
    nearestFill: {
      words: 'The number of jars whose fill is nearest to the one you typed.',
      formula: '{totalFill} ÷ {fillTyped}, rounded, at least 1',
    },
  },
  brimful: {
    usual: {
      words: 'What a jar of this kind holds to the very rim. Weigh the water yours holds to be sure.',
      formula: '{brimfulUsual}',
    },
  },
  headspaceDepth: {
    usual: { words: 'The usual headspace, from the rim down to the surface, grains in.', formula: '{headspaceAsked}' },
    fromRoom: {
      words: 'How deep the room left reaches below the rim in a jar of this shape.',
      formula: '{neckDepth} + {shoulderDepth} + {bodyDepth}',
    },
  },
  headspaceVolume: {
    fromDepth: {
      words: 'The room in the neck, shoulder and body of the jar above the surface.',
      formula: '{neckRoom} + {shoulderRoom} + {bodyRoom}',
    },
    fromFill: { words: 'Brimful capacity less the fill.', formula: '{brimful} − {fillVolume}' },
  },
  fillVolume: {
    fromRoom: {
      words: 'Brimful capacity less the room left for rising. Milk, sweetener and grains together come up to here.',
      formula: '{brimful} − {headspaceVolume}',
    },
    shared: { words: 'All that goes into the jars, shared equally.', formula: '{totalFill} ÷ {vesselCount}' },
  },
} as const satisfies ToldWays;
