import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { openPart, showAllFigures } from './open-part';
import { choose, findCell, typeInto } from './sheet-page';
import { visitEach } from './visit-each';

/** Presses a button by key and waits until the focus has settled; gives what has it, in words. */
async function pressAway(page: Page, button: Locator): Promise<string> {
  await button.focus();
  await page.keyboard.press('Enter');
  const here = () =>
    page.evaluate(() => {
      const { activeElement: at } = document;
      if (at === null || at === document.body) return 'nothing';
      return at.getAttribute('aria-label') ?? at.textContent?.trim() ?? at.tagName;
    });
  await expect.poll(here).not.toBe('nothing');
  // What is drawn a moment later may still take it away.
  await page.waitForTimeout(150);
  return here();
}

describeInBrowser('the focus never falls to the body', () => {
  const page = visitEach();
  const button = (name: string | RegExp) => page().getByRole('button', { name });

  test('in the sheet: a way out, another sweetener kept or not, a batch moved and removed', async () => {
    await typeInto(page(), 'Weight as bought', '17o g');
    expect(await pressAway(page(), button(/^Clear “/).first())).toContain('Weight as bought');
    await typeInto(page(), 'Sweetener to add', '2 tbsp');
    await choose(page(), 'Kind of sweetener', 'Honey');
    expect(await pressAway(page(), button(/^keep /))).toContain('Sweetener to add');
    await button('+ Batch').click();
    for (const name of ['Move left', 'Remove']) {
      await page().locator('.batch-tools > summary').last().click();
      expect(await pressAway(page(), button(name).last())).not.toBe('nothing');
    }
  });

  test('in Swap: another sweetener used, a food of one’s own forgotten', async () => {
    await openPart(page(), 'Swap');
    expect(await pressAway(page(), button('Use Honey'))).toContain('Swap the sweetener');
    const foods = page().getByRole('region', { name: 'Cups to grams, any food' });
    await foods.getByText('Weigh a cup once and keep it').click();
    await foods.getByRole('textbox', { name: 'Name of the food' }).fill('Sprouted oats');
    await foods.getByRole('textbox', { name: 'It weighs' }).fill('90 g');
    await foods.getByRole('button', { name: 'Keep', exact: true }).click();
    expect(await pressAway(page(), button('Forget Sprouted oats'))).not.toBe('nothing');
  });

  test('in Recipe, On hand and Log: cleared, made, saved, removed', async () => {
    await openPart(page(), 'Recipe');
    await page().getByRole('textbox', { name: 'Recipe text' }).fill('1 cup almonds');
    expect(await pressAway(page(), button('Clear'))).toBe('Recipe text');
    await openPart(page(), 'On hand');
    await page()
      .getByLabel(/^On hand: Almonds/)
      .fill('100 g');
    await page().keyboard.press('Enter');
    expect(await pressAway(page(), button('Make this batch'))).toContain('Kind of jar');
    await openPart(page(), 'Log');
    await page().getByRole('radio', { name: 'Ready' }).check();
    await page().getByRole('textbox', { name: 'Hours since the grains went in' }).fill('14');
    expect(await pressAway(page(), button('Save'))).not.toBe('nothing');
    expect(await pressAway(page(), button(/^Remove/).last())).toContain('Removed');
  });

  test('in the working: a figure of one’s own kept and given back', async () => {
    await showAllFigures(page());
    await findCell(page(), 'After soaking and draining').focus();
    await page().keyboard.press('?');
    const working = page().getByRole('region', { name: /^Working of/ });
    await working.waitFor();
    expect(await pressAway(page(), button('Use my own: Water taken up in soaking'))).not.toBe('nothing');
    await working.getByRole('textbox').first().fill('0.7');
    expect(await pressAway(page(), working.getByRole('button', { name: 'Keep', exact: true }))).not.toBe('nothing');
    expect(await pressAway(page(), button('Give back: Water taken up in soaking'))).not.toBe('nothing');
  });
});
