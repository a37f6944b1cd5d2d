import type { ToldWays } from './told-ways';

export const keepTold = {
  keepDays: {
    usual: { words: 'What is usual for this family of sources, from straining on.' },
  },
  keepLeast: {
    usual: { words: 'The short end of what is usual; a figure of your own has no other.' },
  },
  keepMost: {
    usual: { words: 'The long end of what is usual; a figure of your own has no other.' },
  },
} as const satisfies ToldWays;
