import type { Page } from 'playwright-core';
import { beforeEach, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { openPart, showAllFigures } from './open-part';
import { choose, readCell, readNumber, readRemarks, typeInto } from './sheet-page';
import { visitEach } from './visit-each';

describeInBrowser('a cook of many batches', () => {
  let page: Page;
  const current = visitEach();

  beforeEach(async () => {
    page = current();
    await showAllFigures(page);
  });

  test('makes a quart batch in a quart jar, which says what is free', async () => {
    await typeInto(page, 'Weight as bought', '170 g');
    await typeInto(page, 'Water to blend', '3 ¼ cups');
    await typeInto(page, 'Sweetener to add', '18 g');
    await typeInto(page, 'Culture to add', '38 g');
    expect(await readNumber(page, 'Number of jars')).toBe(1);
    await expect
      .poll(() => readRemarks(page, 'Headspace'))
      .toMatch(/it may run over\. Keep .*mL.* of the milk to drink/);
    await typeInto(page, 'Weight as bought', '160 g');
    await typeInto(page, 'Water to blend', '3 cups');
    await expect.poll(() => readRemarks(page, 'Headspace')).toMatch(/so that one jar takes it all/);
  });

  test('finds a fifth of the jar free, whatever its size', async () => {
    for (const jar of ['Quart, wide mouth', 'Two-litre jar', 'Five-litre jar']) {
      await choose(page, 'Kind of jar', jar);
      expect(await readCell(page, 'Room left for rising'), jar).toContain('20 %');
    }
    await choose(page, 'Kind of jar', 'Pint, wide mouth');
    expect(await readCell(page, 'Headspace')).toContain('2.5 cm');
  });

  test('is told nothing of bottles until fizz is asked for', async () => {
    await openPart(page, 'Steps');
    const seal = () => page.getByText(/Leave them sealed for/).count();
    await page.getByText('Strain and press').first().waitFor();
    expect(await seal()).toBe(0);
    expect(await readCell(page, 'Second ferment for')).toMatch(/none/);
    await openPart(page, 'Fizz');
    await page.getByRole('button', { name: 'Add a second ferment of 8 h' }).click();
    await page.getByText(/^After 8.h likely/).waitFor();
    await page.getByText(/^Left a week longer: likely/).waitFor();
    // Lively by then: 1.5 to 2.5 volumes.
    const lead = (await page.getByText(/^After 8.h likely/).textContent()) ?? '';
    const volumes = Number(/That is ([\d.]+) volumes/.exec(lead)?.[1]);
    expect(volumes).toBeGreaterThanOrEqual(1.5);
    expect(volumes).toBeLessThanOrEqual(2.5);
    await openPart(page, 'Steps');
    await expect.poll(seal).toBeGreaterThan(0);
  });

  test('starts one with a packet of powder, which is stirred in and drunk', async () => {
    await choose(page, 'Kind of culture', 'Starter powder');
    await typeInto(page, 'Culture to add', '1 packet');
    expect(await readCell(page, 'Culture to add')).toMatch(/3\.0.g\s.*1.packet/);
    await openPart(page, 'Steps');
    await page.getByText('Add the starter').first().waitFor();
    await page.getByText(/nothing to strain out/).waitFor();
    expect(await page.getByText(/Lift the grains|Drain the grains/).count()).toBe(0);
    await page
      .getByText(/It may hold milk/)
      .first()
      .waitFor();
    await typeInto(page, 'Culture to add', '');
  });

  test('starts one with 3 % of finished kefir, of which all is drunk', async () => {
    await choose(page, 'Kind of culture', 'Finished kefir');
    await typeInto(page, 'Culture per litre', '3 %');
    const litres = (await readNumber(page, 'Milk after straining')) / 1000;
    const rate = (await readNumber(page, 'Culture to add')) / litres;
    expect(rate).toBeGreaterThan(29);
    expect(rate).toBeLessThan(32);
    expect(await readNumber(page, 'Kefir to drink')).toBeGreaterThan(1000 * litres);
    await openPart(page, 'Steps');
    await page
      .getByText(/It brings along whatever it was made of/)
      .first()
      .waitFor();
  });

  test('types a source of his own off its label, and the sheet goes by it', async () => {
    await choose(page, 'Nut, seed or coconut', 'Your own source');
    const form = page.getByRole('form', { name: 'What your own source is' });
    const before = await readNumber(page, 'Solids in the milk');
    await form.getByLabel('Fat', { exact: false }).first().fill('46');
    await form.getByLabel('Protein', { exact: false }).first().fill('30');
    await form.getByRole('button', { name: 'Keep these' }).click();
    await expect.poll(() => readNumber(page, 'Solids in the milk')).not.toBe(before);
    await page.getByRole('button', { name: /^Undo: .*own source/ }).click();
    await expect.poll(() => readNumber(page, 'Solids in the milk')).toBe(before);
  });

  test('puts raspberries in the bottle, and they stay raspberries in the step', async () => {
    await typeInto(page, 'Second ferment for', '8 h');
    await openPart(page, 'Fizz');
    await page.getByRole('combobox', { name: 'What' }).selectOption({ label: 'Raspberries' });
    await page.getByRole('textbox', { name: 'How much in each bottle' }).fill('30 g');
    await page.getByRole('button', { name: /^Count .* of sugar in each bottle/ }).click();
    await openPart(page, 'Steps');
    await page
      .getByText(/of raspberries: 30.g/)
      .first()
      .waitFor();
  });

  test('is told what to do with a jar that did not turn sour', async () => {
    await openPart(page, 'Log');
    const log = page.getByRole('region', { name: /^Log of / });
    await log.getByRole('radio', { name: 'Just looked' }).check();
    await log.getByLabel('Hours since the grains went in').fill('25 h');
    await log.getByLabel('pH', { exact: true }).fill('5.4');
    await log.getByRole('button', { name: 'Save' }).click();
    await log
      .getByText(/throw it out/)
      .first()
      .waitFor();
  });

  test('pours two batches together and reads what that holds', async () => {
    await page.getByRole('button', { name: '+ Batch', exact: true }).click();
    await openPart(page, 'Glass');
    await page.getByText('Blend finished drinks').click();
    await page.getByRole('button', { name: /^Blend .* with another$/ }).click();
    const poured = page.getByRole('textbox', { name: 'How much of drink 2' });
    await poured.fill('90 L');
    await poured.press('Enter');
    await page.getByText(/that this batch gives to drink\. Pour less\./).waitFor();
    await poured.fill('175 mL');
    await poured.press('Enter');
    const blended = page.getByRole('region', { name: 'In Blend' });
    await blended.getByText(/^300.mL$/).waitFor();
    await blended.getByText(/^\d+ to \d+.g in all, \d+ to \d+.g in a litre$/).waitFor();
    await blended.getByText(/^Contains almond/).waitFor();
    await page.getByRole('button', { name: /^Undo: Pour 175 mL/ }).click();
    expect(await poured.inputValue()).toBe('90 L');
  });
});
