import { convertNumber } from '../../measure/units';
import type { Instant } from '../time/event';
import { dayMinutes, isInNight, type Span } from '../time/span';
import type { Making, Wait } from './making';
import { type Following, findWait } from './night-free';

export type StepKind = 'soak' | 'make' | 'taste' | 'check' | 'strain' | 'bottle' | 'chill' | 'drink' | 'best' | 'last';

/** Something to do, or a mark in time. */
export interface PlannedStep {
  /** The kind; with the day behind it for a daily check: check-1, check-2 … */
  readonly id: string;
  readonly kind: StepKind;
  readonly at: Instant;
  readonly minutes: number;
  readonly hands: boolean;
  /** Whether hands are needed in the quiet hours. */
  readonly inNight: boolean;
}

export type WaitKind = 'soak' | 'ferment' | 'second' | 'fridge';

/** A wait as planned, with how long it may last, in minutes. */
export interface PlannedWait extends Span {
  readonly kind: WaitKind;
  readonly range: Wait;
}

/** One batch in time. Steps are in order; a later one never begins before an earlier one. */
export interface Schedule {
  readonly batch: string;
  readonly name: string;
  readonly start: Instant;
  readonly steps: readonly PlannedStep[];
  readonly waits: readonly PlannedWait[];
  /** When the kefir comes into the fridge, and the first glass; null where the plan stops before. */
  readonly cold: Instant | null;
  readonly drink: Instant | null;
  /** Why it is planned no further; null where it is planned to its first glass. */
  readonly stopped: string | null;
}

/** For how long the bottles stand by a plan, h; null where it has no second ferment. */
export function secondHoursOf({ waits }: Schedule): number | null {
  const wait = waits.find(({ kind }) => kind === 'second');
  return wait === undefined ? null : convertNumber(wait.to - wait.from, 'min', 'h');
}

/**
 * A batch from its start on. Each wait is as long as is likely, or as near to that within its own range as keeps the
 * work after it out of the quiet hours; where no length does, it stays likely and the work is marked as in the night.
 * `start` is never moved.
 * A slow homemade milk is tested before it is strained; where it is strained before its line, straining reads its pH.
 */
export function planForwards(making: Making, start: Instant, nights: readonly Span[]): Schedule {
  const steps: PlannedStep[] = [];
  const waits: PlannedWait[] = [];
  const work = (kind: StepKind, at: Instant, minutes: number, id: string = kind): Instant => {
    steps.push({ id, kind, at, minutes, hands: true, inNight: isInNight(at, minutes, nights) });
    return at + minutes;
  };
  const wait = (kind: WaitKind, from: Instant, range: Wait, following: Following): Instant => {
    const to = from + findWait(from, range, following, nights);
    waits.push({ kind, from, to, range });
    return to;
  };
  const done = (rest: Pick<Schedule, 'cold' | 'drink' | 'stopped'>): Schedule => {
    return { batch: making.batch, name: making.name, start, steps: inOrder(steps), waits, ...rest };
  };
  const { soak, make, ferment, strain, second, chill } = making;
  let at = start;
  if (soak !== null) at = wait('soak', work('soak', at, soak.minutes), soak.wait, workFor(make));
  at = work('make', at, make);
  if ('why' in ferment) return done({ cold: null, drink: null, stopped: ferment.why });
  const jarred = at;
  at = wait('ferment', jarred, ferment.wait, afterFerment(making));
  const strained = at;
  tasteBetween(making, jarred + ferment.wait.low, strained, nights).forEach((from) => {
    work('taste', from, making.taste);
  });
  const { turnsBy } = making;
  const checks = turnsBy !== null && strained < jarred + turnsBy ? 0 : (making.checks ?? 0);
  for (let day = 1; day <= checks; day += 1) {
    const due = turnsBy === null ? jarred + day * dayMinutes : Math.min(jarred + turnsBy, strained - making.taste);
    const within = Math.min(due - jarred, dayMinutes);
    work('check', checkAt({ due, within }, making.taste, nights, day === checks), making.taste, `check-${day}`);
  }
  at = work('strain', strained, strain);
  if (second !== null) {
    at = work('bottle', at, second.bottle);
    at = work('chill', wait('second', at, second.wait, workFor(second.fridge)), second.fridge);
  }
  const cold = at;
  const drink = wait('fridge', cold, chill, workFor(0));
  steps.push({ id: 'drink', kind: 'drink', at: drink, minutes: 0, hands: false, inNight: false });
  return done({ cold, drink, stopped: null });
}

/** The same plan with its first glass at another time, for which it must be cold already and still keep. */
export function drinkAt(schedule: Schedule, at: Instant): Schedule {
  const steps = schedule.steps.map((step) => (step.kind === 'drink' ? { ...step, at } : step));
  const waits = schedule.waits.map((wait) => (wait.kind === 'fridge' ? { ...wait, to: at } : wait));
  return { ...schedule, steps: inOrder(steps), waits, drink: at };
}

/** When the grains come out: the day that a label calls its making. Null where the plan stops before. */
export function strainedAt({ steps }: Schedule): Instant | null {
  return steps.find(({ kind }) => kind === 'strain')?.at ?? null;
}

/** Elapsed minutes from the start of a plan to one of its steps. */
export function sinceStart({ start }: Schedule, { at }: PlannedStep): number {
  return at - start;
}

/** The steps that fall in the night; a daily check may well not be needed, and does not count. */
export function nightWork({ steps }: Schedule): readonly PlannedStep[] {
  return steps.filter(({ kind, inNight }) => inNight && kind !== 'check');
}

function workFor(minutes: number): Following {
  return { work: [{ from: 0, to: minutes }] };
}

/** Straining and bottling follow each other at once, and the fridge has to be within reach of them. */
function afterFerment({ strain, second }: Making): Following {
  if (second === null) return workFor(strain);
  const closed = strain + second.bottle;
  return { ...workFor(closed), next: { from: closed, wait: second.wait, following: workFor(second.fridge) } };
}

/** The first time awake at which it may be ready, if there is one well before straining. */
function tasteBetween({ taste }: Making, from: Instant, strained: Instant, nights: readonly Span[]): Instant[] {
  const slack = strained - taste - from;
  if (slack < 0) return [];
  const at = from + findWait(from, { low: 0, likely: 0, high: slack }, workFor(taste), nights);
  return isInNight(at, taste, nights) ? [] : [at];
}

/**
 * A check at the time awake that is nearest to when it is due. The last one decides whether the batch is thrown out: a
 * reading after its line would prove nothing, so the night only moves it earlier, and where no time of the day before
 * is free it stays at the line. It is never moved to before it was `within` minutes of being due.
 */
function checkAt(
  { due, within }: { readonly due: Instant; readonly within: number },
  minutes: number,
  nights: readonly Span[],
  isLast: boolean,
): Instant {
  const half = dayMinutes / 2;
  const around = isLast
    ? { low: 0, likely: within, high: within }
    : { low: half, likely: dayMinutes, high: dayMinutes + half - 1 };
  const from = isLast ? due - within : due - dayMinutes;
  return from + findWait(from, around, workFor(minutes), nights);
}

function inOrder(steps: readonly PlannedStep[]): readonly PlannedStep[] {
  return [...steps].sort((one, other) => one.at - other.at);
}
