import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { describeInBrowser } from './chromium';
import { waitForSheet } from './kept-page';
import { openPart } from './open-part';
import { type OpenedPage, openPage } from './page';

const needed = z.object({ dependencies: z.record(z.string(), z.string()) });

describeInBrowser('the licences of what the page carries', () => {
  let opened: OpenedPage;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  test('are reached from its foot, and hold those of the page, of every library and of what they need', async () => {
    const { page, faults, close } = await opened.visit();
    await waitForSheet(page);
    await openPart(page, 'Care');
    await page.getByRole('link', { name: /^Licences/ }).click();
    await page.waitForURL(/licences\.txt$/);
    const text = await page.evaluate(() => document.body.textContent);
    expect(text).toContain(readFileSync('LICENSE', 'utf8').trim());
    const { dependencies } = z.parse(needed, JSON.parse(readFileSync('package.json', 'utf8')));
    for (const [name, version] of Object.entries(dependencies)) expect(text).toContain(`## ${name} - ${version} (`);
    // What those need in turn, and the builder's own few lines.
    for (const part of ['## @preact/signals-core - ', 'Vite is released under']) expect(text).toContain(part);
    const parts = text.split(/^## /m).slice(1);
    for (const part of parts) expect(part).toMatch(/copyright/i);
    expect(faults.foreignRequests).toEqual([]);
    await close();
  });

  test('are there offline too', async () => {
    const { page, context, close } = await opened.visit({ serviceWorkers: 'allow' });
    await waitForSheet(page);
    await openPart(page, 'Care');
    await page.evaluate(() => navigator.serviceWorker.ready);
    await expect
      .poll(() => page.evaluate(() => caches.match('licences.txt').then((found) => found !== undefined)))
      .toBe(true);
    await context.setOffline(true);
    await page.getByRole('link', { name: /^Licences/ }).click();
    await page.waitForURL(/licences\.txt$/);
    expect(await page.evaluate(() => document.body.textContent)).toContain('## preact - ');
    await close();
  });
});
