import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';

/**
 * A cook whose presses are counted: each tap or click is one, a pick from a menu two (it is opened, and the entry
 * pressed). What is pressed must lie in sight, so that nothing is scrolled for it, unless it may be scrolled to.
 */
export function countPresses(page: Page) {
  let presses = 0;
  return {
    count: () => presses,
    press: async (what: Locator, mayScroll = false) => {
      if (!mayScroll) await expectInSight(what);
      await what.click();
      presses += 1;
    },
    pick: async (menu: string, entry: string) => {
      const found = page.getByRole('combobox', { name: menu, exact: true });
      await expectInSight(found);
      await found.selectOption({ label: entry });
      presses += 2;
    },
  };
}

/** What is not in sight, or only in part, is waited for a moment, as it may still be drawn. */
export async function expectInSight(what: Locator): Promise<void> {
  await what.waitFor();
  await expect.poll(() => isInSight(what), { message: `${what} lies in the window` }).toBe(true);
}

function isInSight(what: Locator): Promise<boolean> {
  return what.evaluate((element) => {
    const { left, right, top, bottom } = element.getBoundingClientRect();
    const there = document.elementFromPoint((left + right) / 2, (top + bottom) / 2);
    const isOver = there !== null && !(element.contains(there) || there.contains(element));
    return left >= 0 && top >= 0 && right <= innerWidth + 1 && bottom <= innerHeight + 1 && !isOver;
  });
}

/** Writes a count where whoever runs the tests sees it. */
export function printPresses(use: string, count: number): void {
  console.info(`${use}: ${count} presses`);
}
