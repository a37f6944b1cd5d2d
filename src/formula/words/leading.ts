import { writeOffShort } from './in-scoops';
import type { Kitchen, Written } from './write-row';

/** An amount's two writings, the one the cook reads first in front; `second` is null where there is only one. */
export function leading(
  written: Pick<Written, 'metric' | 'us'>,
  leads: Kitchen['leads'],
): { first: string; second: string | null } {
  if (written.us === null) return { first: written.metric, second: null };
  return leads === 'us' ? { first: written.us, second: written.metric } : { first: written.metric, second: written.us };
}

/**
 * The same in short, and the first as it can be typed: of spoons and ounces the spoons, with how far they are off in
 * figures. The ounces are in the working.
 */
export function leadingInShort(written: Written, leads: Kitchen['leads']): { first: string; second: string | null } {
  const { metric, us, spoons, off } = written;
  if (off === null) return leading({ ...written, us: spoons ?? us }, leads);
  const second = leads === 'us' ? `${metric} · ` : `${spoons}, `;
  return { first: leads === 'us' && spoons !== null ? spoons : metric, second: `${second}${writeOffShort(off)}` };
}
