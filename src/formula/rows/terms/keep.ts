import type { Ways } from '../row';

/** How long the kefir keeps. */
export const keepTerms = {
  keepLeast: { usual: '{shortKeep}' },
  keepMost: { usual: '{longKeep}' },
} satisfies Record<string, Ways>;
