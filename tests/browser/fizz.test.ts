import type { Locator, Page } from 'playwright-core';
import { beforeEach, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { openPart, showAllFigures } from './open-part';
import { screenshot } from './screenshots';
import { readCell, typeInto } from './sheet-page';
import { visitEach } from './visit-each';

describeInBrowser('the fizz of a bottle', () => {
  let page: Page;
  let fizz: Locator;
  const current = visitEach();

  beforeEach(async () => {
    page = current();
    await openPart(page, 'Fizz');
    await showAllFigures(page);
    fizz = page.getByRole('region', { name: /^Fizz in the bottles of/ });
    await fizz.waitFor();
    await fizz.getByRole('button', { name: 'Add a second ferment of 8 h' }).click();
    await fizz.getByText(/^After 8.h likely/).waitFor();
  });

  const verdict = (): Promise<string> => textOf(fizz.getByRole('status').first());
  const textOf = async (part: Locator): Promise<string> =>
    ((await part.textContent()) ?? '').replaceAll(/\s+/g, ' ').trim();
  const undo = (): Promise<void> => page.getByRole('button', { name: /^Undo/ }).click();
  const limit = (): Locator => fizz.getByRole('textbox', { name: 'What the maker of your bottle allows' });

  test('says that ordinary bottles have no rating, and takes a limit that is typed, in psi too', async () => {
    expect(await verdict()).toMatch(
      /^After 8 h likely .+ Bottles made for fizz only\. Ordinary jars and bottles are rated for no pressure/,
    );
    await limit().fill('90 psi');
    await limit().press('Enter');
    await expect.poll(verdict).toMatch(/ Could go over\. .+ its maker allows 6\.2 bar \(90 psi\)/);
    expect(await readCell(page, 'Pressure the bottle’s maker allows')).toMatch(/6\.2 bar/);
    await fizz.getByText('Most sugar under that limit').waitFor();
    await fizz.getByText('A test pressure of new glass is no working pressure').waitFor();
    await undo();
    await expect.poll(verdict).toMatch(/Bottles made for fizz only/);
  });

  test('keeps a limit that can’t be read as typed, and says why beside it', async () => {
    await limit().fill('a lot');
    await limit().press('Enter');
    await fizz.getByRole('alert').waitFor();
    expect(await limit().inputValue()).toBe('a lot');
    expect(await limit().getAttribute('aria-invalid')).toBe('true');
  });

  test('shows the same bottle cold and warm, with its volumes', async () => {
    const table = fizz.getByRole('table', { name: 'The same sealed bottle, cold and warm' });
    const rows = await table.getByRole('row').allTextContents();
    expect(rows).toHaveLength(4);
    const forgotten = rows.slice(1).map((row) => Number(/([\d.]+)\s*bar[^b]*$/.exec(row)?.[1]));
    expect(forgotten).toEqual([...forgotten].sort((one, other) => one - other));
    expect(rows[1]).toMatch(/In the fridge, 4.°C.+volumes.+volumes/);
    expect(await fizz.getByRole('img').getAttribute('aria-label')).toMatch(
      /^Pressure of a sealed bottle: after 8.h likely .+ left a week longer likely/,
    );
  });

  test('a bottle over its limit has ways out at its cell; one taken brings it under, undone it is over again', async () => {
    await typeInto(page, 'Pressure the bottle’s maker allows', '8 bar');
    await expect.poll(verdict).toMatch(/ Could go over/);
    const remarks = page.locator('[id^=remarks-bottlePressureForgotten-]');
    const before = await readCell(page, 'Bottle pressure, if forgotten');
    await remarks.getByRole('button', { name: /^Start with only \d+ g\/L of sugar$/ }).click();
    await expect.poll(verdict).toMatch(/ (Holds|Close)\./);
    await expect.poll(() => remarks.getByText('could go over the').count()).toBe(0);
    await screenshot(page, 'fizz-under-limit');
    await undo();
    await expect.poll(() => readCell(page, 'Bottle pressure, if forgotten')).toBe(before);
    await expect.poll(verdict).toMatch(/ Could go over/);
    await fizz.getByRole('button', { name: /^Leave \d+ mL of the bottle empty$/ }).click();
    await expect.poll(verdict).toMatch(/ (Holds|Close)\./);
  });

  test('counts what is added to each bottle, by the spoon or by a label, as one step', async () => {
    // USDA 19335: 200 g a cup of 48 teaspoons, 4.17 g; as hexose × 0.998 × 1.0526.
    await fizz.getByRole('textbox', { name: 'How much in each bottle' }).fill('1 tsp');
    await fizz.getByRole('button', { name: 'Count 4.38 g of sugar in each bottle' }).click();
    await expect
      .poll(() => readCell(page, 'Sugar or fruit added to the bottle, as fermentable sugar'))
      .toMatch(/9\.2 g\/L/);
    await fizz.getByRole('combobox', { name: 'What' }).selectOption({ label: 'Fruit, juice or else, by its sugars' });
    await fizz.getByRole('textbox', { name: 'Sugars in 100 g, by a label or a food table' }).fill('10');
    await fizz.getByRole('textbox', { name: 'How much in each bottle' }).fill('50 g');
    await fizz.getByRole('button', { name: 'Count 5.26 g of sugar in each bottle' }).click();
    await expect
      .poll(() => readCell(page, 'Sugar or fruit added to the bottle, as fermentable sugar'))
      .toMatch(/11\.1 g\/L/);
    await page.getByRole('button', { name: /^Undo: Add 50 g of fruit or juice/ }).waitFor();
    await undo();
    await expect
      .poll(() => readCell(page, 'Sugar or fruit added to the bottle, as fermentable sugar'))
      .toMatch(/9\.2 g\/L/);
  });

  test('is not spoken of without a second ferment, but for the lid of the jar', async () => {
    await typeInto(page, 'Second ferment for', '0');
    await fizz.getByText('no bottle is sealed').waitFor();
    expect(await fizz.getByRole('table').count()).toBe(0);
    await fizz.getByText('Jars have no pressure rating').waitFor();
  });

  test.each([
    ['phone', 320, 'light'],
    ['phone-dark', 360, 'dark'],
    ['desktop', 1280, 'light'],
  ] as const)('fits a %s', async (name, width, colorScheme) => {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: 800 });
    await limit().fill('9 bar');
    await limit().press('Enter');
    await expect.poll(verdict).toMatch(/bar/);
    const widths = await fizz.evaluate((part) => ({ inside: part.scrollWidth, own: part.clientWidth }));
    expect(widths.inside).toBeLessThanOrEqual(widths.own);
    const folder = process.env.SCREENSHOTS;
    if (folder !== undefined && folder !== '') await fizz.screenshot({ path: `${folder}/fizz-${name}.png` });
  });
});
