import type { Locator, Page } from 'playwright-core';
import { beforeEach, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { showAllFigures } from './open-part';
import { findCell, readCell, readNumber, typeInto } from './sheet-page';
import { visitEach } from './visit-each';

describeInBrowser('the working of a number', () => {
  let page: Page;
  const current = visitEach();

  beforeEach(async () => {
    page = current();
    await showAllFigures(page);
  });

  async function openWorking(label: string): Promise<Locator> {
    await findCell(page, label).click({ position: { x: 5, y: 5 } });
    await page.keyboard.press('?');
    const working = page.getByRole('region', { name: `Working of ${label}` });
    await working.waitFor();
    return working;
  }

  test('takes what was measured: sweetener and grains follow, and what was planned is named', async () => {
    await typeInto(page, 'Weight as bought', '200 g');
    await typeInto(page, 'Water to blend', '800 mL');
    const before = {
      milk: await readNumber(page, 'Milk after straining'),
      sweetener: await readNumber(page, 'Sweetener to add'),
      grains: await readNumber(page, 'Culture to add'),
    };
    const working = await openWorking('Milk after straining');
    await working.getByRole('textbox', { name: 'Measured: Milk after straining' }).fill('700 mL');
    await working.getByRole('button', { name: 'Measured', exact: true }).click();
    await expect.poll(() => readCell(page, 'Milk after straining')).toMatch(/700 mL\s*measured/);
    expect(await readNumber(page, 'Sweetener to add')).toBeLessThan(before.sweetener);
    expect(await readNumber(page, 'Culture to add')).toBeLessThan(before.grains);
    expect(await readNumber(page, 'Weight as bought')).toBe(200);
    await working.getByText(`Planned: ${before.milk}`).waitFor();
  });

  test('keeps what was measured as a figure of one’s own, and gives it back', async () => {
    await typeInto(page, 'Weight as bought', '200 g');
    await typeInto(page, 'Water to blend', '800 mL');
    const before = await readNumber(page, 'Milk after straining');
    const working = await openWorking('Milk after straining');
    await working.getByRole('textbox', { name: 'Measured: Milk after straining' }).fill('700 mL');
    await press('Enter');
    const keep = working.getByRole('button', { name: /^Keep as yours: Milk lost in handling 0\.\d+/ });
    await keep.click();
    await expect.poll(() => keep.count()).toBe(0);
    await working.getByRole('button', { name: 'Forget the measurement' }).click();
    await expect.poll(() => readNumber(page, 'Milk after straining')).toBe(700);
    await page.getByRole('button', { name: /^Undo/ }).click();
    await page.getByRole('button', { name: /^Undo/ }).click();
    await working.getByRole('button', { name: 'Forget the measurement' }).click();
    await expect.poll(() => readNumber(page, 'Milk after straining')).toBe(before);
  });

  test('lets a figure of the tables be corrected and given back', async () => {
    await typeInto(page, 'Weight as bought', '200 g');
    const before = await readNumber(page, 'After soaking and draining');
    const working = await openWorking('After soaking and draining');
    await working.getByRole('button', { name: 'Use my own: Water taken up in soaking' }).click();
    await working.getByRole('textbox', { name: 'Water taken up in soaking' }).fill('0.8');
    await press('Enter');
    await expect.poll(() => readNumber(page, 'After soaking and draining')).toBeGreaterThan(before);
    await working.getByRole('button', { name: 'Give back: Water taken up in soaking' }).click();
    await expect.poll(() => readNumber(page, 'After soaking and draining')).toBe(before);
  });

  test('is followed to what went in', async () => {
    const working = await openWorking('After soaking and draining');
    await working.getByRole('button', { name: 'Weight as bought' }).first().click();
    await page.getByRole('region', { name: 'Working of Weight as bought' }).waitFor();
    await expect
      .poll(() => page.evaluate(() => document.activeElement?.getAttribute('data-quantity')))
      .toBe('sourceMass');
  });

  const press = (keys: string): Promise<void> => page.keyboard.press(keys);
});
