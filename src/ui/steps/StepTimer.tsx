import { useComputed } from '@preact/signals';
import { isOver, type TimedStep, writeLeft } from '../../batch/keeping/timers';
import { type Kitchen, writeValue } from '../../formula/words/write-row';
import type { Cooking } from './cooking';
import { allowSound } from './ring';

interface Props {
  readonly id: TimedStep;
  readonly title: string;
  /** How long it takes, h; null where it takes no time now. */
  readonly wait: number | null;
  readonly batch: string;
  readonly cooking: Cooking;
  readonly kitchen: Kitchen;
}

/** Starts the timer of a step, shows what is left of it, stops it; nothing where it takes no time now. */
export function StepTimer({ id, title, wait, batch, cooking, kitchen }: Props) {
  const left = useComputed(() => {
    const timer = cooking.timers.value.find((one) => one.batch === batch && one.step === id);
    if (timer === undefined) return null;
    return isOver(timer, cooking.now.value) ? 'time is up' : writeLeft(timer, cooking.now.value);
  }).value;
  if (left !== null)
    return (
      <button type="button" class="button step-timer runs" onClick={() => cooking.stop({ batch, step: id })}>
        <b>{left}</b> <span>stop</span>
      </button>
    );
  if (wait === null) return null;
  const time = writeValue(wait, 'time', null, kitchen).metric;
  return (
    <button
      type="button"
      class="button step-timer"
      aria-label={`Start a timer of ${time}: ${title}`}
      onClick={() => {
        allowSound();
        cooking.start(batch, id, wait);
      }}
    >
      {time} <span aria-hidden="true">▸</span>
    </button>
  );
}
