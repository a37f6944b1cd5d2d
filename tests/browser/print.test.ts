import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { openPart, showAllFigures, waitForPage } from './open-part';
import { noFaults, type OpenedPage, openPage, type Visit } from './page';
import { findCell, typeInto } from './sheet-page';

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

/** Texts that are on paper and stand on no card. */
function findOffCard(): readonly string[] {
  const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const found: string[] = [];
  for (let text = texts.nextNode(); text !== null; text = texts.nextNode()) {
    const part = text.parentElement;
    const words = text.textContent?.trim() ?? '';
    if (words !== '' && part?.checkVisibility() === true && part.closest('.print-card') === null) found.push(words);
  }
  return found;
}

async function countPages(page: Page, format: 'A4' | 'Letter'): Promise<number> {
  // A browser prints at once; what draws the cards comes after the page, and is waited for here.
  await page.emulateMedia({ media: 'print' });
  await page.locator('.print-card').first().waitFor();
  await page.emulateMedia({ media: null });
  const pdf = await page.pdf({ format, printBackground: true });
  expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
  return pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
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

    const card = (name = 'Saturday almond') => page.getByRole('article', { name: `Card of ${name}` });
    const toPaper = async () => {
      await page.emulateMedia({ media: 'print' });
      await card().waitFor();
    };

    beforeEach(async () => {
      visit = await opened.visit({ colorScheme, viewport: { width: 1280, height: 900 } });
      page = visit.page;
      await waitForPage(page);
    });

    afterEach(async () => {
      expect(visit.faults).toEqual(noFaults);
      await visit.close();
    });

    test('nothing but the card is there', async () => {
      await findCell(page, 'Weight as bought').click();
      await page.keyboard.press('?');
      await page.getByRole('region', { name: /^Working of/ }).waitFor();
      await toPaper();
      expect(await page.getByRole('button').count()).toBe(0);
      expect(await page.getByRole('treegrid').count()).toBe(0);
      expect(await page.evaluate(findOffCard)).toEqual([]);
    });

    test('the amounts stand in both units, with what was given', async () => {
      await typeInto(page, 'Milk after straining', '1 L');
      await toPaper();
      const line = (label: string) => card().getByRole('row', { name: new RegExp(`^${label}`) });
      for (const label of ['Weight as bought', 'Sweetener to add', 'Culture to add']) {
        await expect
          .poll(() => line(label).textContent())
          .toMatch(/\d\sg\s*(about\s)?[\d¼⅓½⅔¾][\s\S]*(cup|tbsp|tsp)[\s\S]*oz/);
      }
      for (const label of ['Water to blend', 'Kefir to drink']) {
        expect(await line(label).textContent()).toMatch(/\d\smL\s*(about\s)?[\d¼⅓½⅔¾].*cup/);
      }
      expect(await line('Milk after straining').textContent()).toContain('given');
      expect(await line('Room temperature').textContent()).toMatch(/21\s°C\s*70\s°F/);
      expect(await line('Ready to taste after').textContent()).toMatch(/8–16\sh, likely 12\sh/);
    });

    test('jar with its fill line, steps, allergens, cautions, dates and the link to scan are there', async () => {
      await toPaper();
      await card()
        .getByRole('img', { name: /^One jar/ })
        .waitFor();
      expect(await card().getByText('Fill to 4.0 cm (1 ⅝ in) below the rim, grains in.').isVisible()).toBe(true);
      // It is drawn by a script that comes after the card.
      await card()
        .getByRole('img', { name: /QR picture/ })
        .waitFor();
      expect(await card().getByRole('list').first().getByRole('listitem').count()).toBeGreaterThan(8);
      for (const text of [
        'Allergens.',
        'Almond (tree nut)',
        'Made, grains out',
        'Taste by',
        'What I found',
        'loosen the lid',
      ]) {
        expect(await card().getByText(text).first().isVisible(), text).toBe(true);
      }
    });

    test('every text is black or grey, also what is typed, wrong or chosen', async () => {
      await typeInto(page, 'Parts of water, by weight', '5');
      await typeInto(page, 'Headspace', '60 cm');
      await findCell(page, 'Culture to add').click();
      expect(await page.evaluate(findInks)).not.toEqual([]);
      await toPaper();
      await expect.poll(() => page.evaluate(findInks)).toEqual([]);
    });

    test.each(['A4', 'Letter'] as const)('a card takes the two sides of a sheet of %s', async (format) => {
      expect(await countPages(page, format)).toBe(2);
      // More lines than most: several jars, milk grains, a plan with all its days.
      await showAllFigures(page);
      await typeInto(page, 'Number of jars', '7');
      await page.getByRole('combobox', { name: 'Kind of culture' }).selectOption({ label: 'Milk kefir grains' });
      await openPart(page, 'Plan');
      await page.getByRole('combobox', { name: 'Plan for Saturday almond' }).selectOption({ label: 'To drink at' });
      expect(await countPages(page, format)).toBe(2);
    });

    test('US measure leads where it leads on the page, and amounts are read from an arm’s length', async () => {
      await page.getByRole('radio', { name: 'US', exact: true }).check();
      await toPaper();
      const cells = card()
        .getByRole('row', { name: /^Water to blend/ })
        .getByRole('cell');
      expect(await cells.first().textContent()).toMatch(/cup/);
      expect(await cells.last().textContent()).toMatch(/mL/);
      expect(await card().getByText('Fill to 1 ⅝ in (4.0 cm) below the rim, grains in.').isVisible()).toBe(true);
      const size = await cells.first().evaluate((cell) => Number.parseFloat(getComputedStyle(cell).fontSize));
      // 15 pt at 96 dots an inch.
      expect(size).toBeGreaterThanOrEqual(20);
    });

    test('a card of less than fills its sides is set in larger type', async () => {
      const sizes = () =>
        card()
          .locator('.paper-side')
          .evaluateAll((sides) => sides.map((side) => Number.parseFloat(getComputedStyle(side).fontSize)));
      await typeInto(page, 'Second ferment for', '8 h');
      await toPaper();
      const before = await sizes();
      await page.emulateMedia({ media: 'screen' });
      await typeInto(page, 'Second ferment for', '0');
      await toPaper();
      const after = await sizes();
      expect(after[0]).toBeGreaterThanOrEqual(before[0] ?? Number.NaN);
      expect(after[1]).toBeGreaterThan(before[1] ?? Number.NaN);
    });

    test('a batch that can’t be made says so on its card, in black', async () => {
      await typeInto(page, 'Headspace', '60 cm');
      await toPaper();
      await card().getByRole('heading', { name: 'This card waits: mend this first' }).waitFor();
      expect(
        await card()
          .getByRole('row', { name: /^Fill, each jar/ })
          .textContent(),
      ).toContain('–');
    });

    test('of several batches the one that is looked at has a card, or each of them', async () => {
      await page.getByRole('button', { name: '+ Batch' }).click();
      await page.evaluate(() => {
        window.print = () => undefined;
      });
      const names = () => page.getByRole('article').evaluateAll((all) => all.map((one) => one.ariaLabel));
      await page.emulateMedia({ media: 'print' });
      await expect.poll(names).toHaveLength(1);
      await page.emulateMedia({ media: 'screen' });
      await openPart(page, 'Paper');
      await page.getByRole('button', { name: 'Print all 2 cards' }).click();
      await page.emulateMedia({ media: 'print' });
      await expect.poll(names).toHaveLength(2);
      expect(await countPages(page, 'A4')).toBeGreaterThanOrEqual(2);
    });
  });
});
