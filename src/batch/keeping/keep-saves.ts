import { type ReadonlySignal, signal } from '@preact/signals';

export interface Saves<T> {
  readonly how: ReadonlySignal<'saved' | 'saving' | 'unsaved'>;
  readonly save: (what: T) => void;
  /** Waits until nothing is being saved; gives whether all is. */
  readonly settle: () => Promise<boolean>;
  /** What could not be saved is safe elsewhere, and no longer waits. */
  readonly giveUp: () => void;
}

/** So long after a save that failed it is tried again, in ms: room may have been made meanwhile. */
const betweenTries = 10_000;

/**
 * Saves one thing after the other, each at once where none is under way. One that comes while an earlier is written
 * replaces any that still waits: it holds all that that one did. What could not be saved is tried again, until it can
 * be or a later one comes. `write` gives what to tell the cook, null where it is saved; it must not reject.
 */
export function createSaves<T>(
  write: (what: T) => Promise<string | null>,
  tell: (message: string | null) => void,
): Saves<T> {
  const how = signal<'saved' | 'saving' | 'unsaved'>('saved');
  let next: { readonly what: T } | null = null;
  let running: Promise<void> | null = null;
  let trying: ReturnType<typeof setTimeout> | undefined;

  const run = async (): Promise<void> => {
    while (next !== null) {
      const { what } = next;
      next = null;
      const message = await write(what);
      tell(message);
      if (next !== null) continue;
      how.value = message === null ? 'saved' : 'unsaved';
      if (message !== null) trying = setTimeout(() => put(what), betweenTries);
    }
    running = null;
  };

  const put = (what: T): void => {
    clearTimeout(trying);
    next = { what };
    running ??= run();
  };

  return {
    how,
    save(what) {
      how.value = 'saving';
      put(what);
    },
    async settle() {
      await running;
      return how.peek() === 'saved';
    },
    giveUp() {
      clearTimeout(trying);
      if (how.peek() === 'unsaved') how.value = 'saved';
    },
  };
}
