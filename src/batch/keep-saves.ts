import { type ReadonlySignal, signal } from '@preact/signals';

export interface Saves<T> {
  readonly how: ReadonlySignal<'saved' | 'saving' | 'unsaved'>;
  readonly save: (what: T) => void;
  /** Waits until nothing is being saved; gives whether all is. */
  readonly settle: () => Promise<boolean>;
  /** What could not be saved is safe elsewhere, and no longer waits. */
  readonly giveUp: () => void;
}

/**
 * Saves one thing after the other, each at once where none is under way. One that comes while an earlier is written
 * replaces any that still waits: it holds all that that one did. `write` gives what to tell the cook, null where it is
 * saved; it must not reject.
 */
export function createSaves<T>(
  write: (what: T) => Promise<string | null>,
  tell: (message: string | null) => void,
): Saves<T> {
  const how = signal<'saved' | 'saving' | 'unsaved'>('saved');
  let next: { readonly what: T } | null = null;
  let running: Promise<void> | null = null;

  const run = async (): Promise<void> => {
    while (next !== null) {
      const { what } = next;
      next = null;
      const message = await write(what);
      tell(message);
      if (next === null) how.value = message === null ? 'saved' : 'unsaved';
    }
    running = null;
  };

  return {
    how,
    save(what) {
      next = { what };
      how.value = 'saving';
      running ??= run();
    },
    async settle() {
      await running;
      return how.peek() === 'saved';
    },
    giveUp() {
      if (how.peek() === 'unsaved') how.value = 'saved';
    },
  };
}
