import { learning } from '../../reference/pace';
import { truncatedNormal } from '../models/normal';
import { type Look, makesOf, type TimedLook } from './looks';

/** How fast a kitchen ferments against the usual: 2 is twice as fast. */
export interface LearnedPace {
  /** The most probable k. */
  readonly pace: number;
  readonly low: number;
  readonly high: number;
  /** How many makes taught it. */
  readonly count: number;
}

/** Between which values ln(expected ÷ ready time) of one make lies. */
interface Interval {
  readonly from: number;
  readonly to: number;
}

const everywhere: Interval = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY };
const mostSteps = 100;
const near = 1e-13; // tolerance

/**
 * This kitchen’s pace k from what was found at its jars; null where nothing teaches it. Looks at one make are one
 * observation. The true ready time is t = expected ÷ k · e^ε with ε normal, and ln k has a normal prior about 0.
 *
 * t is when it first tastes ready, and it stays ready until `ripeSpan` times t. Found flat at h: t > h. Ready: between
 * h ÷ ripeSpan and h. Too sour: t < h ÷ ripeSpan. Looks at one make that contradict each other leave t between the two
 * bounds that do, so that a look that says “slower” can never make k larger. The estimate is the most probable ln k, the
 * one place where the slope of the log posterior, which is concave, is 0. The range is by the curvature there.
 */
export function learnPace(looks: readonly Look[]): LearnedPace | null {
  const intervals = makesOf(looks.filter(teaches), learning.sameMake.value).map(intervalOf);
  if (intervals.length === 0) return null;
  const most = findMostProbable(intervals);
  const { curvature } = posterior(most, intervals);
  const half = learning.likelyWidth.value / Math.sqrt(curvature);
  return {
    pace: Math.exp(most),
    low: Math.exp(most - half),
    high: Math.exp(most + half),
    count: intervals.length,
  };
}

/** Whether a look says anything about the pace: more than “just looked”, with its hours and what was expected, both sensible. */
export function teaches({ found, hours, expected }: Look): boolean {
  return found !== 'looked' && isSensible(hours) && isSensible(expected);
}

function isSensible(hours: number | null): boolean {
  return hours !== null && hours >= learning.leastHours.value && hours <= learning.mostHours.value;
}

function intervalOf(make: readonly TimedLook[]): Interval {
  const { from, to } = make
    .map(boundsOf)
    .reduce((all, one) => ({ from: Math.max(all.from, one.from), to: Math.min(all.to, one.to) }), everywhere);
  return from <= to ? { from, to } : { from: to, to: from };
}

function boundsOf({ found, hours, expected }: TimedLook): Interval {
  const atOnce = Math.log(expected ?? 1) - Math.log(hours);
  const before = atOnce + Math.log(learning.ripeSpan.value);
  switch (found) {
    case 'flat':
      return { ...everywhere, to: atOnce };
    case 'ready':
      return { from: atOnce, to: before };
    case 'sour':
      return { ...everywhere, from: before };
    case 'looked':
      return everywhere;
  }
}

/** Slope of the log posterior of ln k at `u`, and its curvature with the sign turned, which is never below the prior’s. */
function posterior(u: number, intervals: readonly Interval[]): { readonly slope: number; readonly curvature: number } {
  const spread = learning.batchSpread.value;
  let slope = -u / learning.kitchenSpread.value ** 2;
  let curvature = 1 / learning.kitchenSpread.value ** 2;
  for (const { from, to } of intervals) {
    const { mean, variance } = truncatedNormal((from - u) / spread, (to - u) / spread);
    slope += mean / spread;
    curvature += (1 - variance) / spread ** 2;
  }
  return { slope, curvature };
}

/** Newton’s steps, halved between the bounds found so far wherever one would leave them. */
function findMostProbable(intervals: readonly Interval[]): number {
  let [low, high] = [-1, 1];
  while (posterior(low, intervals).slope < 0) low *= 2;
  while (posterior(high, intervals).slope > 0) high *= 2;
  let u = 0;
  for (let step = 0; step < mostSteps; step += 1) {
    const { slope, curvature } = posterior(u, intervals);
    if (slope === 0) return u;
    if (slope > 0) low = u;
    else high = u;
    const newton = u + slope / curvature;
    const next = newton > low && newton < high ? newton : (low + high) / 2;
    if (Math.abs(next - u) <= near * Math.max(1, Math.abs(u))) return next;
    u = next;
  }
  return u;
}
