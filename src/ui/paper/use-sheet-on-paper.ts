import { useEffect, useState } from 'preact/hooks';

/**
 * Puts one part of the page on paper by itself: `start` marks the root with `data-paper`, which the style sheets of print
 * go by, and asks the browser to print. `isOn` says that the part has to be there. The mark goes once printing is over,
 * or at the next press on the page where the browser does not say so.
 */
export function useSheetOnPaper(sheet: string): { readonly isOn: boolean; readonly start: () => void } {
  const [isOn, setOn] = useState(false);
  useEffect(() => {
    if (!isOn) return;
    const { dataset } = document.documentElement;
    const stop = () => {
      // At once: with the mark still there and its part gone, nothing would print at all.
      delete dataset.paper;
      setOn(false);
    };
    dataset.paper = sheet;
    addEventListener('afterprint', stop);
    addEventListener('pointerdown', stop);
    window.print();
    return () => {
      removeEventListener('afterprint', stop);
      removeEventListener('pointerdown', stop);
      delete dataset.paper;
    };
  }, [isOn, sheet]);
  return { isOn, start: () => setOn(true) };
}
