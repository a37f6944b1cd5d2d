import type { ToldWays } from './told-ways';

export const jarTold = {
  vesselCount: {
    usual: { words: 'One jar, unless you say otherwise.' },
    fewest: {
      words: 'The fewest jars of this kind that keep room for rising; a little over calls for no other.',
    },
    nearest: {
      words: 'The number of jars that keeps the water ratio nearest to its usual one, at the usual sugar and dose.',
    },
    nearestUnsweetened: {
      words: 'The number of jars that keeps the water ratio nearest to its usual one, at the usual dose.',
    },
    nearestGlasses: {
      words: 'The number of jars that keeps a glass nearest to its usual size.',
    },
    nearestFill: {
      words: 'The number of jars whose fill is nearest to the one you typed.',
    },
  },
  brimful: {
    usual: {
      words: 'What a jar of this kind holds to the very rim. Weigh the water yours holds to be sure.',
    },
  },
  headspaceDepth: {
    usual: { words: 'The usual headspace, from the rim down to the surface, grains in.' },
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
    fromFill: { words: 'Brimful capacity less the fill.' },
  },
  fillVolume: {
    fromRoom: {
      words: 'Brimful capacity less the room left for rising. Milk, sweetener and grains together come up to here.',
    },
    shared: { words: 'All that goes into the jars, shared equally.' },
  },
} as const satisfies ToldWays;
