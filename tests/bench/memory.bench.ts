import { describe } from 'vitest';
import type { Logged, SheetDocument } from '../../src/batch/document/document';
import { findChromium } from '../browser/chromium';
import { report } from './in-turn';
import { manyBatches, openWith } from './many-batches';

const many = 1000;

const entry: Logged = {
  batch: 'b0',
  name: 'Batch 0',
  at: '2026-05-02T08:00',
  found: 'ready',
  hours: 24,
  expected: 24,
  temperature: 21,
  acidity: 4.4,
  note: 'Thick on top.',
};

/** What the page's scripts hold once all they let go of is gone, MB, and how many elements it has. */
async function weigh(sheet: SheetDocument): Promise<string> {
  const { opened, visit } = await openWith(sheet);
  try {
    const devTools = await visit.context.newCDPSession(visit.page);
    await devTools.send('HeapProfiler.enable');
    await devTools.send('HeapProfiler.collectGarbage');
    const { usedSize } = await devTools.send('Runtime.getHeapUsage');
    const elements = await visit.page.evaluate(() => document.querySelectorAll('*').length);
    return `${(usedSize / 1e6).toFixed(1)} MB and ${elements} elements`;
  } finally {
    await opened.close();
  }
}

describe.skipIf(findChromium() === undefined)('memory', () => {
  report(`with ${many} batches and ${many} log entries`, async () => {
    const one = await weigh(manyBatches(1));
    const full = await weigh({ ...manyBatches(many), log: Array.from({ length: many }, () => entry) });
    return `the page holds ${full} with ${many} batches and ${many} log entries, ${one} with one batch`;
  });
});
