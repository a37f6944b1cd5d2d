import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { CDPSession, Page } from 'playwright-core';
import { build } from 'vite';
import { describe } from 'vitest';
import { findChromium } from '../browser/chromium';
import { report } from './in-turn';
import { count, depthAt, edited, openMany, settle } from './many-batches';

/** Builds the page with names left as they are and with what counts the components it draws. */
async function buildCounting(outDir: string): Promise<void> {
  const counter = JSON.stringify(resolve('tests/bench/count-renders.ts'));
  const mode = process.env.NODE_ENV ?? 'test';
  process.env.NODE_ENV = 'production';
  await build({
    base: './',
    logLevel: 'error',
    build: { outDir, emptyOutDir: true, minify: false },
    plugins: [
      {
        name: 'count-renders',
        transform: (code, id) => (id.endsWith('/src/main.tsx') ? `import ${counter};\n${code}` : null),
      },
    ],
  });
  process.env.NODE_ENV = mode;
}

interface Counted {
  readonly drawn: Readonly<Record<string, number>>;
  readonly formulate: number;
  readonly layouts: number;
}

const readDrawn = (page: Page) =>
  page.evaluate((): Record<string, number> => ({ ...Reflect.get(globalThis, 'drawn') }));

async function layouts(devTools: CDPSession): Promise<number> {
  const { metrics } = await devTools.send('Performance.getMetrics');
  return metrics.find(({ name }) => name === 'LayoutCount')?.value ?? Number.NaN;
}

/** What a press comes to until the page is still again. */
async function countPress(page: Page, devTools: CDPSession, press: string): Promise<Counted> {
  await settle(page);
  const before = await readDrawn(page);
  const laidOut = await layouts(devTools);
  await devTools.send('Profiler.takePreciseCoverage');
  await page.keyboard.press(press);
  await settle(page);
  const { result } = await devTools.send('Profiler.takePreciseCoverage');
  const after = await readDrawn(page);
  const called = result.flatMap(({ functions }) =>
    functions.filter(({ functionName }) => functionName === 'formulate'),
  );
  const more = Object.entries(after).map(([name, times]) => [name, times - (before[name] ?? 0)] as const);
  return {
    drawn: Object.fromEntries(more.filter(([, times]) => times > 0)),
    formulate: called.reduce((sum, { ranges }) => sum + (ranges[0]?.count ?? 0), 0),
    layouts: (await layouts(devTools)) - laidOut,
  };
}

function write(what: string, { drawn, formulate, layouts }: Counted, most: number): string {
  const all = Object.values(drawn).reduce((sum, times) => sum + times, 0);
  const named = Object.entries(drawn).sort(([, a], [, b]) => b - a);
  const listed = named.map(([name, times]) => (times === 1 ? name : `${times} ${name}`)).join(', ');
  return `  ${what}: ${all} components of ${most}, formulate ${formulate}, layouts ${layouts} (${listed})`;
}

describe.skipIf(findChromium() === undefined)('what a press draws', () => {
  report(`with ${count} batches`, async () => {
    const dist = await mkdtemp(join(tmpdir(), 'counting-'));
    await buildCounting(dist);
    const { opened, visit } = await openMany(dist);
    try {
      const { page } = visit;
      const devTools = await visit.context.newCDPSession(page);
      await devTools.send('Performance.enable');
      await devTools.send('Profiler.enable');
      await devTools.send('Profiler.startPreciseCoverage', { callCount: true, detailed: true });
      await page.locator(edited).focus();
      await page.keyboard.type(depthAt(1));
      await countPress(page, devTools, 'Enter');
      await page.keyboard.type(depthAt(2));
      const lines = [write('Enter', await countPress(page, devTools, 'Enter'), 40)];
      for (const arrow of ['ArrowRight', 'ArrowDown', 'ArrowLeft', 'ArrowUp'])
        lines.push(write(arrow, await countPress(page, devTools, arrow), 4));
      return ['components drawn:', ...lines].join('\n');
    } finally {
      await opened.close();
      await rm(dist, { recursive: true });
    }
  });
});
