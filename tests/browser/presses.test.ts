import { afterAll, beforeAll, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { openPart, waitForPage } from './open-part';
import { noFaults, type OpenedPage, openPage, type VisitOptions } from './page';
import { countPresses, expectInSight, printPresses } from './presses';
import { findCell, readCell, readNumber } from './sheet-page';

const laptop = { viewport: { width: 1366, height: 768 } } as const;
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true } as const;

describeInBrowser('few presses', () => {
  let opened: OpenedPage;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  async function arrive(options: VisitOptions) {
    const visit = await opened.visit({ ...options });
    await waitForPage(visit.page);
    return { ...visit, cook: countPresses(visit.page) };
  }

  test('make a weighed batch of a pasted recipe on a phone', async () => {
    const { page, cook, faults, close } = await arrive(phone);
    await openPart(page, 'Recipe');
    await page
      .getByRole('textbox', { name: 'Recipe text' })
      .fill('1 ¼ cups almonds\n3 ¼ cups water\n1 tbsp sugar\n2 tbsp water kefir grains');
    await cook.press(page.getByRole('button', { name: 'Read it' }));
    await cook.press(page.getByRole('button', { name: 'Make this batch' }));
    await expectInSight(findCell(page, 'Weight as bought'));
    // USDA 12061: a cup of whole almonds weighs 143 g; a US cup is 236.588 mL.
    expect(await readCell(page, 'Weight as bought')).toContain('179 g');
    expect(await readCell(page, 'Water to blend')).toContain('769 mL');
    for (const row of ['Water to blend', 'Sweetener to add', 'Culture to add'])
      await expectInSight(findCell(page, row));
    printPresses('a recipe to a weighed batch, after pasting', cook.count());
    expect(cook.count()).toBeLessThanOrEqual(3);
    expect(faults).toEqual(noFaults);
    await close();
  });

  test.each([
    ['a laptop', laptop],
    ['a phone', phone],
  ] as const)('say on %s how much honey stands for 2 tbsp of sugar', async (where, options) => {
    const { page, cook, faults, close } = await arrive(options);
    const tab = page.getByRole('tab', { name: 'Swap' });
    if ((await tab.count()) > 0) await cook.press(tab);
    else {
      await cook.press(page.getByRole('button', { name: 'More', exact: true }));
      await cook.press(page.getByRole('region', { name: 'More' }).getByRole('button', { name: /^Swap / }));
    }
    const swap = page.getByRole('region', { name: 'One sweetener for another' });
    await swap.waitFor();
    expect(await swap.getByRole('textbox', { name: 'Amount' }).inputValue()).toBe('2 tbsp');
    const answer = swap.getByRole('status');
    await expectInSight(answer);
    // USDA 19335: a cup of sugar weighs 200 g, so 2 tbsp 25 g, which hold 25 × 0.998 × 1.05263 = 26.3 g of hexose; honey
    // holds 0.8224 g in each g.
    expect(await answer.textContent()).toMatch(/32\sg.* of honey/);
    printPresses(`honey for 2 tbsp of sugar on ${where}`, cook.count());
    expect(cook.count()).toBeLessThanOrEqual(4);
    expect(await page.evaluate(() => scrollY)).toBe(0);
    expect(faults).toEqual(noFaults);
    await close();
  });

  test.each([
    ['a laptop', laptop],
    ['a phone', phone],
  ] as const)('fill on %s a two-litre jar with cashews and milk grains', async (where, options) => {
    const { page, cook, faults, close } = await arrive(options);
    await cook.pick('Kind of jar', 'Two-litre jar');
    await cook.pick('Nut, seed or coconut', 'Cashews');
    await cook.pick('Kind of culture', 'Milk kefir grains');
    // 2 L and 6 % to the brim, less the headspace.
    expect(await readNumber(page, 'Milk after straining')).toBeGreaterThan(1500);
    for (const row of ['Weight as bought', 'Water to blend', 'Culture to add']) {
      await expectInSight(findCell(page, row));
      expect(await readNumber(page, row)).toBeGreaterThan(0);
    }
    printPresses(`a two-litre jar of cashews and milk grains on ${where}`, cook.count());
    expect(cook.count()).toBeLessThanOrEqual(7);
    expect(await page.evaluate(() => scrollY)).toBe(0);
    expect(faults).toEqual(noFaults);
    await close();
  });
});
