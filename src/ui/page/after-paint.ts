import { signal } from '@preact/signals';
import type { SheetStore } from '../../batch/sheet-store';

type Parts = typeof import('./after-paint-parts');

/**
 * What takes edits; problems, cautions and ways out in words, comparing, the working, the drawing of a jar, steps,
 * tools: there from just after the first paint. Null until then.
 */
export const afterPaint = signal<Parts | null>(null);
/** Whether they could not be loaded the last time it was tried. */
export const afterPaintFailed = signal(false);

const nextTry = 3000;

/** Loads the later parts and gives the sheet its edits; tries again, for as long as the page is open, where it can't. */
export async function loadAfterPaint(store: SheetStore): Promise<void> {
  for (;;) {
    const parts = await import('./after-paint-parts').catch(() => null);
    afterPaintFailed.value = parts === null;
    if (parts !== null) {
      parts.withEdits(store);
      afterPaint.value = parts;
      return;
    }
    await new Promise((resolve) => {
      setTimeout(resolve, nextTry);
      addEventListener('online', resolve, { once: true });
    });
  }
}
