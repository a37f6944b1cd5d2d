import type { Page } from 'playwright-core';
import { describe } from 'vitest';
import { findChromium } from '../browser/chromium';
import { median, report } from './in-turn';
import { timeKey } from './key-to-paint';
import { count, depthAt, edited, editedLine, openMany } from './many-batches';

// Beside a page built earlier, if EARLIER names its folder: both take turns, so that load falls on both.
const earlier = process.env.EARLIER;
const slowdown = 4;
const rounds = 15;
const warmUps = 4;

const arrows = ['ArrowRight', 'ArrowDown', 'ArrowLeft', 'ArrowUp'] as const;

/** What is timed, the most it may take in ms, and what each round of it took. */
const limits = {
  'Enter, the edited line': 33,
  'Enter, all in sight': 66,
  ArrowRight: 33,
  ArrowDown: 33,
  ArrowLeft: 33,
  ArrowUp: 33,
} as const;
type Timed = keyof typeof limits;
const timed: readonly Timed[] = ['Enter, the edited line', 'Enter, all in sight', ...arrows];

async function openSlow(dist: string | undefined) {
  const { opened, visit } = await openMany(dist);
  const devTools = await visit.context.newCDPSession(visit.page);
  await devTools.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  return { opened, page: visit.page };
}

async function pressAll(page: Page, round: number, took: Map<Timed, number[]>): Promise<void> {
  const keep = (what: Timed, time: number) => round >= 0 && took.set(what, [...(took.get(what) ?? []), time]);
  await page.locator(edited).focus();
  await page.keyboard.type(depthAt(round + warmUps));
  const enter = await timeKey(page, 'Enter', editedLine);
  keep('Enter, the edited line', enter.watched);
  keep('Enter, all in sight', enter.all);
  for (const arrow of arrows) keep(arrow, (await timeKey(page, arrow)).watched);
}

describe.skipIf(findChromium() === undefined)('from a key to the painted result', () => {
  report(`with ${count} batches, the processor slowed ${slowdown} times`, async () => {
    const pages = await Promise.all([undefined, ...(earlier === undefined ? [] : [earlier])].map(openSlow));
    const times = pages.map(() => new Map<Timed, number[]>());
    try {
      for (let round = -warmUps; round < rounds; round += 1)
        for (const [at, { page }] of pages.entries()) await pressAll(page, round, times[at] ?? new Map());
    } finally {
      for (const { opened } of pages) await opened.close();
    }
    const lines = timed.map((what) => {
      const [now = Number.NaN, before] = times.map((took) => median(took.get(what) ?? []));
      const beside =
        before === undefined ? '' : `, earlier ${before.toFixed(1)} ms, ratio ${(now / before).toFixed(2)}`;
      return `  ${what}: ${now.toFixed(1)} ms of ${limits[what]}${beside}`;
    });
    return [`key to paint, ${count} batches, ${slowdown}× slower, medians of ${rounds}:`, ...lines].join('\n');
  });
});
