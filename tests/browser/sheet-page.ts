import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { media } from '../../src/ui/page/use-media';

/** Opens a cell by its label, as a user finds it. */
export function findCell(page: Page, label: string): Locator {
  return page.getByRole('gridcell', { name: new RegExp(`^${label.replaceAll(/[()?]/g, '.')}`) });
}

/** Types into a cell and presses Enter. */
export async function typeInto(page: Page, label: string, text: string): Promise<void> {
  const cell = findCell(page, label);
  await cell.click();
  const editor = page.getByRole('textbox', { name: label, exact: true });
  // At a thumb one press opens it, at a desk a press on the cell that has the focus already.
  const isOpening = await page.evaluate((query) => matchMedia(query).matches, media.thumb);
  if (!isOpening && (await editor.count()) === 0) await page.keyboard.press('Enter');
  await editor.fill(text);
  await editor.press('Enter');
  await expect.poll(() => editor.count()).toBe(0);
}

/** What a cell shows. */
export async function readCell(page: Page, label: string): Promise<string> {
  const cell = findCell(page, label).locator('.cell-body');
  // biome-ignore lint/performance/useDomNodeTextContent: what is hidden from sight must not count as shown.
  const text = await cell.innerText();
  return text.replaceAll('\u00A0', ' ');
}

/** What is said under the line about a cell; empty where nothing is. */
export async function readRemarks(page: Page, label: string): Promise<string> {
  const id = await findCell(page, label).getAttribute('aria-describedby');
  const remarks = page.locator(`[id="${id}"]`);
  // biome-ignore lint/performance/useDomNodeTextContent: what is hidden from sight must not count as shown.
  return (await remarks.count()) === 0 ? '' : (await remarks.innerText()).replaceAll('\u00A0', ' ');
}

/** The first number in what a cell shows. */
export async function readNumber(page: Page, label: string): Promise<number> {
  const [found] = (await readCell(page, label)).match(/\d+(?:\.\d+)?/) ?? [];
  if (found === undefined) throw new Error(`no number in ${label}: ${await readCell(page, label)}`);
  return Number(found);
}

export async function choose(page: Page, label: string, option: string): Promise<void> {
  await page.getByRole('combobox', { name: label, exact: true }).selectOption({ label: option });
}
