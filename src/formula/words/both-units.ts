import type { Kitchen, Written } from './write-row';

/** Both writings of an amount, the one the cook reads first in front, such as `21 °C (70 °F)`. */
export function bothUnits({ metric, us }: Pick<Written, 'metric' | 'us'>, leads: Kitchen['leads']): string {
  if (us === null) return metric;
  return leads === 'us' ? `${us} (${metric})` : `${metric} (${us})`;
}
