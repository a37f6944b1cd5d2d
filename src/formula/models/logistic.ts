/** Where ln P has its slope and curvature, for P the chance of a standard logistic variable to lie in an interval. */
export interface Lean {
  /** d ln P ÷ du as the interval is moved down by u: F(from) + F(to) − 1, so never beyond −1 and 1. */
  readonly slope: number;
  /** −d² ln P ÷ du²: f(from) + f(to), from 0 (no bound) to 1/2. */
  readonly curvature: number;
}

/** What times the scale of a logistic distribution is its standard deviation. */
export const deviationOfScale = Math.PI / Math.sqrt(3); // algebra

/** The chance of a standard logistic variable to lie below x, and its density there; x may be infinite. */
function at(x: number): { readonly below: number; readonly density: number } {
  const fall = Math.exp(-Math.abs(x));
  const above = fall / (1 + fall);
  return { below: x < 0 ? above : 1 / (1 + fall), density: above / (1 + fall) };
}

/**
 * How an observation that lies between `from` and `to` leans, of a standard logistic variable about 0; either may be
 * infinite, from ≤ to. As f = F(1 − F), ln(F(to) − F(from)) has the slope F(from) + F(to) − 1: it is concave, and one
 * observation, however far out, pulls no harder than 1.
 */
export function leanOf(from: number, to: number): Lean {
  const [low, high] = [at(from), at(to)];
  return { slope: low.below + high.below - 1, curvature: low.density + high.density };
}
