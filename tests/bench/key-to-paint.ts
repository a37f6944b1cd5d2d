import type { Page } from 'playwright-core';

/** Times, ms, from a key going down to the end of a frame. */
export interface Painted {
  /** The first frame in which what is watched has changed. */
  readonly watched: number;
  /** The last frame in which anything in sight has. */
  readonly all: number;
}

/** After so long, ms, nothing more is expected of a key. */
const patience = 600;

/**
 * Presses a key and follows the frames. A frame's own work (style, layout, paint) follows its animation callbacks, and a
 * message posted from there is handled after it. Watched is the text of an element or, without a selector, which element
 * has the focus. How the sheet is kept says so later and in its own time, so that does not count as in sight.
 */
export async function timeKey(page: Page, press: string, selector: string | null = null): Promise<Painted> {
  const took = page.evaluate(
    async ([watched, wait]) => {
      const seen = () => (watched === null ? document.activeElement : document.querySelector(watched)?.textContent);
      const before = seen();
      let isChanged = false;
      const observer = new MutationObserver((records) => {
        isChanged ||= records.some(({ target }) => {
          const element = target instanceof Element ? target : target.parentElement;
          return element?.closest('[data-kept], .saved, [role=status]') === null;
        });
      });
      observer.observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
      const pressed = await new Promise<number>((resolve) => {
        addEventListener('keydown', ({ timeStamp }) => resolve(timeStamp), { capture: true, once: true });
        Object.assign(globalThis, { isArmed: true });
      });
      const painted = { watched: Number.NaN, all: Number.NaN };
      const { port1, port2 } = new MessageChannel();
      while (performance.now() - pressed < wait) {
        await new Promise(requestAnimationFrame);
        await new Promise((resolve) => {
          port1.onmessage = resolve;
          port2.postMessage(null);
        });
        const now = performance.now() - pressed;
        if (Number.isNaN(painted.watched) && seen() !== before) painted.watched = now;
        if (isChanged) painted.all = now;
        isChanged = false;
      }
      observer.disconnect();
      return { watched: painted.watched, all: Math.max(painted.watched, painted.all) };
    },
    [selector, patience] as const,
  );
  await page.waitForFunction(() => Reflect.get(globalThis, 'isArmed') === true);
  await page.evaluate(() => Reflect.deleteProperty(globalThis, 'isArmed'));
  await page.keyboard.press(press);
  return took;
}
