import type { Kitchen, Written } from '../../formula/write-row';

/** An amount's two writings, the one the cook reads first in front; `second` is null where there is only one. */
export function leading(written: Written, leads: Kitchen['leads']): { first: string; second: string | null } {
  if (written.us === null) return { first: written.metric, second: null };
  return leads === 'us' ? { first: written.us, second: written.metric } : { first: written.metric, second: written.us };
}
