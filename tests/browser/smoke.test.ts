import { afterAll, beforeAll, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { noFaults, type OpenedPage, openPage } from './page';
import { screenshot } from './screenshots';

describeInBrowser('the built page', () => {
  let opened: OpenedPage;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  test.each(['light', 'dark'] as const)('opens without a fault in a %s room', async (colorScheme) => {
    const { page, faults, close } = await opened.visit({ colorScheme, serviceWorkers: 'allow' });
    await page.locator('#sheet > :not(.first-paint)').first().waitFor();
    await page.waitForLoadState('networkidle');
    await screenshot(page, `smoke-${colorScheme}`);
    expect(faults).toEqual(noFaults);
    await close();
  });

  test('gives each visitor the viewport and motion asked for, and empty storage', async () => {
    const asked = { viewport: { width: 390, height: 844 }, reducedMotion: 'reduce' } as const;
    const read = () => [
      innerWidth,
      matchMedia('(prefers-reduced-motion: reduce)').matches,
      localStorage.getItem('left'),
    ];
    const first = await opened.visit(asked);
    expect(await first.page.evaluate(read)).toEqual([390, true, null]);
    await first.page.evaluate(() => localStorage.setItem('left', 'behind'));
    const second = await opened.visit(asked);
    expect(await second.page.evaluate(read)).toEqual([390, true, null]);
    await first.close();
    await second.close();
  });

  test('has its faults noticed', async () => {
    const { page, faults, close } = await opened.visit({ bypassCSP: true, serviceWorkers: 'allow' });
    await page.evaluate(async () => {
      console.error('a fault on purpose');
      setTimeout(() => {
        throw new Error('a slip on purpose');
      });
      await fetch('./no-such-file.js');
      await fetch('https://elsewhere.example/').catch(() => undefined);
    });
    await expect.poll(() => faults.pageErrors).toEqual(['a slip on purpose']);
    expect(faults.consoleErrors.join()).toContain('a fault on purpose');
    expect(faults.failedRequests.join()).toContain('no-such-file.js 404');
    expect(faults.foreignRequests).toEqual(['https://elsewhere.example/']);
    await close();
  });
});
