import type { Instant } from '../time/event';
import { overlaps, type Span } from '../time/span';
import type { Making } from './making';
import type { BatchPlan } from './plan-batch';
import type { PlannedStep, Schedule, StepKind } from './schedule';

/** A step that needs hands, as a stretch of time. */
export interface Work extends Span {
  readonly step: PlannedStep;
}

/** A batch as it is looked at for clashes. */
export interface Placed {
  readonly making: Making;
  /** In order, each over before the next begins. */
  readonly work: readonly Work[];
  /** From its first work to the end of its last. */
  readonly frame: Span;
  /** From filling the jar to straining it: so long are grains and jars busy. Null where the plan stops before. */
  readonly busy: Span | null;
}

export interface PlacedPlan extends Placed {
  readonly plan: BatchPlan;
}

/** A spoonful is tasted when there is a moment for it, and a daily check need not happen. */
const canWait: readonly StepKind[] = ['taste', 'check'];

export function place(making: Making, { steps }: Schedule): Placed {
  const work = steps
    .filter(({ hands, kind }) => hands && !canWait.includes(kind))
    .map((step) => ({ step, from: step.at, to: step.at + step.minutes }));
  const [from, to] = [steps.find(({ kind }) => kind === 'make'), steps.find(({ kind }) => kind === 'strain')];
  const busy = from === undefined || to === undefined ? null : { from: from.at, to: to.at + to.minutes };
  // Without work it is no stretch of time, and meets nothing.
  const frame = { from: Math.min(...work.map((one) => one.from)), to: Math.max(...work.map((one) => one.to)) };
  return { making, work, frame, busy };
}

/** How often two batches need the same hands, and the work that does so first. */
export interface Met extends Span {
  readonly times: number;
  readonly steps: readonly [PlannedStep, PlannedStep];
}

/** Where the work of two batches meets and is not over at `present`; null where it does not. */
export function meetingOf(one: Placed, other: Placed, present: Instant): Met | null {
  const [first, ...others] = overlaps(one.frame, other.frame) ? meetings(one, other, present) : [];
  if (first === undefined) return null;
  const [mine, yours] = first;
  const [from, to] = [Math.max(mine.from, yours.from), Math.min(mine.to, yours.to)];
  return { from, to, times: others.length + 1, steps: [mine.step, yours.step] };
}

/** Whether the work of two batches meets at a time that is not over at `present`. */
export function meets(one: Placed, other: Placed, present: Instant = Number.NEGATIVE_INFINITY): boolean {
  return overlaps(one.frame, other.frame) && meetings(one, other, present).next().done !== true;
}

/**
 * Each two works that meet, in order. Of thousands of batches every pair comes here, so both lists are gone through
 * once, side by side, and no further than is asked for.
 */
function* meetings(one: Placed, other: Placed, present: Instant): Generator<readonly [Work, Work], undefined> {
  let [at, place] = [0, 0];
  for (;;) {
    const [mine, yours] = [one.work[at], other.work[place]];
    if (mine === undefined || yours === undefined) return;
    if (overlaps(mine, yours) && mine.to > present && yours.to > present) yield [mine, yours];
    if (mine.to <= yours.to) at += 1;
    else place += 1;
  }
}
