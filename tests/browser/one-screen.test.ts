import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { lines } from '../../src/ui/sheet/lines';
import { describeInBrowser } from './chromium';
import { openPart, waitForPage } from './open-part';
import { noFaults, type OpenedPage, openPage, type VisitOptions } from './page';
import { expectInSight } from './presses';
import { screenshot } from './screenshots';
import { findCell } from './sheet-page';

const laptop = { viewport: { width: 1366, height: 768 } } as const;
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true } as const;
const parts = [
  'Steps',
  'Time',
  'Fizz',
  'Plan',
  'Log',
  'Recipe',
  'Swap',
  'On hand',
  'Paper',
  'Care',
  'Kitchen',
  'Numbers',
];

/** Which of the elements a reader can't see whole: beyond the window, cut by what they are in, or under something else. */
function findHidden(page: Page, selector: string): Promise<readonly string[]> {
  return page.locator(selector).evaluateAll((all) =>
    all.flatMap((element) => {
      const { left, right, top, bottom } = element.getBoundingClientRect();
      const name = element.getAttribute('aria-label') ?? element.textContent?.slice(0, 60) ?? '';
      const isWithin = left >= 0 && top >= 0 && right <= innerWidth + 1 && bottom <= innerHeight + 1;
      if (!isWithin) return [`${name}: ${[left, top, right, bottom].map(Math.round).join(' ')} is beyond the window`];
      const text = element.querySelector('.cell-body, .chosen, .aside') ?? element;
      if (text.scrollWidth > text.clientWidth + 1 && text.clientWidth > 0)
        return [`${name}: ${text.scrollWidth} px of text in ${text.clientWidth}`];
      // On a phone the label of a line stands within its cell, over what is told.
      const told = text.getBoundingClientRect();
      const covered = [told.top + 3, told.bottom - 3].filter((y) => {
        const there = document.elementFromPoint((told.left + told.right) / 2, y);
        return there === null || !(element.contains(there) || there.contains(element));
      });
      return covered.length > 0 ? [`${name}: something lies over it`] : [];
    }),
  );
}

/** How far the page can be scrolled beyond the end of what is open; a margin and the bar at the thumb are no part of it. */
function findEmptyEnd(page: Page): Promise<number> {
  return page.evaluate(() => {
    const rooms = [...document.querySelectorAll('.sheet-room > *, .beside > *, .more > *')];
    const ends = rooms.map((room) => room.getBoundingClientRect().bottom + scrollY);
    const bar = document.querySelector('.phone-bar')?.getBoundingClientRect().height ?? 0;
    const needed = Math.max(innerHeight, ...ends.map((end) => end + bar));
    return Math.max(0, document.documentElement.scrollHeight - needed);
  });
}

describeInBrowser('one screen', () => {
  let opened: OpenedPage;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  async function arrive(options: VisitOptions) {
    const visit = await opened.visit({ ...options });
    await waitForPage(visit.page);
    return visit;
  }

  test('of a laptop holds two batches and the first five steps, and no part leaves an empty end', async () => {
    const { page, faults, close } = await arrive(laptop);
    await page.getByRole('button', { name: '+ Batch' }).click();
    await expect.poll(() => page.locator('.batch-head').count()).toBe(2);
    await page.getByRole('checkbox', { name: 'Done: ' }).nth(4).waitFor();
    const cells = page.locator('.line:not(.detail) > .cell.how, .line:not(.detail) > .cell.much');
    expect(await cells.count()).toBe(lines.length * 2 * 2);
    expect(await findHidden(page, '.line:not(.detail) > .cell.how, .line:not(.detail) > .cell.much')).toEqual([]);
    expect(await page.getByRole('tabpanel', { name: 'Steps' }).getByRole('listitem').count()).toBeGreaterThan(5);
    expect(await findHidden(page, '.step:nth-child(-n + 5)')).toEqual([]);
    expect(await page.evaluate(() => scrollY)).toBe(0);
    await screenshot(page, 'one-screen-laptop');
    for (const name of parts) {
      await openPart(page, name);
      expect(await findEmptyEnd(page), name).toBeLessThanOrEqual(40);
    }
    expect(faults).toEqual(noFaults);
    await close();
  });

  test('of a phone holds the whole batch with its four choices, and no part leaves an empty end', async () => {
    const { page, faults, close } = await arrive(phone);
    const cells = page.locator('.line:not(.detail) > .cell.how, .line:not(.detail) > .cell.much');
    expect(await cells.count()).toBe(lines.length * 2);
    expect(await page.locator('.choice-cell').count()).toBe(4);
    expect(await findHidden(page, '.line:not(.detail) > .cell.how, .line:not(.detail) > .cell.much')).toEqual([]);
    expect(await page.evaluate(() => scrollY)).toBe(0);
    await screenshot(page, 'one-screen-phone');
    for (const name of parts) {
      await openPart(page, name);
      expect(await findEmptyEnd(page), name).toBeLessThanOrEqual(40);
    }
    expect(faults).toEqual(noFaults);
    await close();
  });

  test('shows a batch from its head on, however far down the page the press was that made it', async () => {
    const { page, faults, close } = await arrive({ ...phone, viewport: { width: 320, height: 640 } });
    await page.getByRole('button', { name: 'More', exact: true }).click();
    await page.getByRole('button', { name: '+ Batch' }).click();
    await page.locator('.notice').filter({ hasText: 'A new batch' }).waitFor();
    await expectInSight(page.locator('.batch-head'));
    await expectInSight(findCell(page, 'Kind of jar'));
    expect(faults).toEqual(noFaults);
    await close();
  });
});
