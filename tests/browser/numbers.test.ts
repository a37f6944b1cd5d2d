import { afterAll, beforeAll, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { noFaults, type OpenedPage, openPage } from './page';

describeInBrowser('where the numbers come from', () => {
  let opened: OpenedPage;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  test('finds a figure, and its table does not widen a narrow page', async () => {
    const { page, faults, close } = await opened.visit({ viewport: { width: 1280, height: 800 } });
    await page.getByRole('tab', { name: 'Numbers' }).click();
    await page.setViewportSize({ width: 320, height: 700 });
    await page.getByRole('searchbox', { name: 'Find a figure' }).fill('almonds water');
    await page
      .getByRole('row', { name: /Usual water ratio/ })
      .first()
      .waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
    expect(faults).toEqual(noFaults);
    await close();
  });
});
