import type { GrainKind } from '../../reference/grains';
import type { Coefficient } from '../../reference/origins';
import type { SourceId } from '../../reference/sources';
import { sources } from '../../reference/sources';
import { type ExpectedGrowthId, expectedGrowth, growthLearning } from '../../reference/stock-growth';
import { studentQuantile } from '../models/student';
import type { Medium, Round } from './ledger';

/** What grains are in: a milk of the sheet, or a liquid they rest in. */
export type GrowsIn = { readonly source: SourceId } | { readonly medium: Medium };

/** A growth a batch, as a factor; how it came about. */
export interface Growth {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  /** Batches of one’s own that it rests on; 0 where it is only what is expected. */
  readonly from: number;
  /** Their geometric mean; null without any. */
  readonly own: number | null;
  /** How many batches the expected figure counted as. */
  readonly weight: number;
  readonly expected: Coefficient;
}

export interface GrowthLine {
  readonly in: GrowsIn;
  readonly growth: Growth;
  /** Rounds that look like a slip of the scale, and were not counted. */
  readonly slips: number;
}

/** What a gram of grains comes to in one batch, before any of this kitchen’s own was weighed. */
export function expectedIn(grains: GrainKind, where: GrowsIn): Coefficient {
  return expectedGrowth[expectedId(grains, where)];
}

function expectedId(grains: GrainKind, where: GrowsIn): ExpectedGrowthId {
  if ('medium' in where) {
    if (where.medium === 'sugarWater' && grains === 'water') return 'waterInSugarWater';
    return where.medium === 'dairy' && grains === 'milk' ? 'milkInDairy' : 'inPlantMilk';
  }
  if (where.source === 'coconutWater' && grains === 'water') return 'waterInCoconutWater';
  if (sources[where.source].family === 'coconut') return 'inCoconut';
  return where.source === 'soy' && grains === 'milk' ? 'milkInSoy' : 'inPlantMilk';
}

/** Whether a round was weighed so that it can be growth: neither lost grains nor a slip of the scale. */
export function isGrowth({ before, after }: Pick<Round, 'before' | 'after'>): boolean {
  const ratio = after / before;
  return ratio >= growthLearning.leastRatio.value && ratio <= growthLearning.mostRatio.value;
}

/**
 * The growth a batch from rounds that were weighed, as a range meant to hold four times in five. The logarithms of the
 * ratios after ÷ before are taken as normal with mean and spread unknown. What is expected counts as n₀ batches, n₀ being
 * the square of the usual spread over its own; the usual spread counts as ν₀ batches. The mean is then the mean of all
 * of them, its interval Student’s t with ν₀ + n degrees of freedom: without any expectation the plain t interval of the
 * log ratios, and near it with many batches. Without any round it is the expected figure with its own range. Source: the
 * conjugate normal model of textbooks, from memory; worked by hand in tests.
 */
export function growthFrom(rounds: readonly Pick<Round, 'before' | 'after'>[], expected: Coefficient): Growth {
  const range = rangeOf(expected);
  const { spread, spreadWorth, expectedWidth, below, recent } = growthLearning;
  const weight = (spread.value / (Math.log(range.high / range.low) / (2 * expectedWidth.value))) ** 2;
  const logs = rounds
    .filter(isGrowth)
    .slice(-recent.value)
    .map(({ before, after }) => Math.log(after / before));
  const count = logs.length;
  const at = { weight, expected, from: count };
  if (count === 0) return { ...range, likely: expected.value, own: null, ...at };
  const mean = logs.reduce((sum, log) => sum + log, 0) / count;
  const scatter = logs.reduce((sum, log) => sum + (log - mean) ** 2, 0);
  const start = Math.log(expected.value);
  const all = weight + count;
  const middle = (weight * start + count * mean) / all;
  const degrees = spreadWorth.value + count;
  const apart = (weight * count * (mean - start) ** 2) / all;
  const variance = (spreadWorth.value * spread.value ** 2 + scatter + apart) / degrees;
  const half = studentQuantile(below.value, degrees) * Math.sqrt(variance / all);
  return {
    low: Math.exp(middle - half),
    likely: Math.exp(middle),
    high: Math.exp(middle + half),
    own: Math.exp(mean),
    ...at,
  };
}

/** The ends of what is expected; a figure without a range may be that much more or less. */
function rangeOf({ value, low, high }: Coefficient): { readonly low: number; readonly high: number } {
  const apart = growthLearning.withoutRange.value;
  return { low: low ?? value / apart, high: high ?? value * apart };
}

/** The growth of a stock in each thing it was in, what it was in last first. */
export function growthBySource(grains: GrainKind, rounds: readonly Round[]): readonly GrowthLine[] {
  const found = new Map<string, { readonly where: GrowsIn; readonly rounds: Round[] }>();
  for (const round of rounds) {
    const where = whereOf(round);
    if (where === null) continue;
    const key = Object.values(where).join();
    const group = found.get(key) ?? { where, rounds: [] };
    group.rounds.push(round);
    // Set anew, so that the latest stands last.
    found.delete(key);
    found.set(key, group);
  }
  return [...found.values()].reverse().map((group): GrowthLine => {
    const slips = group.rounds.filter((round) => !isGrowth(round)).length;
    return { in: group.where, growth: growthFrom(group.rounds, expectedIn(grains, group.where)), slips };
  });
}

function whereOf({ source, medium }: Round): GrowsIn | null {
  if (source !== null) return { source };
  return medium === null ? null : { medium };
}

/** The growth of a stock in one thing: its own where it was weighed there, else what is expected. */
export function growthIn(grains: GrainKind, lines: readonly GrowthLine[], where: GrowsIn): Growth {
  const key = Object.values(where).join();
  const line = lines.find((each) => Object.values(each.in).join() === key);
  return line?.growth ?? growthFrom([], expectedIn(grains, where));
}

/** What so many grams come to after so many batches at a growth. */
export function after(grams: number, growth: number, batches: number): number {
  return grams * growth ** batches;
}

/** After how many batches grains weigh twice as much; no number where they do not grow. */
export function doublingIn(growth: number): number {
  return growth > 1 ? Math.log(2) / Math.log(growth) : Number.POSITIVE_INFINITY;
}
