import type { ToldWays } from './told-ways';

export const yieldTold = {
  milkLeast: {
    balance: {
      words: 'With the least that bags let pass, pulp pressed the least, and the most lost in handling.',
    },
  },
  milkMost: {
    balance: {
      words: 'With the most that bags let pass, pulp pressed the driest, and the least lost in handling.',
    },
  },
  solidsLeast: {
    balance: { words: 'With the least that bags let pass, in milk pressed out the most.' },
  },
  solidsMost: {
    balance: { words: 'With the most that bags let pass, in milk pressed out the least.' },
  },
} as const satisfies ToldWays;
