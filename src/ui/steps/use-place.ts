import type { RefObject } from 'preact';
import { useLayoutEffect } from 'preact/hooks';

const places = new Map<string, number>();

/** Comes back to where the steps of a batch were last looked at, in the pane or, where that does not scroll, the page. */
export function usePlace(element: RefObject<HTMLElement | null>, batch: string): void {
  useLayoutEffect(() => {
    const scroller = scrollerOf(element.current);
    if (scroller === null) return;
    scroller.scrollTop = places.get(batch) ?? 0;
    const keep = () => places.set(batch, scroller.scrollTop);
    // The page as a whole tells the document that it scrolled.
    const teller = scroller === document.scrollingElement ? document : scroller;
    teller.addEventListener('scroll', keep, { passive: true });
    return () => teller.removeEventListener('scroll', keep);
  }, [batch]);
}

function scrollerOf(element: HTMLElement | null): Element | null {
  const pane = element?.closest('.part-pane') ?? null;
  return pane !== null && getComputedStyle(pane).overflowY === 'auto' ? pane : document.scrollingElement;
}
