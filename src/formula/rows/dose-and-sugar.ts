import type { Access } from './row';

/**
 * How many times as long the first ferment takes as at the usual dose and the usual sugar; 1 there, less for more, of
 * grains up to so many times the usual. NaN
 * where the start is typed below what the milk brings of its own, which is no start to reckon from.
 */
export function atThisDoseAndSugar(x: Access): number {
  if (x.plan.accepted.has('startingSugar') && Number.isNaN(x.of('sugarRate'))) return Number.NaN;
  const counted = Math.min(x.of('grainRate'), x.c('doseMost') * x.c('usualDose'));
  const dose = power(x.c('usualDose') / counted, x.c('doseExponent'));
  const usual = x.of('usualStart');
  // A cook whose usual is no sugar at all gives nothing to compare with.
  return usual === 0 ? dose : dose * power(usual / x.of('startingSugar'), x.c('sugarExponent'));
}

/** A figure that can't be had stays so: to the power of 0 it would count as 1. */
function power(base: number, exponent: number): number {
  return Number.isNaN(base) ? base : base ** exponent;
}
