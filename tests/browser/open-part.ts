import type { Page } from 'playwright-core';

/** Opens a part of the page by its name: by its tab where there is room beside the sheet, else by the bar or by More. */
export async function openPart(page: Page, name: string): Promise<void> {
  const bar = page.getByRole('navigation', { name: 'Parts of this page' });
  const tab = page.getByRole('tab', { name, exact: true }).first();
  // A sheet that is kept is opened before anything is drawn: which of the two there is shows only then.
  await tab.or(bar).waitFor();
  if ((await tab.count()) > 0) await tab.click();
  else {
    const atThumb = bar.getByRole('button', { name, exact: true });
    if ((await atThumb.count()) > 0) await atThumb.click();
    else {
      await bar.getByRole('button', { name: 'More', exact: true }).click();
      await page
        .getByRole('region', { name: 'More' })
        .getByRole('button', { name: new RegExp(`^${name} `) })
        .click();
    }
  }
  await page.locator(`[role=tabpanel][aria-label="${name}"][aria-busy=false]`).waitFor();
}

/** Goes back to the sheet where a phone shows a part in its place. */
export async function openBatch(page: Page): Promise<void> {
  const bar = page.getByRole('navigation', { name: 'Parts of this page' });
  if ((await bar.count()) > 0) await bar.getByRole('button', { name: 'Batch', exact: true }).click();
}

/** Unfolds every line of the sheet, so that each of its cells is there. */
export async function showAllFigures(page: Page): Promise<void> {
  await page.getByRole('checkbox', { name: 'All figures' }).check();
}

/** Waits for the sheet, and on a wide window for the part beside it. */
export async function waitForPage(page: Page): Promise<void> {
  await page.getByRole('treegrid').waitFor();
  if ((await page.getByRole('tablist').count()) > 0)
    await page.locator('[role=tabpanel][aria-busy=false]').first().waitFor();
}
