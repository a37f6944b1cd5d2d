import type { StepId } from '../../formula/steps/step';
import { writeTimeOfDay } from '../reading/write-time';

/** A timer that runs for a step of a batch, or whose time is up and that nobody has stopped yet. */
export interface Timer {
  readonly batch: string;
  readonly step: TimedStep;
  /** When its time is up, ms since 1970 by this machine’s clock. */
  readonly ends: number;
}

/** Steps that may have a timer, and what it is called: short, since several stand side by side. */
export const timerNames = {
  soak: 'Soak',
  heatSource: 'Heat',
  blend: 'Blend',
  heatMilk: 'Heat the milk',
  wait: 'Taste',
  second: 'Bottles',
  chill: 'Chill',
} as const satisfies Partial<Record<StepId, string>>;
export type TimedStep = keyof typeof timerNames;

const inSecond = 1000;
const perMinute = 60;
const perHour = 60;
const inHour = perHour * perMinute * inSecond;

export function isTimedStep(id: string): id is TimedStep {
  return Object.hasOwn(timerNames, id);
}

/** With a timer of this many hours begun now, the next to ring first; it takes the place of one for the same step. */
export function withTimer(
  timers: readonly Timer[],
  { batch, step }: Pick<Timer, 'batch' | 'step'>,
  hours: number,
  now: number,
): readonly Timer[] {
  const others = withoutTimer(timers, { batch, step });
  return [...others, { batch, step, ends: now + hours * inHour }].sort((one, other) => one.ends - other.ends);
}

export function withoutTimer(
  timers: readonly Timer[],
  { batch, step }: Pick<Timer, 'batch' | 'step'>,
): readonly Timer[] {
  return timers.filter((one) => one.batch !== batch || one.step !== step);
}

export function isOver({ ends }: Timer, now: number): boolean {
  return ends <= now;
}

/** What is left of a timer, as a clock shows it: `9 h 05 min`, then `59:59`. What has begun of a minute or second counts. */
export function writeLeft({ ends }: Timer, now: number): string {
  const seconds = Math.max(0, Math.ceil((ends - now) / inSecond));
  const two = (part: number): string => String(part).padStart(2, '0');
  if (seconds < perMinute * perHour) return `${Math.floor(seconds / perMinute)}:${two(seconds % perMinute)}`;
  const minutes = Math.ceil(seconds / perMinute);
  return `${Math.floor(minutes / perHour)}\u00A0h ${two(minutes % perHour)}\u00A0min`;
}

/** When a timer rings or rang, by the clock on the wall: 07:40. */
export function writeEnd({ ends }: Timer): string {
  return writeTimeOfDay(Math.floor(ends / (perMinute * inSecond)));
}
