import { batch, type ReadonlySignal, signal } from '@preact/signals';
import { readTicks, readTimers, type Ticks, ticksWithin, withTick } from '../../batch/keeping/kept-cooking';
import { isOver, type TimedStep, type Timer, withoutTimer, withTimer } from '../../batch/keeping/timers';
import type { StepId } from '../../formula/steps/steps';
import type { PageState } from '../page/page-state';

/** What goes on in the kitchen: steps that are done, and timers. Kept in this browser, apart from the sheet. */
export interface Cooking {
  readonly ticks: ReadonlySignal<Ticks>;
  readonly timers: ReadonlySignal<readonly Timer[]>;
  /** The time, ms since 1970, as of the last look at the clock. */
  readonly now: ReadonlySignal<number>;
  /** The batch that was worked at since the page was opened, whose screen stays awake; null where none was. */
  readonly atWork: ReadonlySignal<string | null>;
  tick(batch: string, step: StepId, isDone: boolean): void;
  untickAll(batch: string): void;
  start(batch: string, step: TimedStep, hours: number): void;
  stop(timer: Pick<Timer, 'batch' | 'step'>): void;
  stopThoseOver(): void;
  /** Looks at the clock. */
  look(): void;
  /** Keeps the screen awake for a batch, or lets it sleep. */
  stayAwake(batch: string | null): void;
  /** Forgets what belongs to batches that the sheet no longer has. */
  keepOnly(batches: ReadonlySet<string>): void;
  /** Follows what another window of the page keeps; gives back what ends that. */
  follow(): () => void;
}

const keys = { ticks: 'jarwright.ticks', timers: 'jarwright.timers' } as const;

const opened = new WeakMap<PageState, Cooking>();

/** The one of this page, opened as it was kept. */
export function cookingOn(page: PageState): Cooking {
  const found = opened.get(page) ?? openCooking(page.storage);
  opened.set(page, found);
  return found;
}

function openCooking(storage: Storage | null): Cooking {
  const ticks = signal(readTicks(read(storage, keys.ticks)));
  const timers = signal(readTimers(read(storage, keys.timers)));
  const now = signal(Date.now());
  const atWork = signal<string | null>(null);
  const setTicks = (next: Ticks): void => {
    ticks.value = next;
    keep(storage, keys.ticks, JSON.stringify(next));
  };
  const setTimers = (next: readonly Timer[]): void => {
    timers.value = next;
    keep(storage, keys.timers, JSON.stringify(next));
  };
  return {
    ticks,
    timers,
    now,
    atWork,
    tick(id, step, isDone) {
      setTicks(withTick(ticks.value, id, step, isDone));
      atWork.value = id;
    },
    untickAll(id) {
      setTicks({ ...ticks.value, [id]: [] });
      atWork.value = null;
    },
    start(id, step, hours) {
      batch(() => {
        now.value = Date.now();
        setTimers(withTimer(timers.value, { batch: id, step }, hours, now.value));
        atWork.value = id;
      });
    },
    stop: (timer) => setTimers(withoutTimer(timers.value, timer)),
    stopThoseOver: () => setTimers(timers.value.filter((timer) => !isOver(timer, now.value))),
    look() {
      now.value = Date.now();
    },
    stayAwake(id) {
      atWork.value = id;
    },
    keepOnly(batches) {
      const left = timers.value.filter((timer) => batches.has(timer.batch));
      const leftTicks = ticksWithin(ticks.value, batches);
      if (left.length < timers.value.length) setTimers(left);
      if (Object.keys(leftTicks).length < Object.keys(ticks.value).length) setTicks(leftTicks);
    },
    follow() {
      const take = ({ key, newValue }: StorageEvent) => {
        if (key === keys.ticks) ticks.value = readTicks(newValue);
        if (key === keys.timers) timers.value = readTimers(newValue);
      };
      addEventListener('storage', take);
      return () => removeEventListener('storage', take);
    },
  };
}

function read(storage: Storage | null, key: string): string | null {
  try {
    return storage?.getItem(key) ?? null;
  } catch {
    return null;
  }
}

/** Where nothing can be kept, ticks and timers last as long as the page. */
function keep(storage: Storage | null, key: string, text: string): void {
  try {
    storage?.setItem(key, text);
  } catch {}
}
