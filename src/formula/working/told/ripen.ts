import type { ToldWays } from './told-ways';

export const ripenTold = {
  roomTemperature: {
    usual: { words: 'The usual room.' },
  },
  readyTime: {
    ripening: {
      words:
        'The usual time at the usual room, times as long as this source and this temperature take it, less for more grains and for more sugar, divided by how fast this kitchen is, these grains in it and this source.',
    },
  },
} as const satisfies ToldWays;

/** What a formula names in one word and the working writes out, since it is formula and not number to who reads it. */
export const writtenOut: Readonly<Record<string, string>> = {
  '{atDoseAndSugar}':
    '({usualDose} ÷ the least of {grainRate}, {doseMost} × {usualDose})^{doseExponent} × ({usualStart} ÷ {startingSugar})^{sugarExponent}',
};
