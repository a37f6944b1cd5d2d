import type { ToldWays } from './told-ways';

export const ripeningTold = {
  usualStart: {
    usual: {
      words: 'Native sugar, and the usual addition lowered by native sugar above what counts for nothing.',
    },
  },
  asLong: {
    cardinal: {
      words:
        'By the cardinal temperature model of a lactic acid bacterium of plant ferments: its growth in the usual room over its growth in this one.',
    },
  },
  readySoonest: {
    least: {
      words: 'The short end of the usual time, and the least that any published temperature model makes of this room.',
    },
  },
  readyLatest: {
    most: {
      words: 'The long end of the usual time, and the most that any published temperature model makes of this room.',
    },
  },
} as const satisfies ToldWays;
