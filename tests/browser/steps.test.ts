import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { noFaults, type OpenedPage, openPage, type VisitOptions } from './page';

const laptop = { viewport: { width: 1366, height: 768 } } as const;
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true } as const;

const steps = (page: Page): Locator => page.getByRole('region', { name: /^Steps for / });
const tick = (page: Page, title: string): Locator => page.getByRole('checkbox', { name: `Done: ${title}` });
const timers = (page: Page): Locator => page.getByRole('region', { name: 'Timers' });
const startTimer = (page: Page, title: string) => page.getByRole('button', { name: new RegExp(`^Start.+${title}$`) });

describeInBrowser('the steps', () => {
  let opened: OpenedPage;
  beforeAll(async () => {
    opened = await openPage();
  });
  afterAll(() => opened?.close());

  /** Does something as a new visitor, during which nothing may go wrong behind the page’s back. */
  async function visit(options: VisitOptions, act: (page: Page) => Promise<void>) {
    const { page, faults, close } = await opened.visit(options);
    await act(page);
    expect(faults).toEqual(noFaults);
    await close();
  }

  test('of two batches on a laptop: the first five lie within the window, nothing scrolled', () =>
    visit(laptop, async (page) => {
      await page.getByRole('button', { name: '+ Batch' }).click();
      const five = steps(page).getByRole('listitem');
      await five.nth(4).waitFor();
      const box = await five.nth(4).boundingBox();
      expect(box === null ? Number.POSITIVE_INFINITY : box.y + box.height).toBeLessThanOrEqual(768);
    }));

  test('are ticked, timed and measured, and are so after the page is opened anew', () =>
    visit(laptop, async (page) => {
      await tick(page, 'Choose and weigh').check();
      await startTimer(page, 'Soak it cold').click();
      await startTimer(page, 'Blend it').click();
      await page.getByRole('button', { name: 'milk was …' }).click();
      await page.keyboard.type('600');
      await page.keyboard.press('Enter');
      await steps(page).getByText('milk was 600 mL, expected').waitFor();
      await expect.poll(() => page.getByText('Saved', { exact: true }).count()).toBe(1);

      await page.getByRole('tab', { name: 'Care' }).click();
      await page.getByRole('heading', { name: 'Take care' }).waitFor();
      expect(await timers(page).getByRole('timer').count()).toBe(2);

      await page.reload();
      await expect.poll(() => timers(page).getByRole('timer').allInnerTexts()).toHaveLength(2);
      const [first, second] = await timers(page).getByRole('timer').allInnerTexts();
      expect(first).toMatch(/^(2:00|1:\d\d)$/);
      expect(second).toMatch(/^(10.h.00|9.h.59).min$/);
      await page.getByRole('tab', { name: 'Steps' }).click();
      expect(await tick(page, 'Choose and weigh').isChecked()).toBe(true);
      expect(await tick(page, 'Soak it cold').isChecked()).toBe(false);
      await steps(page).getByText('milk was 600 mL, expected').waitFor();
    }));

  test('ring by the title when a timer is over, also one that ended while the page was closed', () =>
    visit(laptop, async (page) => {
      await startTimer(page, 'Soak it cold').click();
      await page.evaluate(() => {
        localStorage.setItem('jarwright.timers', JSON.stringify([{ batch: 'b1', step: 'soak', ends: Date.now() - 1 }]));
      });
      await page.reload();
      await expect.poll(() => page.title()).toMatch(/^Time is up: Soak/);
      await page.getByRole('button', { name: 'Stop the timer: Soak' }).click();
      await expect.poll(() => page.title()).not.toContain('Time is up');
      expect(await timers(page).count()).toBe(0);
    }));

  test('keep their place while another part is looked at', () =>
    visit(laptop, async (page) => {
      const pane = page.locator('.part-pane');
      await tick(page, 'Keep it cold').scrollIntoViewIfNeeded();
      const before = await pane.evaluate(({ scrollTop }) => scrollTop);
      expect(before).toBeGreaterThan(100);
      await page.getByRole('tab', { name: 'Care' }).click();
      await page.getByRole('heading', { name: 'Take care' }).waitFor();
      await page.getByRole('tab', { name: 'Steps' }).click();
      await tick(page, 'Keep it cold').waitFor();
      expect(await pane.evaluate(({ scrollTop }) => scrollTop)).toBe(before);
    }));

  test('are worked through on a phone, the timers above the bar at the thumb', () =>
    visit(phone, async (page) => {
      await page.getByRole('navigation').getByRole('button', { name: 'Steps' }).tap();
      await startTimer(page, 'Soak it cold').tap();
      await tick(page, 'Choose and weigh').tap();
      expect(await tick(page, 'Choose and weigh').isChecked()).toBe(true);
      const [bar, strip] = [await page.getByRole('navigation').boundingBox(), await timers(page).boundingBox()];
      if (bar === null || strip === null) throw new Error('there is no bar, or no timer above it');
      expect(strip.y + strip.height).toBeLessThanOrEqual(bar.y + 1);
      await page.getByRole('button', { name: 'milk was …' }).tap();
      await page.keyboard.type('600');
      await page.keyboard.press('Enter');
      await steps(page).getByText('milk was 600 mL, expected').waitFor();
      for (const button of await steps(page).getByRole('button').all()) {
        const box = await button.boundingBox();
        if (box !== null) expect(box.x + box.width).toBeLessThanOrEqual(390);
      }
      await page.getByRole('navigation').getByRole('button', { name: 'Batch' }).tap();
      expect(await timers(page).getByRole('timer').count()).toBe(1);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    }));
});
