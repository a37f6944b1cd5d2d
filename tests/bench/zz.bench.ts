import { writeFileSync } from 'node:fs';
import { describe } from 'vitest';
import { report } from './in-turn';
import { depthAt, edited, openMany, settle } from './many-batches';
describe('x', () => {
  report('trace', async () => {
    const { opened, visit } = await openMany(process.env.DIST_DIR);
    const { page } = visit;
    const dt = await visit.context.newCDPSession(page);
    for (let i = 0; i < 6; i++) { await page.locator(edited).focus(); await page.keyboard.type(depthAt(i)); await page.keyboard.press('Enter'); await settle(page); }
    await visit.context.browser();
    const events: unknown[] = [];
    dt.on('Tracing.dataCollected', ({ value }) => events.push(...value));
    await dt.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    await page.locator(edited).focus(); await page.keyboard.type(depthAt(7));
    await settle(page);
    await dt.send('Tracing.start', { transferMode: 'ReportEvents', categories: 'devtools.timeline,disabled-by-default-v8.cpu_profiler,blink.user_timing' });
    await page.keyboard.press('Enter');
    await settle(page);
    await page.locator(edited).focus(); await page.keyboard.type(depthAt(8)); await settle(page);
    await page.keyboard.press('Enter');
    await settle(page);
    const done = new Promise((r) => dt.once('Tracing.tracingComplete', r));
    await dt.send('Tracing.end');
    await done;
    writeFileSync('/tmp/jw/ebench/trace.json', JSON.stringify(events));
    await opened.close();
    return `${events.length}`;
  });
});
