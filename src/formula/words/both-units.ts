import { leading } from './leading';
import type { Kitchen, Written } from './write-row';

/** Both writings of an amount, the one the cook reads first in front, such as `21 °C (70 °F)`. */
export function bothUnits(written: Pick<Written, 'metric' | 'us'>, leads: Kitchen['leads']): string {
  const { first, second } = leading(written, leads);
  return second === null ? first : `${first} (${second})`;
}
