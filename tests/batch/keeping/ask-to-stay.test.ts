import { expect, test } from 'vitest';
import { type Asked, askToStay } from '../../../src/batch/keeping/ask-to-stay';

/** A browser that answers so, and how often it was asked to keep what is kept. */
function browser(state: PermissionState | 'unknown', isKept = false) {
  const seen = { asked: 0 };
  const asked: Asked = {
    storage: {
      persisted: () => Promise.resolve(isKept),
      persist: () => {
        seen.asked += 1;
        return Promise.resolve(true);
      },
    },
    permissions: {
      query: () =>
        state === 'unknown'
          ? Promise.reject(new TypeError('no such permission'))
          : Promise.resolve(Object.assign(new EventTarget(), { name: 'persistent-storage', state, onchange: null })),
    },
  };
  return { asked, seen };
}

test.each([
  ['that asks nobody is asked', 'granted', false, false, 1],
  ['that does not know the permission is asked', 'unknown', false, false, 1],
  ['that would ask the cook is asked for a first sheet', 'prompt', true, false, 1],
  ['that would ask the cook is left alone later', 'prompt', false, false, 0],
  ['that was told no is left alone', 'denied', true, false, 0],
  ['that keeps it already is left alone', 'granted', true, true, 0],
] as const)('a browser %s', async (_, state, isFirst, isKept, times) => {
  const { asked, seen } = browser(state, isKept);
  await askToStay(asked, isFirst);
  expect(seen.asked).toBe(times);
});

test('a browser without any of it, or whose storage fails, is no trouble', async () => {
  await expect(askToStay({}, true)).resolves.toBeUndefined();
  const fails = () => Promise.reject(new Error('no'));
  await expect(askToStay({ storage: { persist: fails, persisted: fails } }, true)).resolves.toBeUndefined();
});
