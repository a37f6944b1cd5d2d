import { describe } from 'vitest';
import { findChromium } from '../browser/chromium';
import { median, report } from './in-turn';
import { count, openMany } from './many-batches';

const steps = 180;
const perFrame = 40;
const frame = 1000 / 60;

/** What the frames of one pass took: from each to the next, and the work of the page in each, in ms. */
interface Pass {
  readonly apart: readonly number[];
  readonly work: readonly number[];
}

describe.skipIf(findChromium() === undefined)('scrolling sideways', () => {
  report(`through ${count} batches at full speed`, async () => {
    const { opened, visit } = await openMany();
    try {
      const pass: Pass = await visit.page.evaluate(
        async ([times, by]) => {
          const sheet = document.querySelector('.sheet-frame');
          if (sheet === null) throw new Error('there is no sheet to scroll');
          const apart: number[] = [];
          const work: number[] = [];
          const { port1, port2 } = new MessageChannel();
          let last = await new Promise<number>(requestAnimationFrame);
          for (let step = 0; step < times; step += 1) {
            sheet.scrollLeft += by;
            const now = await new Promise<number>(requestAnimationFrame);
            const started = performance.now();
            await new Promise((resolve) => {
              port1.onmessage = resolve;
              port2.postMessage(null);
            });
            work.push(performance.now() - started);
            apart.push(now - last);
            last = now;
          }
          return { apart, work };
        },
        [steps, perFrame] as const,
      );
      const dropped = pass.apart.filter((time) => time > 1.5 * frame).length;
      const over = pass.work.filter((time) => time > frame).length;
      return `scrolling ${steps} frames of ${perFrame} px: ${dropped} dropped, ${over} with more than a frame of work, work ${median(pass.work).toFixed(1)} ms, at most ${Math.max(...pass.work).toFixed(1)}`;
    } finally {
      await opened.close();
    }
  });
});
