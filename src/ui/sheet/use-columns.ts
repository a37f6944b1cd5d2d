import type { RefObject } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { columnsOnScreen, type Drawn, type Frame, scrollToColumn } from './columns-on-screen';

const drawnBeforeMeasuring = 6;

/** Follows the frame the batches scroll in, and says which of them to draw. */
export function useColumns(
  frame: RefObject<HTMLDivElement | null>,
  count: number,
): { drawn: Drawn; show: (at: number) => void } {
  const [measured, setMeasured] = useState<Frame | null>(null);
  useEffect(() => {
    const element = frame.current;
    if (element === null) return;
    // Scrolled within the same columns, or measured anew, the sheet stays as it is drawn.
    const measure = () =>
      setMeasured((old) => {
        const now = measureFrame(element);
        return drawSame(old, now, count) ? old : now;
      });
    measure();
    element.addEventListener('scroll', measure, { passive: true });
    const watch = typeof ResizeObserver === 'function' ? new ResizeObserver(measure) : null;
    watch?.observe(element);
    return () => {
      element.removeEventListener('scroll', measure);
      watch?.disconnect();
    };
  }, [count]);
  return {
    drawn: columnsOnScreen(measured, count, drawnBeforeMeasuring),
    show: (at) => {
      const element = frame.current;
      const now = element === null ? null : measureFrame(element);
      if (element !== null && now !== null) element.scrollLeft = scrollToColumn(now, at);
    },
  };
}

function drawSame(one: Frame | null, other: Frame | null, count: number): boolean {
  const a = columnsOnScreen(one, count, drawnBeforeMeasuring);
  const b = columnsOnScreen(other, count, drawnBeforeMeasuring);
  return a.from === b.from && a.to === b.to && a.before === b.before && a.after === b.after;
}

/** Null where nothing is laid out, as outside a browser. */
function measureFrame(element: HTMLElement): Frame | null {
  const column = element.querySelector<HTMLElement>('.batch-head')?.offsetWidth ?? 0;
  const labels = element.querySelector<HTMLElement>('.corner')?.offsetWidth ?? 0;
  if (column === 0) return null;
  return { scrolled: element.scrollLeft, width: element.clientWidth, labels, column };
}
