import type { Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { demo, startBatch } from '../../src/batch/demo';
import { earlierKey as key } from '../../src/batch/storage';
import type { RowId } from '../../src/formula/order';
import { describeInBrowser } from './chromium';
import { noFaults, type OpenedPage, openPage, type Visit, type VisitOptions } from './page';

describeInBrowser('batches side by side', () => {
  let opened: OpenedPage;
  let visit: Visit;
  let page: Page;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  async function open(options: VisitOptions = {}): Promise<void> {
    visit = await opened.visit({ viewport: { width: 1280, height: 900 }, ...options });
    page = visit.page;
    await page.getByRole('heading', { name: 'Take care' }).waitFor();
  }

  beforeEach(() => open());

  afterEach(async () => {
    expect(visit.faults).toEqual(noFaults);
    await visit.close();
  });

  const cell = (row: RowId, batch = 'b1'): Locator => page.locator(`[data-quantity="${row}"][data-batch="${batch}"]`);
  const plain = (text: string): string => text.replaceAll(/[\s\u00A0\u202F]+/g, ' ');
  // biome-ignore lint/performance/useDomNodeTextContent: what is hidden from sight must not count as shown.
  const read = async (place: Locator): Promise<string> => plain(await place.innerText());
  const expectShown = (place: Locator, text: string | RegExp) => expect.poll(() => read(place)).toMatch(text);
  const button = (name: string | RegExp): Locator => page.getByRole('button', { name });
  const undo = (): Promise<void> => button(/^Undo/).click();
  const press = (keys: string): Promise<void> => page.keyboard.press(keys);
  const heads = (): Promise<string[]> => page.getByRole('columnheader').getByRole('heading').allTextContents();

  async function type(row: RowId, text: string, batch = 'b1'): Promise<void> {
    await cell(row, batch).click({ position: { x: 5, y: 5 } });
    await page.keyboard.type(text);
    await press('Enter');
    await expect.poll(() => page.getByRole('grid').getByRole('textbox').count()).toBe(0);
  }

  describe('what does not fit together', () => {
    beforeEach(async () => {
      await type('sourceMass', '200 g');
      await type('blendWater', '800 mL');
      await type('milkVolume', '500 mL');
    });

    test('is named, both rows and by how much, and what was typed stays', async () => {
      await expectShown(
        cell('milkVolume'),
        /You typed 500 mL.*“Weight as bought” and “Water to blend” make it \d+ mL.*\d+ % apart/,
      );
      await cell('milkVolume').click({ position: { x: 5, y: 5 } });
      await press('F2');
      expect(await page.getByRole('grid').getByRole('textbox').inputValue()).toBe('500 mL');
      await press('Escape');
    });

    test.each<[string, RowId]>([
      ['Milk after straining', 'milkVolume'],
      ['Weight as bought', 'sourceMass'],
      ['Water to blend', 'blendWater'],
    ])('is mended by letting “%s” go, and undo brings it back', async (label, row) => {
      await cell('milkVolume')
        .getByRole('button', { name: `Clear “${label}”` })
        .click();
      await expect.poll(() => read(cell('milkVolume'))).not.toContain('apart');
      await expect.poll(() => cell(row).locator('.given').count()).toBe(0);
      await undo();
      await expectShown(cell('milkVolume'), 'apart');
    });
  });

  test.each<[RegExp, () => Promise<void>]>([
    [/^Use 2 jars$/, () => expectShown(cell('vesselCount'), /^2/)],
    [
      /^Take “Half-gallon/,
      () => expect.poll(() => cell('vessel').getByRole('combobox').inputValue()).toBe('halfGallon'),
    ],
    [/^Clear “Weight as bought”$/, () => expect.poll(() => cell('sourceMass').locator('.given').count()).toBe(0)],
  ])('milk over the brim is given its room: %s', async (way, isDone) => {
    await type('sourceMass', '300 g');
    await type('vesselCount', '1');
    await expectShown(cell('headspaceVolume'), 'run over');
    await cell('headspaceVolume').getByRole('button', { name: way }).click();
    await expect.poll(() => read(cell('headspaceVolume'))).not.toContain('run over');
    await isDone();
  });

  test('what is on hand makes the largest batch, and what limits it is named', async () => {
    await page.getByRole('textbox', { name: 'On hand: Almonds, whole' }).fill('1 kg');
    await page.getByRole('textbox', { name: 'On hand: Water kefir grains' }).fill('30 g');
    await press('Enter');
    const region = page.getByRole('region', { name: /^On hand for/ });
    await expectShown(region, 'limited by the water kefir grains');
    await button('Make this batch').click();
    await expectShown(cell('grainMass'), /^30 g/);
    await cell('grainMass').click({ position: { x: 5, y: 5 } });
    await press('Delete');
    await type('sourceMass', '2 kg');
    await expectShown(cell('sourceMass'), /You have 1 kg, and this batch takes 2000 g/);
    await cell('sourceMass').getByRole('button', { name: 'Make the largest batch from 1 kg' }).click();
    await expect.poll(() => read(cell('sourceMass'))).not.toContain('You have');
    await expectShown(cell('grainMass'), 'You have 30 g');
    await cell('grainMass').getByRole('button', { name: 'Forget the grains on hand' }).click();
    await expect.poll(() => read(cell('grainMass'))).not.toContain('You have');
  });

  test('batches are added, copied, renamed, moved and removed, and undo takes each back', async () => {
    await type('sourceMass', '200 g');
    const tool = async (of: string, name: string) => {
      const head = page.getByRole('columnheader').filter({ has: page.getByRole('heading', { name: of, exact: true }) });
      if (!(await head.getByRole('button', { name }).isVisible())) await head.locator('summary').click();
      await head.getByRole('button', { name }).click();
    };
    await button('Add a batch').click();
    await expect.poll(heads).toEqual(['Saturday almond', 'Batch 2']);
    await tool('Saturday almond', 'Copy');
    await expect.poll(heads).toEqual(['Saturday almond', 'Saturday almond, copy', 'Batch 2']);
    await expectShown(cell('sourceMass', 'b3'), '200 g');
    await tool('Batch 2', 'Rename');
    await page.keyboard.type('Sunday hemp');
    await press('Enter');
    await expect.poll(heads).toEqual(['Saturday almond', 'Saturday almond, copy', 'Sunday hemp']);
    await tool('Sunday hemp', 'Move left');
    await expect.poll(heads).toEqual(['Saturday almond', 'Sunday hemp', 'Saturday almond, copy']);
    await tool('Sunday hemp', 'Remove');
    await expect.poll(heads).toEqual(['Saturday almond', 'Saturday almond, copy']);
    for (const names of [
      ['Saturday almond', 'Sunday hemp', 'Saturday almond, copy'],
      ['Saturday almond', 'Saturday almond, copy', 'Sunday hemp'],
      ['Saturday almond', 'Saturday almond, copy', 'Batch 2'],
      ['Saturday almond', 'Batch 2'],
      ['Saturday almond'],
    ]) {
      await undo();
      await expect.poll(heads).toEqual(names);
    }
  });

  describe('two batches', () => {
    beforeEach(async () => {
      await type('milkVolume', '1 L');
      await button('Add a batch').click();
      await type('milkVolume', '500 mL', 'b2');
    });

    test('are compared by difference and per cent', async () => {
      await page.getByRole('combobox', { name: 'Compare with' }).selectOption({ label: 'Saturday almond' });
      await expectShown(cell('milkVolume', 'b2'), '−500 mL, −50 %');
      await expect.poll(() => cell('milkVolume').locator('.compared').count()).toBe(0);
    });

    test('can show only the rows that differ', async () => {
      await page.getByRole('checkbox', { name: 'Only rows that differ' }).check();
      await expect.poll(() => cell('waterRatio').count()).toBe(0);
      expect(await cell('sourceMass').count()).toBe(1);
      await page.getByRole('checkbox', { name: 'Only rows that differ' }).uncheck();
      await expect.poll(() => cell('waterRatio').count()).toBe(1);
    });

    test('are selected in a range with Shift, which Delete clears in one step', async () => {
      await cell('blenderLoads').click({ position: { x: 5, y: 5 } });
      for (const key of ['Shift+ArrowDown', 'Shift+ArrowDown', 'Shift+ArrowRight']) await press(key);
      const picked = () =>
        page
          .locator('[aria-selected="true"]')
          .evaluateAll((all) => all.map((one) => one.getAttribute('data-quantity')));
      await expect
        .poll(picked)
        .toEqual(['blenderLoads', 'blenderLoads', 'pulpMass', 'pulpMass', 'milkVolume', 'milkVolume']);
      await press('Delete');
      await expect.poll(() => page.locator('.given').count()).toBe(0);
      expect(await read(button(/^Undo/))).toContain('Clear the selected cells');
      await undo();
      await expectShown(cell('milkVolume'), /^1000 mL typed as 1 L/);
      await expectShown(cell('milkVolume', 'b2'), /^500 mL/);
    });
  });

  test('a range is copied as tab-separated text, and a pasted one is typed, but for what can’t be read', async () => {
    await visit.context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await type('sourceMass', '200 g');
    await button('Add a batch').click();
    await type('sourceMass', '8 oz', 'b2');
    await cell('source').click({ position: { x: 5, y: 5 } });
    await cell('source').focus();
    await press('Shift+ArrowDown');
    await press('Shift+ArrowRight');
    await press('Control+c');
    await expectShown(page.locator('.notice'), 'Copied 2 rows of 2 batches.');
    const copied = 'Almonds, whole\tAlmonds, whole\n200 g\t8 oz';
    expect((await page.evaluate(() => navigator.clipboard.readText())).replaceAll('\r', '')).toBe(copied);
    await page.evaluate(() => navigator.clipboard.writeText('cashews\tSawdust\n250 g\tsome\n1 L\t'));
    await press('Control+v');
    await expectShown(
      page.locator('.notice'),
      /^Pasted into 3 cells. Not taken: “Sawdust” is not on the menu there \(“Nut, seed or coconut”, Batch 2\); “some” can’t be read there/,
    );
    await expectShown(cell('sourceMass'), /^250 g/);
    await expectShown(cell('soakWater'), /^1000 mL typed as 1 L/);
    await expectShown(cell('sourceMass', 'b2'), /^227 g/);
    expect(await cell('source').getByRole('combobox').inputValue()).toBe('cashew');
    expect(await read(button(/^Undo/))).toContain('Paste 3 cells');
    await undo();
    await expectShown(cell('sourceMass'), /^200 g/);
  });

  describe('a hundred batches', () => {
    const names = Array.from({ length: 100 }, (_, at) => startBatch(`b${at + 1}`, `Batch ${at + 1}`));
    const columns = () => page.getByRole('columnheader').getByRole('heading').count();

    beforeEach(async () => {
      await page.evaluate(([at, text]) => localStorage.setItem(at, text), [
        key,
        JSON.stringify({ ...demo, batches: names }),
      ] as const);
      await page.reload();
      await page.getByRole('heading', { name: 'Take care' }).waitFor();
    });

    test('are drawn as far as they are seen, and counted as far as they go', async () => {
      await expect.poll(columns).toBeLessThan(10);
      expect(await page.getByRole('grid').getAttribute('aria-colcount')).toBe('101');
      expect(await cell('sourceMass').getAttribute('aria-colindex')).toBe('2');
      const frame = page.locator('.sheet-frame');
      await frame.evaluate((one) => one.scrollTo({ left: one.scrollWidth / 2, behavior: 'instant' }));
      await expect.poll(() => cell('sourceMass', 'b50').count()).toBe(1);
      expect(await cell('sourceMass', 'b50').getAttribute('aria-colindex')).toBe('51');
      expect(await columns()).toBeLessThan(10);
    });

    test('are gone through to the last, which is shown and typed into', async () => {
      await cell('sourceMass').click({ position: { x: 5, y: 5 } });
      await press('End');
      const last = cell('sourceMass', 'b100');
      await expect.poll(() => last.evaluate((one) => one === document.activeElement).catch(() => false)).toBe(true);
      const [box, frame] = await Promise.all([last.boundingBox(), page.locator('.sheet-frame').boundingBox()]);
      if (box === null || frame === null) throw new Error('the last batch is not laid out');
      expect(box.x).toBeGreaterThanOrEqual(frame.x);
      expect(box.x + box.width).toBeLessThanOrEqual(frame.x + frame.width + 1);
      expect(await last.getAttribute('aria-colindex')).toBe('101');
      await page.keyboard.type('123 g');
      await press('Enter');
      await expectShown(last, /^123 g/);
      await press('Home');
      await expect
        .poll(() =>
          cell('sourceMass')
            .evaluate((one) => one === document.activeElement)
            .catch(() => false),
        )
        .toBe(true);
      expect(await columns()).toBeLessThan(10);
    });
  });

  test('a telephone shows one batch at a time, with its chooser', async () => {
    await visit.close();
    await open({ viewport: { width: 390, height: 844 } });
    await button('Add a batch').click();
    await expect.poll(heads).toEqual(['Batch 2']);
    await page.getByRole('combobox', { name: 'Batch', exact: true }).selectOption({ label: 'Saturday almond' });
    await expect.poll(heads).toEqual(['Saturday almond']);
    expect(await cell('sourceMass', 'b2').count()).toBe(0);
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
  });
});
