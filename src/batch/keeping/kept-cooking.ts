import { type StepId, stepOrder } from '../../formula/steps/step';
import { isTimedStep, type Timer } from './timers';

/** The steps of each batch, by its id, that are ticked off. */
export type Ticks = Readonly<Record<string, readonly StepId[]>>;

/** With a step ticked off, or no longer. */
export function withTick(ticks: Ticks, batch: string, step: StepId, isDone: boolean): Ticks {
  const others = ticksOf(ticks, batch).filter((id) => id !== step);
  return { ...ticks, [batch]: isDone ? [...others, step] : others };
}

/** The ticked steps of a batch. */
export function ticksOf(ticks: Ticks, batch: string): readonly StepId[] {
  return Object.hasOwn(ticks, batch) ? (ticks[batch] ?? []) : [];
}

/** Without the batches that the sheet no longer has: the id of one that went is given to the next that is made. */
export function ticksWithin(ticks: Ticks, batches: ReadonlySet<string>): Ticks {
  return Object.fromEntries(Object.entries(ticks).filter(([batch, steps]) => batches.has(batch) && steps.length > 0));
}

/** The timers in a kept text, which anything may have written: what is no timer is left out. */
export function readTimers(text: string | null): readonly Timer[] {
  const found = parse(text);
  if (!Array.isArray(found)) return [];
  const all: readonly unknown[] = found;
  return all.flatMap((one): Timer[] => {
    if (typeof one !== 'object' || one === null || !('batch' in one && 'step' in one && 'ends' in one)) return [];
    const { batch, step, ends } = one;
    if (typeof batch !== 'string' || typeof step !== 'string' || typeof ends !== 'number') return [];
    return isTimedStep(step) && Number.isFinite(ends) ? [{ batch, step, ends }] : [];
  });
}

/** The ticks in a kept text, which anything may have written: what is none is left out. */
export function readTicks(text: string | null): Ticks {
  const found = parse(text);
  if (typeof found !== 'object' || found === null) return {};
  const entries: readonly (readonly [string, unknown])[] = Object.entries(found);
  return Object.fromEntries(
    entries.map(([batch, steps]) => [batch, stepOrder.filter((id) => Array.isArray(steps) && steps.includes(id))]),
  );
}

function parse(text: string | null): unknown {
  try {
    return text === null ? null : JSON.parse(text);
  } catch {
    return null;
  }
}
