import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { noFaults, type OpenedPage, openPage, type Visit } from './page';
import { findCell, readCell, typeInto } from './sheet-page';

/** Texts that are on paper in another colour than a grey, with that colour. */
function findInks(): readonly string[] {
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const inks: string[] = [];
  for (let text = texts.nextNode(); text !== null; text = texts.nextNode()) {
    const part = text.parentElement;
    if (part === null || text.textContent?.trim() === '' || !part.checkVisibility()) continue;
    const style = getComputedStyle(part);
    const ink = part instanceof SVGElement ? style.fill : style.color;
    const [red, green, blue] = ink.match(/\d+(\.\d+)?/g) ?? [];
    if (red === undefined || red !== green || red !== blue || Number(red) > 0x77) {
      inks.push(`${ink}: ${text.textContent?.trim().slice(0, 40)}`);
    }
  }
  return inks;
}

describeInBrowser('on paper', () => {
  let opened: OpenedPage;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  describe.each(['light', 'dark'] as const)('from a %s screen', (colorScheme) => {
    let visit: Visit;
    let page: Page;

    beforeEach(async () => {
      visit = await opened.visit({ colorScheme, viewport: { width: 1280, height: 900 } });
      page = visit.page;
      await page.getByRole('region', { name: /^Steps for/ }).waitFor();
    });

    afterEach(async () => {
      expect(visit.faults).toEqual(noFaults);
      await visit.close();
    });

    test('the tools and the working are left out', async () => {
      await findCell(page, 'Source, as bought').click();
      const undo = page.getByRole('button', { name: /^Undo/ });
      const working = page.getByRole('heading', { name: 'What went in' });
      await working.waitFor();
      await page.emulateMedia({ media: 'print' });
      expect(await undo.isVisible()).toBe(false);
      expect(await page.getByText('US first').isVisible()).toBe(false);
      expect(await page.getByText('Add a heat step').isVisible()).toBe(false);
      expect(await working.isVisible()).toBe(false);
    });

    test('the batch, its amounts in both units, its jar, steps and cautions are there', async () => {
      await page.emulateMedia({ media: 'print' });
      const name = 'Saturday almond';
      expect(await page.getByRole('grid').getByText(name, { exact: true }).first().isVisible()).toBe(true);
      for (const label of ['Source, as bought', 'Sweetener to add', 'Grains to add']) {
        expect(await readCell(page, label)).toMatch(/\d g\s+\d.*(cup|tbsp|tsp).*oz/);
      }
      for (const label of ['Water to blend', 'Milk after straining', 'Kefir to drink, grains out']) {
        expect(await readCell(page, label)).toMatch(/\d mL\s+\d.*cup/);
      }
      expect(
        await page
          .getByRole('img', { name: /^One jar/ })
          .first()
          .isVisible(),
      ).toBe(true);
      expect(await page.getByRole('region', { name: `Steps for ${name}` }).isVisible()).toBe(true);
      expect(await page.getByRole('region', { name: `Cautions for ${name}` }).isVisible()).toBe(true);
    });

    test('every text is black or grey, also what is typed, wrong or chosen', async () => {
      await typeInto(page, 'Water per source, by weight', '5');
      await typeInto(page, 'Headspace', '60 cm');
      await findCell(page, 'Grains to add').click();
      expect(await page.evaluate(findInks)).not.toEqual([]);
      await page.emulateMedia({ media: 'print' });
      await expect.poll(() => page.evaluate(findInks)).toEqual([]);
    });

    test('a PDF is made of it', async () => {
      const pdf = await page.pdf({ format: 'A4', printBackground: true });
      expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
      const pages = pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? [];
      expect(pages.length).toBeGreaterThanOrEqual(1);
      expect(pages.length).toBeLessThanOrEqual(6);
    });
  });
});
