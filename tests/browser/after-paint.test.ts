import type { Page, Route } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { type OpenedPage, openPage, type Visit } from './page';
import { choose, findCell, readCell, typeInto } from './sheet-page';

describeInBrowser('a slow line', () => {
  let opened: OpenedPage;
  let visit: Visit;
  let page: Page;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  beforeEach(async () => {
    // A worker would answer from what it has kept, and no line would be slow.
    visit = await opened.visit({ serviceWorkers: 'block' });
    page = visit.page;
  });

  afterEach(async () => {
    expect(visit.faults.pageErrors).toEqual([]);
    await visit.close();
  });

  /** Opens the page anew with its later script answered as told. */
  async function openWith(answer: (route: Route) => Promise<void>): Promise<void> {
    await page.route(/after-paint-parts/, answer);
    await page.reload();
    await page.getByRole('grid').waitFor();
  }

  const undo = () => page.getByRole('button', { name: /^Undo/ });

  test('loses nothing that is typed, chosen and undone before the page can take it, and keeps its order', async () => {
    let arrive = (): void => {};
    const line = new Promise<void>((resolve) => {
      arrive = resolve;
    });
    await openWith(async (route) => {
      await line;
      await route.continue();
    });
    await typeInto(page, 'Weight as bought', '200 g');
    expect(await readCell(page, 'Weight as bought')).toMatch(/^200 g\s+kept/);
    await choose(page, 'Nut, seed or coconut', 'Cashews');
    await choose(page, 'Kind of sweetener', 'Honey');
    await findCell(page, 'Weight as bought').focus();
    await page.keyboard.press('Control+z');
    await expect.poll(() => page.getByRole('combobox', { name: 'Kind of sweetener' }).inputValue()).toBe('caneWhite');
    await page.getByText('US first').click();
    await findCell(page, 'Parts of water, by weight').click();
    await page.keyboard.type('5');
    await page.keyboard.press('Tab');
    await findCell(page, 'Headspace').click();
    await page.keyboard.type('3 c');

    arrive();
    await page.getByRole('region', { name: 'Cautions for Saturday almond' }).waitFor();
    await page.keyboard.type('m');
    await page.keyboard.press('Enter');
    expect(await readCell(page, 'Headspace')).toContain('3.0 cm');
    expect(await readCell(page, 'Weight as bought')).toContain('200 g');
    expect(await page.getByRole('radio', { name: 'US first' }).isChecked()).toBe(true);
    const steps: string[] = [];
    while (await undo().isEnabled()) {
      const step = (await undo().textContent()) ?? '';
      steps.push(step);
      await undo().click();
      await expect.poll(() => undo().textContent()).not.toBe(step);
    }
    expect(steps.map((step) => step.replace('Undo', ''))).toEqual([
      'Type 3 cm for Headspace',
      'Type 5 for Parts of water, by weight',
      'Choose Cashews',
      'Type 200 g for Weight as bought',
    ]);
  });

  test('that breaks is told of and tried again, and what was typed stays until it is taken', async () => {
    let broken = true;
    await openWith((route) => (broken ? route.abort() : route.continue()));
    const message = page.getByText('A part of the page could not be loaded');
    await message.waitFor();
    await typeInto(page, 'Weight as bought', '210 g');
    await page.getByText('leave this page open').waitFor();
    expect(await readCell(page, 'Weight as bought')).toMatch(/^210 g\s+kept/);

    const asked = page.waitForEvent('dialog');
    await page.close({ runBeforeUnload: true });
    const dialog = await asked;
    expect(dialog.type()).toBe('beforeunload');
    await dialog.dismiss();

    broken = false;
    await expect.poll(() => undo().textContent(), { timeout: 20_000 }).toContain('Type 210 g for Weight as bought');
    expect(await readCell(page, 'Weight as bought')).not.toContain('kept');
    expect(await message.count()).toBe(0);
    await page.getByRole('region', { name: 'Cautions for Saturday almond' }).waitFor();
  });
});
