import type { Coefficient } from '../../reference/origins';

/** The range that is usual for a figure, in its unit, where its table believes one; else null. */
export function usualRange({ low, high }: Coefficient): { readonly low: number; readonly high: number } | null {
  return low === undefined || high === undefined ? null : { low, high };
}
