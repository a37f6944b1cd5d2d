import type { Page } from 'playwright-core';
import { describe } from 'vitest';
import { demo, startBatch } from '../../src/batch/demo';
import { earlierKey as key } from '../../src/batch/storage';
import { findChromium } from '../browser/chromium';
import { openPage } from '../browser/page';
import { median, report } from './in-turn';

const count = 50;
const slowdown = 4;
const rounds = 20;
const warmUps = 5;

/**
 * Time, ms, from a key going down to the end of the first frame in which what is watched has changed. The frame's own
 * work (style, layout, paint) follows its animation callbacks, and a message posted from there is handled after it.
 */
async function timeKey(page: Page, watched: string, press: string): Promise<number> {
  const took = page.evaluate(async (selector) => {
    const state = () => document.querySelector(selector)?.textContent ?? '';
    const before = state();
    const pressed = await new Promise<number>((resolve) => {
      const options = { capture: true, once: true };
      addEventListener('keydown', ({ timeStamp }) => resolve(timeStamp), options);
      Object.assign(globalThis, { isArmed: true });
    });
    do await new Promise(requestAnimationFrame);
    while (state() === before);
    const { port1, port2 } = new MessageChannel();
    await new Promise((resolve) => {
      port1.onmessage = resolve;
      port2.postMessage(null);
    });
    return performance.now() - pressed;
  }, watched);
  await page.waitForFunction(() => Reflect.get(globalThis, 'isArmed') === true);
  await page.evaluate(() => Reflect.deleteProperty(globalThis, 'isArmed'));
  await page.keyboard.press(press);
  return took;
}

async function openBatches(page: Page): Promise<void> {
  const batches = Array.from({ length: count }, (_, at) => startBatch(`b${at}`, `Batch ${at}`));
  const text = JSON.stringify({ ...demo, batches });
  await page.evaluate(([at, saved]) => localStorage.setItem(at, saved), [key, text] as const);
  await page.reload();
  await page.getByRole('heading', { name: 'Take care' }).waitFor();
}

async function repeat(measure: (round: number) => Promise<number>): Promise<string> {
  const times: number[] = [];
  for (let round = 0; round < warmUps + rounds; round += 1) times.push(await measure(round));
  const counted = times.slice(warmUps);
  return `${median(counted).toFixed(1)} ms (slowest of ${rounds}: ${Math.max(...counted).toFixed(1)})`;
}

describe.skipIf(findChromium() === undefined)('from a key to the painted result', () => {
  report(`with ${count} batches, the processor slowed ${slowdown} times`, async () => {
    const opened = await openPage();
    try {
      const { page } = await opened.visit({ viewport: { width: 1280, height: 900 } });
      await openBatches(page);
      const devTools = await page.context().newCDPSession(page);
      await devTools.send('Emulation.setCPUThrottlingRate', { rate: slowdown });

      await page.locator('[data-quantity="headspaceDepth"][data-batch="b0"]').focus();
      const edit = await repeat(async (round) => {
        await page.keyboard.type(`${3 + (round % 4) / 2} cm`);
        return timeKey(page, '[data-quantity="milkVolume"][data-batch="b0"]', 'Enter');
      });

      const arrow = await repeat((round) => timeKey(page, '.cell:focus', round % 2 === 0 ? 'ArrowDown' : 'ArrowUp'));
      return `key to paint, ${count} batches, ${slowdown}× slower: Enter ${edit}, arrow ${arrow}`;
    } finally {
      await opened.close();
    }
  });
});
