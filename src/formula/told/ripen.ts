import type { ToldWays } from './told-ways';

export const ripenTold = {
  roomTemperature: {
    usual: { words: 'The usual room.', formula: '{roomUsual}' },
  },
  readyTime: {
    ripening: {
      words:
        'The usual time at the usual room, times as long as this temperature takes it, less for more grains and for more sugar, divided by how fast this kitchen is.',
      formula:
        '{readyUsual} × {asLong} × ({usualDose} ÷ {grainRate})^{doseExponent} × ({usualStart} ÷ {startingSugar})^{sugarExponent} ÷ {pace}',
    },
  },
} as const satisfies ToldWays;
