import { leanOf } from '../models/logistic';
import { solver } from '../models/positive-definite';

/** What is looked for: an effect, with how far it may be from 0 before anything is known (standard deviation). */
export interface Effect {
  readonly spread: number;
}

/**
 * An observation: the sum of its effects (by place) lies between two values, but for an error of its own. Those of the
 * same effects had better share one list of them.
 */
export interface Observation {
  readonly of: readonly number[];
  readonly from: number;
  readonly to: number;
}

/** The most probable effects, and how sure they are. */
export interface MostProbable {
  readonly effects: readonly number[];
  /** The variance of a sum of effects, by the curvature at the top. */
  readonly varianceOf: (places: readonly number[]) => number;
}

const mostSteps = 100;
const near = 1e-20; // tolerance: the square of a step, over its variance
const shortest = 1e-9; // tolerance

interface Posterior {
  readonly slope: readonly number[];
  /** With the sign turned, so that it is positive definite; never below the prior’s. */
  readonly curvature: readonly (readonly number[])[];
}

/**
 * The effects that are most probable given all observations. The priors are normal about 0, the errors logistic of this
 * scale, so the log posterior is concave and has one top, and no observation pulls harder than 1 ÷ scale. Newton’s steps,
 * halved wherever one would go well beyond the top along its way. `from` is where to begin.
 */
export function findMostProbable(
  effects: readonly Effect[],
  observations: readonly Observation[],
  scale: number,
  from: readonly number[] = effects.map(() => 0),
): MostProbable {
  let x = from;
  let here = posterior(x, effects, observations, scale);
  for (let step = 0; step < mostSteps; step += 1) {
    const way = solver(here.curvature)(here.slope);
    const gain = dot(here.slope, way);
    if (!(gain > near)) break;
    let share = 1;
    let next = x;
    do {
      next = x.map((value, at) => value + share * (way[at] ?? 0));
      here = posterior(next, effects, observations, scale);
      share /= 2;
    } while (dot(here.slope, way) < -gain / 2 && share > shortest);
    x = next;
  }
  const solve = solver(here.curvature);
  return {
    effects: x,
    varianceOf(places) {
      const weights = effects.map((_, at) => (places.includes(at) ? 1 : 0));
      return dot(weights, solve(weights));
    },
  };
}

function posterior(
  x: readonly number[],
  effects: readonly Effect[],
  observations: readonly Observation[],
  scale: number,
): Posterior {
  const slope = effects.map(({ spread }, at) => -(x[at] ?? 0) / spread ** 2);
  const curvature = effects.map(({ spread }, row) => [...Array<number>(row).fill(0), 1 / spread ** 2]);
  // Many observations are of the same effects: their pulls are added up before they are handed on.
  const pulls = new Map<readonly number[], { readonly u: number; pull: number; bend: number }>();
  for (const { of, from, to } of observations) {
    const here = pulls.get(of) ?? { u: of.reduce((sum, at) => sum + (x[at] ?? 0), 0), pull: 0, bend: 0 };
    pulls.set(of, here);
    const lean = leanOf((from - here.u) / scale, (to - here.u) / scale);
    here.pull += lean.slope / scale;
    here.bend += lean.curvature / scale ** 2;
  }
  for (const [of, { pull, bend }] of pulls) {
    for (const at of of) {
      slope[at] = (slope[at] ?? 0) + pull;
      for (const other of of) {
        const row = curvature[at];
        if (row !== undefined && other <= at) row[other] = (row[other] ?? 0) + bend;
      }
    }
  }
  return { slope, curvature };
}

function dot(one: readonly number[], other: readonly number[]): number {
  return one.reduce((sum, value, at) => sum + value * (other[at] ?? 0), 0);
}
