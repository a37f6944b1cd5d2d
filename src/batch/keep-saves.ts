import { type ReadonlySignal, signal } from '@preact/signals';
import type { SheetDocument } from './document';

export interface Saves {
  readonly how: ReadonlySignal<'saved' | 'saving' | 'unsaved'>;
  readonly save: (document: SheetDocument) => void;
  /** Waits until nothing is being saved; gives whether all is. */
  readonly settle: () => Promise<boolean>;
}

/**
 * Saves one document after the other, each at once where none is under way. One that comes while an earlier is written
 * replaces any that still waits: it holds all that that one did. `write` gives what to tell the cook, null where it is
 * saved; it must not reject.
 */
export function createSaves(
  write: (document: SheetDocument) => Promise<string | null>,
  tell: (message: string | null) => void,
): Saves {
  const how = signal<'saved' | 'saving' | 'unsaved'>('saved');
  let next: SheetDocument | null = null;
  let running: Promise<void> | null = null;

  const run = async (): Promise<void> => {
    while (next !== null) {
      const document = next;
      next = null;
      const message = await write(document);
      tell(message);
      if (next === null) how.value = message === null ? 'saved' : 'unsaved';
    }
    running = null;
  };

  return {
    how,
    save(document) {
      next = document;
      how.value = 'saving';
      running ??= run();
    },
    async settle() {
      await running;
      return how.peek() === 'saved';
    },
  };
}
