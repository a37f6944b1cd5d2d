import type { Coefficient } from '../../reference/origins';

/** The range that is usual for a figure, in its unit, where there is one and its table believes a range; else null. */
export function usualRange(figure: Coefficient | undefined): { readonly low: number; readonly high: number } | null {
  return figure?.low === undefined || figure.high === undefined ? null : { low: figure.low, high: figure.high };
}
