import { effect, type ReadonlySignal, useSignal } from '@preact/signals';
import { useLayoutEffect } from 'preact/hooks';

/**
 * Follows a signal a frame behind, for what may be drawn once the answer to a key is on screen. It waits for as long as
 * the signal goes on changing, so that keys that come fast are answered first; where `isAtOnce`, it does not wait.
 */
export function useAfterPaint<T>(now: ReadonlySignal<T>, isAtOnce: () => boolean): ReadonlySignal<T> {
  const shown = useSignal(now.peek());
  useLayoutEffect(
    () =>
      effect(() => {
        const next = now.value;
        if (next === shown.peek()) return;
        const show = () => {
          shown.value = next;
        };
        if (!isAtOnce()) return afterPaint(show);
        show();
        return;
      }),
    [now],
  );
  return shown;
}

/** Does something once the next frame is out; gives back what calls it off. */
function afterPaint(run: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const frame = requestAnimationFrame(() => {
    timer = setTimeout(run);
  });
  return () => {
    cancelAnimationFrame(frame);
    clearTimeout(timer);
  };
}
