import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { waitForKept } from './kept-page';
import { waitForPage } from './open-part';
import { noFaults, type OpenedPage, openPage, type VisitOptions } from './page';
import { readCell, typeInto } from './sheet-page';

const windows: readonly (readonly [string, VisitOptions])[] = [
  ['laptop', { viewport: { width: 1366, height: 768 } }],
  ['tablet', { viewport: { width: 1100, height: 800 }, hasTouch: true, isMobile: true }],
  ['narrow window', { viewport: { width: 800, height: 900 } }],
  ['phone', { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }],
];

/** What is seen of the sheet and of what stands around it: each with its text and its place. */
function readPicture(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const parts = document.querySelectorAll<HTMLElement>(
      '.sheet [data-quantity], .how-so, .batch-head h2, .sheet-tools, .part-names > *, .phone-bar > *',
    );
    return [...parts]
      .filter((part) => part.checkVisibility())
      .map((part) => {
        const { left, top, width, height } = part.getBoundingClientRect();
        const [where, ...size] = [left, top, width, height].map((length) => length.toFixed(1));
        const text = part.querySelector('select')?.selectedOptions[0]?.text ?? part.textContent;
        return `${text} ${where} ${size.join(' ')}`;
      });
  });
}

describeInBrowser('before its script has come, the page', () => {
  let opened: OpenedPage;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  test.each(windows)(
    'shows a first visitor the sheet, where it stands once it can be edited: on a %s',
    async (_, options) => {
      const { page, context, faults, close } = await opened.visit(options);
      await waitForPage(page);
      await page.waitForLoadState('networkidle');
      await context.route('**/*.js', (route) => route.fulfill({ contentType: 'text/javascript', body: '' }));
      await page.goto(opened.address, { waitUntil: 'networkidle' });
      const before = await readPicture(page);
      expect(before.length).toBeGreaterThan(20);
      expect(before.join(' ')).toMatch(/Almonds, whole.* g.*mL/);
      await context.unroute('**/*.js');
      await page.reload();
      await page.locator('#sheet > :not(.first-paint)').waitFor();
      expect(await readPicture(page)).toEqual(before);
      expect(await page.locator('.first-paint').count()).toBe(0);
      expect(faults).toEqual(noFaults);
      await close();
    },
  );

  test('shows nothing to a cook with a sheet of his own, which comes in its place', async () => {
    const { page, context, close } = await opened.visit();
    await waitForPage(page);
    await typeInto(page, 'Weight as bought', '123 g');
    await waitForKept(page);
    const isDrawn = () => page.locator('.first-paint .sheet').filter({ visible: true }).count();
    await context.route('**/*.js', (route) => route.fulfill({ contentType: 'text/javascript', body: '' }));
    await page.reload();
    expect(await isDrawn()).toBe(0);
    // A sheet that an earlier version of the page has left is the cook's own, too.
    await page.evaluate(() => {
      localStorage.clear();
      localStorage.setItem('jarwright.sheet', '{}');
    });
    await page.reload();
    expect(await isDrawn()).toBe(0);
    await page.evaluate(() => localStorage.clear());
    await page.reload();
    expect(await isDrawn()).toBe(1);
    await context.unroute('**/*.js');
    await page.reload();
    await waitForPage(page);
    expect(await readCell(page, 'Weight as bought')).toContain('123 g');
    await close();
  });
});
