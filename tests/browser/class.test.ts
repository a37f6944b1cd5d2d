import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { openPart, waitForPage } from './open-part';
import { noFaults, type OpenedPage, openPage, type Visit } from './page';
import { screenshot } from './screenshots';

const pasted = 'Ben\t2 L\t19 C\nCleo\thalf gallon\t72 F\tUS\nDora\tlitre\t26 C\tmetric\tmilk grains\nEli\ta bucket';

/** Has the page count what it would print, and when. */
async function catchPrint(page: Page): Promise<void> {
  await page.evaluate(() => {
    window.print = () => {
      document.documentElement.dataset.printed = 'yes';
    };
  });
}

async function countPages(page: Page): Promise<number> {
  const pdf = await page.pdf({ format: 'A4', printBackground: true });
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}

/** A class of five: one typed, three pasted, and one that was not understood and is mended. */
async function makeClass(page: Page): Promise<void> {
  await openPart(page, 'Class');
  await page.getByRole('button', { name: 'Start a class with Saturday almond' }).click();
  await page.getByRole('button', { name: 'Add a kitchen' }).click();
  await page.keyboard.type('Ana');
  await page.keyboard.press('Enter');
  const list = page.getByLabel('List of kitchens');
  await list.fill(pasted);
  await page.getByRole('button', { name: 'Add these kitchens' }).click();
  await page.getByText('“a bucket” is no jar').waitFor();
  expect((await list.inputValue()).split('\t')).toEqual(['Eli', 'a bucket']);
  await list.fill('Eli\tpint');
  await page.getByRole('button', { name: 'Add these kitchens' }).click();
  await page.getByRole('heading', { name: '5 kitchens' }).waitFor();
}

describeInBrowser('a class', () => {
  let opened: OpenedPage;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  async function arrive(options: Parameters<OpenedPage['visit']>[0]): Promise<Visit> {
    const visit = await opened.visit(options);
    await waitForPage(visit.page);
    return visit;
  }

  describe.each([
    ['a desk', { viewport: { width: 1366, height: 768 } }],
    ['a phone', { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }],
  ] as const)('at %s', (where, options) => {
    test('of five is typed and pasted, shopped for, planned and printed, a card a kitchen', async () => {
      const { page, faults, close } = await arrive(options);
      await makeClass(page);
      const shopping = page.getByRole('region', { name: 'Shopping list of the class' });
      await shopping.getByText('Almonds, whole').waitFor();
      await shopping.getByText('to bring, for 4 kitchens').waitFor();
      await page.getByLabel('Plan for the class').selectOption({ label: 'Drink together at' });
      const plan = page.getByRole('region', { name: 'Who starts when' });
      // Two of them have the same room, and so the same times.
      await plan.getByRole('rowheader', { name: 'Ana, Eli' }).waitFor();
      expect(await plan.locator('tbody tr').count()).toBe(4);
      await screenshot(page, `class-${where.replace('a ', '')}`);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
      ).toBe(0);

      await catchPrint(page);
      await page.getByRole('button', { name: 'Print 5 cards' }).click();
      await page.locator('[data-printed]').waitFor({ state: 'attached' });
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('.class-cards .print-card').count()).toBe(5);
      expect(await page.locator('.class-cards .link-code').count()).toBe(5);
      expect(
        await page
          .locator('body *:visible')
          .evaluateAll(
            (all) =>
              all.filter((one) => one.closest('.class-cards') === null && one.querySelector('.class-cards') === null)
                .length,
          ),
      ).toBe(0);
      await screenshot(page, `class-paper-${where.replace('a ', '')}`);
      expect(await countPages(page)).toBe(10);
      await page.emulateMedia({ media: null });
      await page.evaluate(() => dispatchEvent(new Event('afterprint')));
      await page.locator('.class-cards').waitFor({ state: 'detached' });

      await page.getByRole('button', { name: 'Make them batches' }).click();
      await page.getByText('5 batches are added, one for each kitchen.').waitFor();
      expect(faults).toEqual(noFaults);
      await close();
    });
  });

  test('of thirty is printed whole, on two sides each', async () => {
    const { page, faults, close } = await arrive({ viewport: { width: 1366, height: 768 } });
    await openPart(page, 'Class');
    await page.getByRole('button', { name: 'Start a class with Saturday almond' }).click();
    const jars = ['quart', '2 L', 'half gallon', 'litre', 'pint'];
    const lines = Array.from(
      { length: 30 },
      (_, at) => `Cook ${at}, ${jars[at % 5]}, ${18 + (at % 9)} C, ${at % 2 === 0 ? 'US' : 'metric'}`,
    );
    await page.getByLabel('List of kitchens').fill(lines.join('\n'));
    await page.getByRole('button', { name: 'Add these kitchens' }).click();
    await page.getByRole('heading', { name: '30 kitchens' }).waitFor();
    await catchPrint(page);
    await page.getByRole('button', { name: 'Print 30 cards' }).click();
    await page.locator('[data-printed]').waitFor({ state: 'attached', timeout: 60_000 });
    expect(await page.locator('.class-cards .link-code').count()).toBe(30);
    expect(await countPages(page)).toBe(60);
    expect(faults).toEqual(noFaults);
    await close();
  }, 120_000);
});
