import { join } from 'node:path';
import type { Page } from 'playwright-core';

/** Writes the whole page as `<name>.png` to the folder named by SCREENSHOTS; does nothing where that is not set. */
export async function screenshot(page: Page, name: string): Promise<void> {
  const folder = process.env.SCREENSHOTS;
  if (folder === undefined || folder === '') return;
  await page.screenshot({ path: join(folder, `${name}.png`), fullPage: true });
}
