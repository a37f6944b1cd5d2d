import { useEffect, useState } from 'preact/hooks';

/** Whether the page is being put on paper, where every batch has its card. */
export function usePrinting(): boolean {
  const [printing, setPrinting] = useState(() => typeof matchMedia === 'function' && matchMedia('print').matches);
  useEffect(() => {
    const list = typeof matchMedia === 'function' ? matchMedia('print') : null;
    const start = () => setPrinting(true);
    const stop = () => setPrinting(false);
    const follow = (event: MediaQueryListEvent) => setPrinting(event.matches);
    // Printing may have begun between drawing and now.
    if (list?.matches === true) start();
    addEventListener('beforeprint', start);
    addEventListener('afterprint', stop);
    list?.addEventListener('change', follow);
    return () => {
      removeEventListener('beforeprint', start);
      removeEventListener('afterprint', stop);
      list?.removeEventListener('change', follow);
    };
  }, []);
  return printing;
}
