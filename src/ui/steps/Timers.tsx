import { useComputed, useSignalEffect } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import { isOver, type Timer, timerNames, writeEnd, writeLeft } from '../../batch/keeping/timers';
import type { Store } from '../../batch/store/store';
import type { PageState } from '../page/page-state';
import type { SheetState } from '../sheet/sheet-state';
import { type Cooking, cookingOn } from './cooking';
import { allowSound, ring } from './ring';
import './timers.css';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
  readonly page: PageState;
}

const usualTitle = document.title;
const everySecond = 1000;
const ringAgain = 4000;
/** Rings in all, so that a phone left in the kitchen does not ring through the night. */
const rings = 15;

/** The timers that run, whatever part is open: a press goes to the step, another stops it. */
export default function Timers({ store, state, page }: Props) {
  const cooking = useMemo(() => cookingOn(page), [page]);
  const timers = cooking.timers.value;
  const over = useComputed(() => timersOver(cooking)).value;
  useEffect(() => cooking.follow(), [cooking]);
  useSignalEffect(() => cooking.keepOnly(new Set(store.document.value.batches.map(({ id }) => id))));
  useEffect(() => followClock(cooking, timers.length > 0), [timers.length > 0]);
  useEffect(() => {
    if (over === '') return;
    document.title = `Time is up: ${over} · ${usualTitle}`;
    state.notice.value = `Time is up: ${over}.`;
    const stopRinging = ringFor(rings);
    return () => {
      stopRinging();
      document.title = usualTitle;
    };
  }, [over]);
  if (timers.length === 0) return null;
  const { batches } = store.document.value;
  return (
    <section class="timers" aria-label="Timers">
      <ul>
        {timers.map((timer) => (
          <OneTimer
            key={`${timer.batch} ${timer.step}`}
            timer={timer}
            cooking={cooking}
            batch={batches.length > 1 ? (batches.find(({ id }) => id === timer.batch)?.name ?? null) : null}
            go={() => {
              state.select({ at: 'vessel', batch: timer.batch });
              page.open('steps');
            }}
          />
        ))}
      </ul>
    </section>
  );
}

interface OneProps {
  readonly timer: Timer;
  readonly cooking: Cooking;
  /** The name of its batch, where there are several. */
  readonly batch: string | null;
  readonly go: () => void;
}

function OneTimer({ timer, cooking, batch, go }: OneProps) {
  const left = useComputed(() => (isOver(timer, cooking.now.value) ? null : writeLeft(timer, cooking.now.value))).value;
  const name = timerNames[timer.step];
  return (
    <li class={left === null ? 'timer over' : 'timer'}>
      <button type="button" class="timer-step" title={`Rings at ${writeEnd(timer)}`} onClick={go}>
        {name} <bdi class="timer-batch">{batch}</bdi> <b role="timer">{left ?? `time is up, ${writeEnd(timer)}`}</b>
      </button>
      <button
        type="button"
        class="timer-stop"
        aria-label={batch === null ? `Stop the timer: ${name}` : `Stop the timer: ${name}, ${batch}`}
        onClick={({ currentTarget }) => {
          const next = nextFocus(currentTarget);
          cooking.stop(timer);
          next?.focus();
        }}
      >
        {left === null ? 'Stop' : '×'}
      </button>
    </li>
  );
}

/** Where the focus goes when a timer goes that has it: to another timer, else to the name of what is open. */
function nextFocus(button: HTMLElement): HTMLElement | null {
  const own = button.closest('.timer');
  const others = [...document.querySelectorAll<HTMLElement>('.timer .timer-step')];
  return (
    others.find((one) => one.closest('.timer') !== own) ??
    document.querySelector<HTMLElement>('.part-name[aria-selected="true"], .phone-bar [aria-current]')
  );
}

/** The names of those whose time is up, in words; empty where there are none. */
function timersOver({ timers, now }: Cooking): string {
  const over = timers.value.filter((timer) => isOver(timer, now.value));
  return [...new Set(over.map(({ step }) => timerNames[step]))].join(', ');
}

/** Looks at the clock each second for as long as a timer is there, and when the page is seen again. */
function followClock(cooking: Cooking, isNeeded: boolean): (() => void) | undefined {
  if (!isNeeded) return undefined;
  cooking.look();
  const clock = setInterval(cooking.look, everySecond);
  document.addEventListener('visibilitychange', cooking.look);
  // A page that was opened anew has no sound until it is pressed.
  document.addEventListener('pointerdown', allowSound, { once: true });
  return () => {
    clearInterval(clock);
    document.removeEventListener('visibilitychange', cooking.look);
    document.removeEventListener('pointerdown', allowSound);
  };
}

function ringFor(times: number): () => void {
  let left = times;
  const once = () => {
    ring();
    left -= 1;
    if (left <= 0) clearInterval(again);
  };
  const again = setInterval(once, ringAgain);
  once();
  return () => clearInterval(again);
}
