import { afterEach, expect, test } from 'vitest';
import { createOneWindow } from '../../../src/batch/keeping/one-window';

const name = 'a sheet';

/** Locks of one name as a browser has them: one holder, others in their order, and stealing. */
function createLocks(): LockManager {
  let release: ((stolen: boolean) => void) | null = null;
  const queue: (() => void)[] = [];
  const next = () => {
    release = null;
    queue.shift()?.();
  };
  const lock: Lock = { name, mode: 'exclusive' };
  const grant = (callback: LockGrantedCallback<unknown>): Promise<unknown> =>
    new Promise((resolve, reject) => {
      release = (stolen) => (stolen ? reject(new DOMException('stolen', 'AbortError')) : next());
      Promise.resolve(callback(lock)).then(resolve, reject);
    });
  const request = (_: string, options: LockOptions, callback: LockGrantedCallback<unknown>): Promise<unknown> => {
    if (options.steal === true) {
      release?.(true);
      return grant(callback);
    }
    if (release === null) return grant(callback);
    if (options.ifAvailable === true) return Promise.resolve(callback(null));
    return new Promise((resolve, reject) => {
      const granted = () => grant(callback).then(resolve, reject);
      queue.push(granted);
      options.signal?.addEventListener('abort', () => {
        queue.splice(queue.indexOf(granted), 1);
        reject(new DOMException('aborted', 'AbortError'));
      });
    });
  };
  return Object.assign(Object.create(null), { request });
}

const channels: BroadcastChannel[] = [];

afterEach(() => {
  for (const channel of channels.splice(0)) channel.close();
});

function openWindow(locks: LockManager, letGo: () => Promise<boolean>) {
  const seen = { gained: 0, lost: 0 };
  const channel = new BroadcastChannel('one-window.test');
  channels.push(channel);
  const turns = createOneWindow({
    locks,
    channel,
    name,
    onGained: () => {
      seen.gained += 1;
      return Promise.resolve();
    },
    onLost: () => {
      seen.lost += 1;
    },
    onSaved: () => {},
    letGo,
  });
  return { turns, seen };
}

test('a window that can’t save keeps the sheet, however often another asks', { timeout: 15_000 }, async () => {
  const locks = createLocks();
  const holder = openWindow(locks, () => Promise.resolve(false));
  const other = openWindow(locks, () => Promise.resolve(true));
  expect([await holder.turns.start(), await other.turns.start()]).toEqual([true, false]);
  const twice = [other.turns.ask(), other.turns.ask()];
  expect(await Promise.all(twice)).toEqual([false, false]);
  // Longer than a window is waited for that does not answer.
  await new Promise((resolve) => setTimeout(resolve, 3500));
  expect([holder.seen, other.seen]).toEqual([
    { gained: 0, lost: 0 },
    { gained: 0, lost: 0 },
  ]);
});

test('a window that has saved hands over, and takes the sheet back', async () => {
  const locks = createLocks();
  const holder = openWindow(locks, () => Promise.resolve(true));
  const other = openWindow(locks, () => Promise.resolve(true));
  await holder.turns.start();
  await other.turns.start();
  expect(await other.turns.ask()).toBe(true);
  expect([holder.seen, other.seen]).toEqual([
    { gained: 0, lost: 1 },
    { gained: 1, lost: 0 },
  ]);
  expect(await holder.turns.ask()).toBe(true);
  expect([holder.seen, other.seen]).toEqual([
    { gained: 1, lost: 1 },
    { gained: 1, lost: 1 },
  ]);
});
