import { type ReadonlySignal, useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';

/** Widths at which the page changes its ways; the same lines as in the style sheets. */
export const media = {
  /** A part stands beside the sheet. */
  wide: '(min-width: 60.01rem)',
  /** There may be room for another part, if the batches leave it. */
  veryWide: '(min-width: 110rem)',
  /** One batch at a time, its label above the *how*. */
  phone: '(max-width: 40rem)',
  /** Typed with a thumb: the open cell is at the foot of the window, with its units. */
  thumb: '(max-width: 40rem), (pointer: coarse)',
} as const;

type Query = (typeof media)[keyof typeof media];

/** Whether a media query holds, followed as it changes; where there are no media queries, as on a wide screen. */
export function useMedia(query: Query): boolean {
  return useMediaSignal(query).value;
}

/** The same as a signal, for what is worked out from it. */
export function useMediaSignal(query: Query): ReadonlySignal<boolean> {
  const list = useMemo(() => (typeof matchMedia === 'function' ? matchMedia(query) : null), []);
  const matches = useSignal(list?.matches ?? query === media.wide);
  useEffect(() => {
    const follow = (event: MediaQueryListEvent) => {
      matches.value = event.matches;
    };
    list?.addEventListener('change', follow);
    return () => list?.removeEventListener('change', follow);
  }, []);
  return matches;
}
