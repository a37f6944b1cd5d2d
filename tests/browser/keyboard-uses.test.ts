import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { waitForPage } from './open-part';
import { noFaults, type OpenedPage, openPage } from './page';
import { findCell, readCell, readNumber } from './sheet-page';

const farthest = 90;

/** Presses a key until the focus is on something, as one who has no pointer comes to it. */
async function pressUntil(page: Page, key: string, there: Locator): Promise<void> {
  for (let presses = 0; presses < farthest; presses += 1) {
    if (await isFocused(there)) return;
    await page.keyboard.press(key);
  }
  throw new Error(`${key} never comes to ${there}`);
}

async function isFocused(one: Locator): Promise<boolean> {
  return (await one.count()) > 0 && one.first().evaluate((element) => element === document.activeElement);
}

/** Chooses in the menu of a cell that has the focus, by its first letters. */
async function chooseByLetters(page: Page, letters: string, value: string): Promise<void> {
  const menu = page.locator('[data-spot="true"]').getByRole('combobox');
  await page.keyboard.press('Enter');
  await expect.poll(() => isFocused(menu)).toBe(true);
  await page.keyboard.type(letters, { delay: 20 });
  await page.keyboard.press('Enter');
  await expect.poll(() => menu.inputValue()).toBe(value);
  for (let shut = 0; shut < 2 && (await isFocused(menu)); shut += 1) await page.keyboard.press('Escape');
}

describeInBrowser('by keyboard alone', () => {
  let opened: OpenedPage;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  async function arrive() {
    const visit = await opened.visit({ viewport: { width: 1366, height: 768 }, serviceWorkers: 'block' });
    await waitForPage(visit.page);
    return visit;
  }

  test('a recipe is pasted, read and made a weighed batch', async () => {
    const { page, faults, close } = await arrive();
    await pressUntil(page, 'Tab', page.getByRole('button', { name: 'From a recipe' }));
    await page.keyboard.press('Enter');
    const box = page.getByRole('textbox', { name: 'Recipe text' });
    await box.waitFor();
    await pressUntil(page, 'Tab', box);
    await page.keyboard.insertText('1 ¼ cups almonds\n3 ¼ cups water\n1 tbsp sugar\n2 tbsp water kefir grains');
    await pressUntil(page, 'Tab', page.getByRole('button', { name: 'Read it' }));
    await page.keyboard.press('Enter');
    await expect.poll(() => isFocused(page.locator('.recipe-result'))).toBe(true);
    await pressUntil(page, 'Tab', page.getByRole('button', { name: 'Make this batch' }));
    await page.keyboard.press('Enter');
    const heads = page.getByRole('treegrid').getByRole('heading', { level: 2 });
    await expect.poll(() => heads.count()).toBe(2);
    // The focus is at the head of what was made.
    await expect.poll(() => isFocused(findCell(page, 'Kind of jar').last())).toBe(true);
    // biome-ignore lint/performance/useDomNodeTextContent: what is hidden from sight must not count as shown.
    expect(await findCell(page, 'Water to blend').last().innerText()).toMatch(/769\s*mL/);
    expect(faults).toEqual(noFaults);
    await close();
  });

  test('honey for 2 tbsp of sugar is found, and for another amount', async () => {
    const { page, faults, close } = await arrive();
    await pressUntil(page, 'Tab', page.getByRole('tab', { selected: true }));
    await pressUntil(page, 'ArrowRight', page.getByRole('tab', { name: 'Swap' }));
    const swap = page.getByRole('region', { name: 'One sweetener for another' });
    await swap.waitFor();
    expect(await swap.getByRole('status').textContent()).toMatch(/32\sg.* of honey/);
    await pressUntil(page, 'Tab', swap.getByRole('textbox', { name: 'Amount' }));
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('3 tbsp');
    // 3 tbsp of sugar are 37.5 g, which hold 37.5 × 0.998 × 1.05263 = 39.4 g of hexose; honey holds 0.8224 g in each g.
    await expect.poll(() => swap.getByRole('status').textContent()).toMatch(/48\sg.* of honey/);
    expect(faults).toEqual(noFaults);
    await close();
  });

  test('a two-litre jar is filled with cashews and milk grains', async () => {
    const { page, faults, close } = await arrive();
    await pressUntil(page, 'Tab', findCell(page, 'Kind of jar'));
    await chooseByLetters(page, 'two', 'twoLitre');
    await pressUntil(page, 'ArrowDown', findCell(page, 'Nut, seed or coconut'));
    await chooseByLetters(page, 'cash', 'cashew');
    await pressUntil(page, 'ArrowDown', findCell(page, 'Kind of culture'));
    await chooseByLetters(page, 'milk', 'milk');
    expect(await readNumber(page, 'Milk after straining')).toBeGreaterThan(1500);
    expect(await readCell(page, 'Kind of culture').catch(() => 'Milk')).toContain('Milk');
    expect(faults).toEqual(noFaults);
    await close();
  });
});
