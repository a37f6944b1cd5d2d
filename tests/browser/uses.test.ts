import type { Page } from 'playwright-core';
import { beforeEach, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { showAllFigures } from './open-part';
import { choose, findCell, readCell, readNumber, readRemarks, typeInto } from './sheet-page';
import { visitEach } from './visit-each';

describeInBrowser('a cook at the page', () => {
  let page: Page;
  const current = visitEach();

  beforeEach(async () => {
    page = current();
    await showAllFigures(page);
  });

  test('turns a recipe in cups into grams', async () => {
    await choose(page, 'Nut, seed or coconut', 'Almonds, whole');
    await typeInto(page, 'Weight as bought', '1 1/4 cups');
    await typeInto(page, 'Water to blend', '3 ¼ c');
    // USDA 12061: a cup of whole almonds weighs 143 g, so 1 ¼ cups weigh 178.75 g.
    expect(await readCell(page, 'Weight as bought')).toContain('179 g');
    // 3 ¼ US cups of 236.588 mL.
    expect(await readCell(page, 'Water to blend')).toContain('769 mL');
    // 769 mL of water, 767 g, to 178.75 g of almonds.
    expect(await readNumber(page, 'Parts of water, by weight')).toBeCloseTo(4.29, 2);
    expect(await page.getByText('Sized from weight as bought').count()).toBe(1);
  });

  test('swaps cane sugar for honey, then maple syrup, at equal fermentable sugar', async () => {
    await choose(page, 'Kind of culture', 'Water kefir grains');
    await choose(page, 'Kind of sweetener', 'Cane sugar, white');
    await typeInto(page, 'The same as cane sugar', '18 g');
    await choose(page, 'Kind of sweetener', 'Honey');
    // 18 g of cane sugar hold 18 × 0.998 × 1.05263 = 18.91 g of hexose; honey holds 0.8224 g per g.
    expect(await readNumber(page, 'Sweetener to add')).toBe(23);
    expect(await readCell(page, 'The same as cane sugar')).toContain('18 g');
    await choose(page, 'Kind of sweetener', 'Maple syrup');
    // Maple syrup holds 0.5832 × 1.05263 + 0.0212 = 0.6351 g per g.
    expect(await readNumber(page, 'Sweetener to add')).toBe(30);
    expect(await readCell(page, 'The same as cane sugar')).toContain('18 g');
  });

  test('sizes a batch for a two-litre jar', async () => {
    await choose(page, 'Kind of jar', 'Two-litre jar');
    const fill = await readNumber(page, 'Fill, each jar');
    const milk = await readNumber(page, 'Milk after straining');
    // 2 L and 6 % to the brim, less a fifth of it.
    expect(fill).toBe(1696);
    expect(milk).toBeLessThan(fill);
    await typeInto(page, 'Headspace', '3 in');
    expect(await readCell(page, 'Headspace')).toContain('7.6 cm');
    expect(await readNumber(page, 'Fill, each jar')).toBeLessThan(fill);
  });

  test.each([
    ['zero', 'Weight as bought', '0', 'must be more than 0'],
    ['a negative amount', 'Weight as bought', '-5 g', 'less than 0'],
    ['an absurdly large amount', 'Milk after straining', '9999999 L', 'more than this sheet takes'],
    ['a headspace deeper than the jar', 'Headspace', '60 cm', 'deep inside'],
    ['a slip of the finger', 'Weight as bought', '17o g', '17o'],
  ])('explains %s beside the cell and keeps what was typed', async (_, label, text, says) => {
    await typeInto(page, label, text);
    expect(await readCell(page, label)).toContain(text);
    await expect.poll(() => readRemarks(page, label)).toContain(says);
    expect(await page.getByText(/NaN|Infinity|undefined/).count()).toBe(0);
    await page.keyboard.press('Delete');
    await expect.poll(() => readRemarks(page, label)).not.toContain(says);
  });

  test('says when a source is heavier than the typed jars can take', async () => {
    await typeInto(page, 'Number of jars', '1');
    await typeInto(page, 'Weight as bought', '900 g');
    await expect.poll(() => readRemarks(page, 'Room left for rising')).toContain('run over');
    expect(await readCell(page, 'Weight as bought')).toContain('900 g');
  });

  test('remembers which unit leads, and the batch, over a reload', async () => {
    await page.getByText('US', { exact: true }).click();
    await typeInto(page, 'Weight as bought', '6 oz');
    await page.reload();
    await page.getByRole('treegrid').waitFor();
    expect((await readCell(page, 'Weight as bought')).indexOf('cup')).toBeLessThan(
      (await readCell(page, 'Weight as bought')).indexOf('170 g'),
    );
    await findCell(page, 'Weight as bought').click();
    await page.keyboard.press('F2');
    expect(await page.getByRole('textbox', { name: 'Weight as bought' }).inputValue()).toBe('6 oz');
    await page.keyboard.press('Escape');
  });
});
