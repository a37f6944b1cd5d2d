import * as z from 'zod/mini';

/** What windows say to each other; `id` is the window that asks to edit, or is answered. */
const message = z.union([
  z.object({ say: z.literal('saved') }),
  z.object({ say: z.enum(['ask', 'yours', 'notYet']), id: z.string() }),
]);

const answerWithin = 3000;

interface Options {
  /** Undefined where the browser has no locks. */
  readonly locks: LockManager | undefined;
  /** Null where the browser has none. */
  readonly channel: BroadcastChannel | null;
  readonly name: string;
  /** This window may edit from now on. */
  readonly onGained: () => Promise<void>;
  /** This window may edit no longer. */
  readonly onLost: () => void;
  /** Another window has saved. */
  readonly onSaved: () => void;
  /** Commits and saves what is open here; gives whether all is saved. No edit is to be taken after it. */
  readonly letGo: () => Promise<boolean>;
}

export interface OneWindow {
  /** Takes the right to edit if no other window has it, and gives whether it did; else waits for it behind the others. */
  readonly start: () => Promise<boolean>;
  /** Asks the window that edits to save and let go, and takes its place; gives false where it could not save. */
  readonly ask: () => Promise<boolean>;
  /** Tells the other windows that this one has saved. */
  readonly tellSaved: () => void;
}

/**
 * Lets one window at a time edit, by a lock of the browser. A window that does not answer within three seconds loses
 * the lock all the same: what it saves later is refused by its revision. Without locks every window may edit.
 */
export function createOneWindow({ locks, channel, name, onGained, onLost, onSaved, letGo }: Options): OneWindow {
  const me = String(Math.random());
  let holding = false;
  let waiting: AbortController | null = null;
  let answer: ((given: boolean) => void) | null = null;
  let asking: Promise<boolean> | null = null;

  /** Resolves once the lock is had (true) or refused (false); the lock is then held until it is stolen. */
  const hold = (options: LockOptions): Promise<boolean> =>
    new Promise((resolve) => {
      let had = false;
      const lost = (): void => {
        if (!had) {
          resolve(false);
          return;
        }
        holding = false;
        onLost();
        wait();
      };
      locks
        ?.request(name, options, (lock) => {
          if (lock === null) return resolve(false);
          had = true;
          holding = true;
          resolve(true);
          return new Promise<void>(() => {});
        })
        .catch(lost);
    });

  const wait = (): void => {
    waiting = new AbortController();
    void hold({ signal: waiting.signal }).then((had) => (had ? onGained() : undefined));
  };

  const handOver = async (id: string): Promise<void> => {
    const isSaved = await letGo();
    channel?.postMessage({ say: isSaved ? 'yours' : 'notYet', id });
  };

  const ask = async (): Promise<boolean> => {
    if (locks !== undefined && !holding) {
      const answered = new Promise<boolean>((resolve) => {
        answer = resolve;
        setTimeout(() => resolve(true), answerWithin);
      });
      channel?.postMessage({ say: 'ask', id: me });
      if (!(await answered)) return false;
      waiting?.abort();
      await hold({ steal: true });
    }
    await onGained();
    return true;
  };

  channel?.addEventListener('message', ({ data }) => {
    const read = z.safeParse(message, data);
    if (!read.success) return;
    if (read.data.say === 'saved') onSaved();
    else if (read.data.say === 'ask') holding && void handOver(read.data.id);
    else if (read.data.id === me) answer?.(read.data.say === 'yours');
  });

  return {
    async start() {
      if (locks === undefined) return true;
      const had = await hold({ ifAvailable: true });
      if (!had) wait();
      return had;
    },
    ask() {
      // Asked twice at once, the second would never be answered and take the place all the same.
      asking ??= ask().finally(() => {
        asking = null;
      });
      return asking;
    },
    tellSaved: () => channel?.postMessage({ say: 'saved' }),
  };
}
