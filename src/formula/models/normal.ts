/** Where ln P has its slope and curvature, for P the chance of a standard normal variable to lie in an interval. */
export interface Pull {
  /** (φ(α) − φ(β)) ÷ (Φ(β) − Φ(α)): the mean of the variable within the interval. */
  readonly mean: number;
  /** The variance within the interval, from 0 (a point) to 1 (no bound). */
  readonly variance: number;
}

const terms = 100;
/** Below this the series keeps more digits, above it the continued fraction. */
const seriesUpTo = 2;
const rounding = 1e-17; // tolerance
const narrow = 1e-4; // tolerance: of an interval so narrow the middle is as exact as the difference of two chances

/**
 * Mills’ ratio (1 − Φ(x)) ÷ φ(x) of the standard normal distribution, for x from 0 up without limit; never underflows.
 * By Laplace’s continued fraction 1/(x + 1/(x + 2/(x + …))), near 0 by the series of Φ.
 */
export function millsRatio(x: number): number {
  if (x === Number.POSITIVE_INFINITY) return 0;
  if (x > seriesUpTo) {
    let rest = x;
    for (let n = terms; n >= 1; n -= 1) rest = x + n / rest;
    return 1 / rest;
  }
  let sum = x;
  let term = x;
  for (let n = 1; n <= terms && term > rounding * sum; n += 1) {
    term *= x ** 2 / (2 * n + 1);
    sum += term;
  }
  return Math.sqrt(Math.PI / 2) * Math.exp(x ** 2 / 2) - sum;
}

/** The density of the standard normal distribution. */
function density(x: number): number {
  return Math.exp(-(x ** 2) / 2) / Math.sqrt(2 * Math.PI);
}

/**
 * Mean and variance of a standard normal variable known to lie between `from` and `to`; either may be infinite, and
 * both may be far out in one tail. For ends up to 1e6 either way, from ≤ to.
 */
export function truncatedNormal(from: number, to: number): Pull {
  // Reflected so that the interval lies upward: the upper tail is where the ratio keeps its digits.
  if (from + to < 0) {
    const { mean, variance } = truncatedNormal(-to, -from);
    return { mean: -mean, variance };
  }
  if (from === Number.NEGATIVE_INFINITY) return { mean: 0, variance: 1 };
  const middle = (from + to) / 2;
  if ((to - from) * Math.max(1, middle) < narrow) return { mean: middle, variance: 0 };
  const isOpen = to === Number.POSITIVE_INFINITY;
  if (from >= 0) {
    // Everything over φ(from), which may be too small to be written.
    const fall = isOpen ? 0 : Math.exp((from - to) * middle);
    const chance = millsRatio(from) - fall * millsRatio(to);
    const mean = (isOpen ? 1 : -Math.expm1((from - to) * middle)) / chance;
    return { mean, variance: bounded(1 + (from - (isOpen ? 0 : to * fall)) / chance - mean ** 2) };
  }
  const [low, high] = [density(from), isOpen ? 0 : density(to)];
  const chance = 1 - low * millsRatio(-from) - high * millsRatio(to);
  const mean = (low - high) / chance;
  return { mean, variance: bounded(1 + (from * low - (isOpen ? 0 : to * high)) / chance - mean ** 2) };
}

function bounded(variance: number): number {
  return Math.min(1, Math.max(0, variance));
}
