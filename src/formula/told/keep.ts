import type { ToldWays } from './told-ways';

export const keepTold = {
  keepDays: {
    usual: { words: 'What is usual for this family of sources, from straining on.', formula: '{keepUsual}' },
  },
  keepLeast: {
    usual: { words: 'The short end of what is usual; a figure of your own has no other.', formula: '{shortKeep}' },
  },
  keepMost: {
    usual: { words: 'The long end of what is usual; a figure of your own has no other.', formula: '{longKeep}' },
  },
} as const satisfies ToldWays;
