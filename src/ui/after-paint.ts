import { signal } from '@preact/signals';

type Parts = typeof import('./after-paint-parts');

/**
 * Problems, cautions and ways out in words, comparing, the working, the drawing of a jar, steps, tools: there from just
 * after the first paint. Null until then, `failed` where they can't be had.
 */
export const afterPaint = signal<Parts | null>(null);
export const afterPaintFailed = signal(false);

export async function loadAfterPaint(): Promise<void> {
  try {
    afterPaint.value = await import('./after-paint-parts');
  } catch {
    afterPaintFailed.value = true;
  }
}
