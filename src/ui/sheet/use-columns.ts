import { type ReadonlySignal, useSignal, useSignalEffect } from '@preact/signals';
import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';
import { columnsOnScreen, type Drawn, type Frame, scrollToColumn } from './columns-on-screen';
import { useAlike } from './use-alike';

const drawnBeforeMeasuring = 6;

/** Follows the frame the batches scroll in, and says which of them to draw: the same ones while it scrolls within them. */
export function useColumns(
  frame: RefObject<HTMLDivElement | null>,
  count: ReadonlySignal<number>,
): { drawn: ReadonlySignal<Drawn>; show: (at: number) => void } {
  const measured = useSignal<Frame | null>(null);
  const measure = () => {
    if (frame.current !== null) measured.value = measureFrame(frame.current);
  };
  useSignalEffect(() => {
    if (count.value > 0) measure();
  });
  useEffect(() => {
    const element = frame.current;
    if (element === null) return;
    element.addEventListener('scroll', measure, { passive: true });
    const watch = typeof ResizeObserver === 'function' ? new ResizeObserver(measure) : null;
    watch?.observe(element);
    return () => {
      element.removeEventListener('scroll', measure);
      watch?.disconnect();
    };
  }, []);
  return {
    drawn: useAlike(() => columnsOnScreen(measured.value, count.value, drawnBeforeMeasuring)),
    show: (at) => {
      const element = frame.current;
      const now = element === null ? null : measureFrame(element);
      if (element !== null && now !== null) element.scrollLeft = scrollToColumn(now, at);
    },
  };
}

/** Null where nothing is laid out, as outside a browser. */
function measureFrame(element: HTMLElement): Frame | null {
  const column = element.querySelector<HTMLElement>('.batch-head')?.offsetWidth ?? 0;
  const labels = element.querySelector<HTMLElement>('.corner')?.offsetWidth ?? 0;
  if (column === 0) return null;
  return { scrolled: element.scrollLeft, width: element.clientWidth, labels, column };
}
