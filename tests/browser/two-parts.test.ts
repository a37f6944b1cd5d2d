import { afterAll, beforeAll, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { waitForPage } from './open-part';
import { noFaults, type OpenedPage, openPage } from './page';
import { screenshot } from './screenshots';

describeInBrowser('two parts beside the sheet', () => {
  let opened: OpenedPage;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  test('stand there where batches leave room, chosen by name, never the same twice, and again after a reload', async () => {
    const { page, faults, close } = await opened.visit({ viewport: { width: 2560, height: 1200 } });
    await waitForPage(page);
    const second = page.getByRole('tablist', { name: 'Second part' });
    const panels = page.getByRole('tabpanel');
    const names = () => panels.evaluateAll((all) => all.map((one) => one.getAttribute('aria-label')));
    await second.getByRole('tab', { name: 'Plan' }).click();
    expect(await names()).toEqual(['Steps', 'Plan']);
    await second.getByRole('tab', { name: 'Steps' }).click();
    expect(await names()).toEqual(['Plan', 'Steps']);
    const [one, two] = await panels.evaluateAll((all) => all.map((each) => each.getBoundingClientRect().toJSON()));
    expect(two.left).toBeGreaterThanOrEqual(one.right);
    expect(two.right).toBeLessThanOrEqual(2560);
    // What goes to a part that is open goes to it where it is.
    await second.getByRole('tab', { name: 'Recipe' }).click();
    await page.getByRole('button', { name: 'From a recipe' }).click();
    expect(await names()).toEqual(['Plan', 'Recipe']);
    await expect.poll(() => panels.nth(1).evaluate((panel) => panel === document.activeElement)).toBe(true);
    await screenshot(page, 'two-parts');
    await page.reload();
    await expect.poll(names).toEqual(['Plan', 'Recipe']);
    for (let more = 0; more < 4; more += 1) await page.getByRole('button', { name: '+ Batch' }).click();
    await expect.poll(names).toEqual(['Plan']);
    const { clientWidth, scrollWidth } = await page.evaluate(() => document.documentElement);
    expect(scrollWidth).toBe(clientWidth);
    await page.setViewportSize({ width: 1366, height: 768 });
    expect(await second.count()).toBe(0);
    expect(faults).toEqual(noFaults);
    await close();
  });
});
