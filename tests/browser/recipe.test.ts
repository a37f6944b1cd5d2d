import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { openPart, showAllFigures } from './open-part';
import { choose, findCell, readCell, readNumber, typeInto } from './sheet-page';
import { visitEach } from './visit-each';

const recipe = `Friday almonds

For a 2 L jar
1 ¼ to 1 ½ cups almonds
3 ¼ cups water
18 g sugar
40 g water kefir grains
a pinch of salt
½/0 cups walnuts
Blend, strain and wait.`;

async function open(page: Page, part: 'Recipe' | 'Swap', panel: string): Promise<Locator> {
  await openPart(page, part);
  const region = page.getByRole('region', { name: panel });
  await region.waitFor();
  return region;
}

async function paste(page: Page, text: string): Promise<Locator> {
  const panel = await open(page, 'Recipe', 'Paste a recipe');
  await panel.getByRole('textbox', { name: 'Recipe text' }).fill(text);
  await panel.getByRole('button', { name: 'Read it' }).click();
  await panel.getByRole('region', { name: 'The batch this makes' }).waitFor();
  return panel;
}

/** What a part of the page shows, every run of spaces one. */
async function said(part: Locator): Promise<string> {
  // biome-ignore lint/performance/useDomNodeTextContent: what is hidden from sight must not count as shown.
  return (await part.innerText()).replaceAll(/\s+/g, ' ');
}

/** What a line says with its measure, error and origin unfolded. */
async function unfolded(one: Locator): Promise<string> {
  const fold = one.locator('details');
  if ((await fold.getAttribute('open')) === null) await fold.locator('summary').click();
  return said(one);
}

function line(panel: Locator, text: string): Locator {
  const lines = panel.getByRole('list', { name: 'What was read' }).getByRole('listitem');
  return lines.filter({ has: panel.page().locator('.as-written').getByText(text, { exact: true }) });
}

/** The text of a recipe written out, which is plain. */
async function written(panel: Locator): Promise<string> {
  return (await panel.locator('pre').textContent()) ?? '';
}

const names = (page: Page) => page.getByRole('treegrid').getByRole('heading', { level: 2 });

describeInBrowser('a recipe from a book', () => {
  const page = visitEach();

  describe('pasted', () => {
    test('shows grams, range, measure, origin and the error to expect of each line', async () => {
      const panel = await paste(page(), recipe);
      const almonds = await unfolded(line(panel, '1 ¼ to 1 ½ cups almonds'));
      // USDA 12061: 143 g a cup, so 179 to 214 g, 15 % either way.
      expect(almonds).toMatch(/197 g.*152 g to 247 g/);
      expect(almonds).toMatch(/325 mL.*296 mL to 355 mL/);
      expect(almonds).toMatch(/± 15%/);
      expect(almonds).toMatch(/cup, whole, 143 g\. Published: USDA.*record 12061/);
      expect(await unfolded(line(panel, '3 ¼ cups water'))).toMatch(/769 mL/);
    });

    test('is weighed anew when a wrong guess of the food is corrected', async () => {
      const panel = await paste(page(), '1 cup almonds\n1 cup sprinkles');
      expect(await said(line(panel, '1 cup sprinkles'))).toContain('not in the tables');
      const menu = panel.getByRole('combobox', { name: 'Food of 1 cup sprinkles' });
      await menu.selectOption({ label: 'Almonds, whole' });
      expect(await said(line(panel, '1 cup sprinkles'))).toContain('143 g');
      await menu.selectOption({ label: 'Brown sugar' });
      // USDA 19334: 220 g packed and 145 g not.
      expect(await unfolded(line(panel, '1 cup sprinkles'))).toMatch(/220 g.*record 19334/);
    });

    test('keeps a line that can’t be read with its text and why', async () => {
      const panel = await paste(page(), recipe);
      expect(await said(line(panel, '½/0 cups walnuts'))).toContain('“½/0” can’t be read as a number');
      expect(await said(line(panel, 'Blend, strain and wait.'))).toContain('Not an ingredient.');
    });

    test.each([320, 390, 1366])(
      'is cards that are no wider than a window of %i px, food and weight in sight',
      async (width) => {
        await page().setViewportSize({ width, height: 800 });
        const long = `1 cup almonds ${'very'.repeat(40)} fine`;
        const panel = await paste(page(), `${recipe}\n${long}\n1 (400 mL) can coconut milk, ${'9'.repeat(60)}`);
        const list = panel.getByRole('list', { name: 'What was read' });
        const frame = await list.boundingBox();
        for (const part of await list.locator('li, li > *, select, input').all()) {
          const box = await part.boundingBox();
          if (box === null || frame === null) continue;
          expect(box.x).toBeGreaterThanOrEqual(frame.x - 1);
          expect(box.x + box.width).toBeLessThanOrEqual(frame.x + frame.width + 1);
        }
        expect((frame?.x ?? 0) + (frame?.width ?? 0)).toBeLessThanOrEqual(width);
        const almonds = line(panel, '1 ¼ to 1 ½ cups almonds');
        expect(await said(almonds)).toMatch(/^1 ¼ to 1 ½ cups almonds.*197 g/);
        expect(await said(almonds)).not.toContain('record');
      },
    );

    test('is told what a line is that holds no ingredient', async () => {
      const panel = await paste(page(), 'Kefir\nGrandmother’s secret\n3 cups water');
      await panel.getByRole('combobox', { name: 'Food of Grandmother’s secret' }).selectOption({ label: 'Cashews' });
      await panel.getByRole('textbox', { name: 'Amount of Grandmother’s secret' }).fill('150 g');
      const plan = panel.getByRole('region', { name: 'The batch this makes' });
      await expect.poll(() => said(plan)).toContain('150 g');
      await plan.getByRole('combobox', { name: 'Kind of culture' }).selectOption({ label: 'Milk kefir grains' });
      await expect.poll(() => said(plan)).toContain('Cashews');
      await panel.getByRole('button', { name: 'Make this batch' }).click();
      await expect.poll(() => names(page()).count()).toBe(2);
    });

    test('asks for level or grams where a measure is heaped', async () => {
      const panel = await paste(page(), '1 heaped cup cashews');
      const row = await said(line(panel, '1 heaped cup cashews'));
      expect(row).toContain('Say how many level ones it is, or how many grams');
      expect(row).not.toMatch(/\d\sg\b/);
    });

    test('shows its own weight against the published cup, with the percentage', async () => {
      const panel = await paste(page(), '1 cup (160 g) hazelnuts');
      // 160 ÷ 135 = 1.19.
      expect(await said(line(panel, '1 cup (160 g) hazelnuts'))).toContain(
        'The text says 160 g, the published cup makes it 135 g: +19%.',
      );
    });

    test.each([
      ['one line', '1 cup ¼ 3/ % heaped '.repeat(10_000)],
      ['many lines', '1 cup xq zz%% 3/ ½ (\n'.repeat(10_000)],
      ['no letters', '½/¼ 1.2.3,4 –– \u202E'.repeat(15_000)],
    ])('answers 200 kB of garbage in %s', async (_, garbage) => {
      await page().context().grantPermissions(['clipboard-read', 'clipboard-write']);
      await page().evaluate((text) => navigator.clipboard.writeText(text), garbage);
      const panel = await open(page(), 'Recipe', 'Paste a recipe');
      const box = panel.getByRole('textbox', { name: 'Recipe text' });
      await box.focus();
      await page().keyboard.press('ControlOrMeta+v');
      expect((await box.inputValue()).length).toBe(garbage.length);
      await panel.getByRole('button', { name: 'Read it' }).click();
      expect(await panel.getByRole('button', { name: 'Make this batch' }).isVisible()).toBe(true);
      expect(
        await page()
          .getByText(/NaN|Infinity|undefined/)
          .count(),
      ).toBe(0);
      await box.fill('1 cup almonds');
      await panel.getByRole('button', { name: 'Read it' }).click();
      expect(await said(line(panel, '1 cup almonds'))).toContain('143 g');
    });
  });

  describe('made a batch', () => {
    test('changes nothing before it is made, and goes by undo', async () => {
      const panel = await paste(page(), recipe);
      const plan = await said(panel.getByRole('region', { name: 'The batch this makes' }));
      expect(plan).toContain('Two-litre jar · Almonds, whole · Cane sugar, white · Water kefir grains');
      await typeInto(page(), 'Weight as bought', '1 cup');
      await openPart(page(), 'Recipe');
      expect(plan).toMatch(/For the glass, or left over a pinch of salt/);
      expect(await names(page()).allInnerTexts()).toEqual(['Saturday almond']);
      await panel.getByRole('button', { name: 'Make this batch' }).click();
      await expect.poll(() => names(page()).allInnerTexts()).toEqual(['Saturday almond', 'Friday almonds']);
      await openPart(page(), 'Steps');
      expect(await page().getByRole('region', { name: 'Steps for Friday almonds' }).isVisible()).toBe(true);
      const amounts = await page()
        .getByRole('gridcell', { name: /^Weight as bought/ })
        .allInnerTexts();
      expect(amounts.at(-1)).toContain('197');
      await page().getByRole('button', { name: /^Undo/ }).click();
      await expect.poll(() => names(page()).allInnerTexts()).toEqual(['Saturday almond']);
    });

    test('is swapped to honey at equal fermentable sugar before it is made', async () => {
      const panel = await paste(page(), recipe);
      await panel.getByText('Swap its sweetener first').click();
      await panel.getByRole('button', { name: 'Use Honey' }).click();
      // 18 g of cane sugar hold 18 × 0.998 × 1.05263 = 18.91 g of hexose; honey holds 0.8224 g per g.
      expect(await said(panel.getByRole('region', { name: 'The batch this makes' }))).toContain('22.99 g');
      await panel.getByRole('button', { name: 'Make this batch' }).click();
      await expect.poll(() => names(page()).count()).toBe(2);
      await showAllFigures(page());
      const equal = await page()
        .getByRole('gridcell', { name: /^The same as cane sugar/ })
        .allInnerTexts();
      expect(equal.at(-1)).toMatch(/18\sg/);
    });

    test('is on paper', async () => {
      const panel = await paste(page(), recipe);
      await panel.getByRole('button', { name: 'Make this batch' }).click();
      await expect.poll(() => names(page()).count()).toBe(2);
      await page().emulateMedia({ media: 'print' });
      await page().getByRole('article', { name: 'Card of Friday almonds' }).waitFor();
      expect(await panel.isVisible()).toBe(false);
    });
  });

  describe('swapped on the sheet', () => {
    test('holds the same fermentable sugar in honey, and half and half', async () => {
      await showAllFigures(page());
      await choose(page(), 'Kind of sweetener', 'Cane sugar, white');
      await typeInto(page(), 'Sweetener to add', '18 g');
      const before = await readNumber(page(), 'The same as cane sugar');
      const panel = await open(page(), 'Swap', 'Swap the sweetener');
      await panel.getByRole('combobox', { name: /^Blend cane sugar, white with/ }).selectOption({ label: 'Honey' });
      await panel.getByRole('button', { name: 'Blend', exact: true }).click();
      // 18.91 g of hexose ÷ (0.5 × 0.8224 + 0.5 × 1.0505) = 20.19 g.
      await expect.poll(() => readNumber(page(), 'Sweetener to add')).toBeCloseTo(20, 0);
      expect(await readNumber(page(), 'The same as cane sugar')).toBe(before);
      await panel.getByRole('button', { name: 'Use Maple syrup' }).click();
      // 18.91 ÷ 0.6351 = 29.77 g.
      await expect.poll(() => readNumber(page(), 'Sweetener to add')).toBe(30);
      expect(await readNumber(page(), 'The same as cane sugar')).toBe(before);
      await page().getByRole('button', { name: /^Undo/ }).click();
      await page().getByRole('button', { name: /^Undo/ }).click();
      await expect.poll(() => readNumber(page(), 'Sweetener to add')).toBe(18);
    });
  });

  describe('written out again', () => {
    test('is in grams, in scoops, and for another jar', async () => {
      await choose(page(), 'Nut, seed or coconut', 'Almonds, whole');
      await typeInto(page(), 'Weight as bought', '1 cup');
      await openPart(page(), 'Recipe');
      const panel = page().getByRole('region', { name: /as a recipe$/ });
      expect(await written(panel)).toMatch(/^- 143 g almonds$/m);
      await panel.getByRole('radio', { name: 'for my spoons and cups' }).check();
      expect(await written(panel)).toMatch(/^- 1 cup almonds$/m);
      await findCell(page(), 'Weight as bought').click();
      await page().keyboard.press('Delete');
      const quart = await written(panel);
      await choose(page(), 'Kind of jar', 'Two-litre jar');
      await expect.poll(() => written(panel)).toMatch(/two-litre jar/);
      expect(await written(panel)).not.toBe(quart);
    });
  });
});

describeInBrowser('a kitchen of one’s own', () => {
  const page = visitEach();

  test('tells a packed cup of brown sugar from an unpacked one', async () => {
    const panel = await open(page(), 'Swap', 'Cups to grams, any food');
    await panel.getByRole('combobox', { name: 'Food' }).selectOption({ label: 'Brown sugar' });
    for (const [packing, grams] of [
      ['packed', '220 g'],
      ['unpacked', '145 g'],
    ] as const) {
      await panel.getByRole('combobox', { name: 'Cut or packing' }).selectOption({ label: packing });
      await expect.poll(() => said(panel.getByRole('status'))).toContain(`is ${grams}`);
    }
    expect(await said(panel.getByRole('status'))).toContain('record 19334');
  });

  test('weighs a cup once, uses it in a recipe, and has it still after a reload', async () => {
    const panel = await open(page(), 'Swap', 'Cups to grams, any food');
    await panel.getByText('Weigh a cup once and keep it').click();
    await panel.getByRole('textbox', { name: 'Name of the food' }).fill('Sprouted oats');
    await panel.getByRole('textbox', { name: 'It weighs' }).fill('90 g');
    await panel.getByRole('button', { name: 'Keep', exact: true }).click();
    await expect.poll(() => said(panel.getByRole('status'))).toMatch(/is 90 g.*Yours, measured/);
    await page().reload();
    const pasted = await paste(page(), '2 cups sprouted oats');
    expect(await unfolded(line(pasted, '2 cups sprouted oats'))).toMatch(/180 g.*Yours, measured/);
  });

  test('shows every amount as its scale can, and states the worst error', async () => {
    await typeInto(page(), 'Weight as bought', '143 g');
    await typeInto(page(), 'Culture to add', '42 g');
    await openPart(page(), 'Kitchen');
    await page().getByText('Spoons and cups', { exact: true }).click();
    await page().getByRole('radio', { name: '5 g', exact: true }).check();
    expect(await readCell(page(), 'Weight as bought')).toMatch(/145 g/);
    expect(await readCell(page(), 'Culture to add')).toMatch(/40 g/);
    await openPart(page(), 'Steps');
    const steps = page().getByRole('region', { name: /^Steps for/ });
    expect(await said(steps)).toMatch(/Measured with this scale, a ratio is at most [\d.]+% off/);
    await page().getByRole('radio', { name: 'US', exact: true }).check();
    expect(await said(steps)).toMatch(/Measured with these scoops, a ratio is at most [\d.]+% off/);
  });
});
