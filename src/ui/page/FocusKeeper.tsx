import { useEffect } from 'preact/hooks';

/** What may take the focus in the place of something within it that is gone. */
const places = '[role="gridcell"][tabindex], [role="alert"], section, form, dialog, [role="tabpanel"], main';

/** What is drawn anew may set the focus itself, a moment after. */
const moment = 60;

/**
 * Where what has the focus goes away, as a button that did its deed, the focus goes to what it stood in and never to the
 * body, from where a keyboard or a reader of the screen would begin again at the top.
 */
export default function FocusKeeper() {
  useEffect(() => {
    let around: readonly Element[] = [];
    let later: ReturnType<typeof setTimeout> | undefined;
    const remember = ({ target }: FocusEvent) => {
      around = target instanceof Element ? ancestorsOf(target) : [];
    };
    // Left for nothing while it is still there, as by a press beside it: that is the cook’s own choice.
    const forget = ({ target }: FocusEvent) => {
      queueMicrotask(() => {
        if (around[0] === target && around[0].isConnected && !around[0].matches(':disabled')) around = [];
      });
    };
    const look = () => {
      const [last] = around;
      if (last === undefined || document.activeElement !== document.body) return;
      if (last.isConnected && !last.matches(':disabled')) return;
      const place = around.find((one) => one.isConnected && one.matches(places));
      if (!(place instanceof HTMLElement)) return;
      if (!place.hasAttribute('tabindex')) place.tabIndex = -1;
      place.focus({ preventScroll: true });
    };
    const watch = new MutationObserver(() => {
      if (around.length === 0 || document.activeElement !== document.body) return;
      clearTimeout(later);
      later = setTimeout(look, moment);
    });
    watch.observe(document.body, { childList: true, subtree: true });
    document.addEventListener('focusin', remember);
    document.addEventListener('focusout', forget);
    return () => {
      watch.disconnect();
      clearTimeout(later);
      document.removeEventListener('focusin', remember);
      document.removeEventListener('focusout', forget);
    };
  }, []);
  return null;
}

function ancestorsOf(element: Element): readonly Element[] {
  const { parentElement } = element;
  return [element, ...(parentElement === null ? [] : ancestorsOf(parentElement))];
}
