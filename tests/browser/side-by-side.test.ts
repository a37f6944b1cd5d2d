import type { Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { demo, startBatch } from '../../src/batch/document/demo';
import { earlierKey as key } from '../../src/batch/keeping/storage';
import type { RowId } from '../../src/formula/recipe/order';
import { describeInBrowser } from './chromium';
import { openPart, showAllFigures, waitForPage } from './open-part';
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
    await waitForPage(page);
    await showAllFigures(page);
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
  /** What is said under the line about a cell, and the buttons there. */
  const remarks = (row: RowId, batch = 'b1'): Locator => page.locator(`[id="remarks-${row}-${batch}"]`);
  const said = async (row: RowId, batch = 'b1'): Promise<string> =>
    (await remarks(row, batch).count()) === 0 ? '' : read(remarks(row, batch));
  const expectShown = (place: Locator, text: string | RegExp) => expect.poll(() => read(place)).toMatch(text);
  const button = (name: string | RegExp): Locator => page.getByRole('button', { name });
  const undo = (): Promise<void> => button(/^Undo/).click();
  const press = (keys: string): Promise<void> => page.keyboard.press(keys);
  const heads = (): Promise<string[]> => page.getByRole('columnheader').getByRole('heading').allTextContents();

  async function type(row: RowId, text: string, batch = 'b1'): Promise<void> {
    await cell(row, batch).click({ position: { x: 5, y: 5 } });
    await page.keyboard.type(text);
    await press('Enter');
    await expect.poll(() => page.getByRole('treegrid').getByRole('textbox').count()).toBe(0);
  }

  describe('what does not fit together', () => {
    beforeEach(async () => {
      await type('sourceMass', '200 g');
      await type('blendWater', '800 mL');
      await type('milkVolume', '500 mL');
    });

    test('is named, both rows and by how much, and what was typed stays', async () => {
      await expectShown(
        remarks('milkVolume'),
        /You typed 500 mL.*“Weight as bought” and “Water to blend” make it \d+ mL.*\d+ % apart/,
      );
      await cell('milkVolume').click({ position: { x: 5, y: 5 } });
      await press('F2');
      expect(await page.getByRole('treegrid').getByRole('textbox').inputValue()).toBe('500 mL');
      await press('Escape');
    });

    test.each<[string, RowId]>([
      ['Milk after straining', 'milkVolume'],
      ['Weight as bought', 'sourceMass'],
      ['Water to blend', 'blendWater'],
    ])('is mended by letting “%s” go, and undo brings it back', async (label, row) => {
      await remarks('milkVolume')
        .getByRole('button', { name: `Clear “${label}”` })
        .click();
      await expect.poll(() => said('milkVolume')).not.toContain('apart');
      await expect.poll(() => cell(row).locator('.given').count()).toBe(0);
      await undo();
      await expectShown(remarks('milkVolume'), 'apart');
    });
  });

  test.each<[RegExp, () => Promise<void>]>([
    [/^Use \d jars$/, () => expectShown(cell('vesselCount'), /^[23]/)],
    [
      /^Take “Half-gallon/,
      () => expect.poll(() => cell('vessel').getByRole('combobox').inputValue()).toBe('halfGallon'),
    ],
    [/^Clear “Weight as bought”$/, () => expect.poll(() => cell('sourceMass').locator('.given').count()).toBe(0)],
  ])('milk over the brim is given its room: %s', async (way, isDone) => {
    await type('sourceMass', '300 g');
    await type('vesselCount', '1');
    await expectShown(remarks('headspaceVolume'), 'run over');
    await remarks('headspaceVolume').getByRole('button', { name: way }).click();
    await expect.poll(() => said('headspaceVolume')).not.toContain('run over');
    await isDone();
  });

  test('what is on hand makes the largest batch, a batch of its own, and what limits it is named', async () => {
    await openPart(page, 'On hand');
    await page.getByRole('textbox', { name: 'On hand: Almonds, whole' }).fill('1 kg');
    await page.getByRole('textbox', { name: 'On hand: Water kefir grains' }).fill('30 g');
    await press('Enter');
    const region = page.getByRole('region', { name: /^On hand for/ });
    await expectShown(region, 'limited by the water kefir grains');
    await button('Make this batch').click();
    await expect.poll(heads).toEqual(['Saturday almond', 'Almonds']);
    await expectShown(cell('grainMass', 'b2'), /^30 g/);
    await expectShown(page.locator('.notice'), /Almonds: the largest batch; \d+ g almonds stay over/);
    await type('sourceMass', '2 kg');
    await expectShown(remarks('sourceMass'), /You have 1 kg, and this batch takes 2000 g/);
    await remarks('sourceMass').getByRole('button', { name: 'Make the largest batch from 1 kg' }).click();
    await expect.poll(() => said('sourceMass')).not.toContain('You have');
    await expectShown(remarks('grainMass'), 'You have 30 g');
    await remarks('grainMass').getByRole('button', { name: 'Forget the grains on hand' }).click();
    await expect.poll(() => said('grainMass')).not.toContain('You have');
  });

  test('batches are added, copied, renamed, moved and removed, and undo takes each back', async () => {
    await type('sourceMass', '200 g');
    const tool = async (of: string, name: string) => {
      const head = page.getByRole('columnheader').filter({ has: page.getByRole('heading', { name: of, exact: true }) });
      const deed = head.locator('details').getByRole('button', { name });
      if (!(await deed.isVisible())) await head.locator('summary').click();
      await deed.click();
    };
    await button('+ Batch').click();
    await expect.poll(heads).toEqual(['Saturday almond', 'Almonds']);
    await tool('Saturday almond', 'Copy');
    await expect.poll(heads).toEqual(['Saturday almond', 'Saturday almond, copy', 'Almonds']);
    await expectShown(cell('sourceMass', 'b3'), '200 g');
    await tool('Almonds', 'Rename');
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
      ['Saturday almond', 'Saturday almond, copy', 'Almonds'],
      ['Saturday almond', 'Almonds'],
      ['Saturday almond'],
    ]) {
      await undo();
      await expect.poll(heads).toEqual(names);
    }
  });

  describe('two batches', () => {
    beforeEach(async () => {
      await type('milkVolume', '1 L');
      await button('+ Batch').click();
      await type('milkVolume', '500 mL', 'b2');
    });

    test('are compared by difference and per cent', async () => {
      await page.getByRole('combobox', { name: 'Compare with' }).selectOption({ label: 'Saturday almond' });
      await expectShown(remarks('milkVolume', 'b2'), '−500 mL, −50 %');
      expect(await remarks('milkVolume').count()).toBe(0);
    });

    test('can show only the rows that differ', async () => {
      await page.getByRole('checkbox', { name: 'Only what differs' }).check();
      await expect.poll(() => cell('roomTemperature').count()).toBe(0);
      expect(await cell('sourceMass').count()).toBe(1);
      await page.getByRole('checkbox', { name: 'Only what differs' }).uncheck();
      await expect.poll(() => cell('roomTemperature').count()).toBe(1);
    });

    test('are selected in a range with Shift, which Delete clears in one step', async () => {
      await cell('blendWater').click({ position: { x: 5, y: 5 } });
      for (const key of [
        'Shift+ArrowDown',
        'Shift+ArrowDown',
        'Shift+ArrowRight',
        'Shift+ArrowRight',
        'Shift+ArrowRight',
      ])
        await press(key);
      const picked = () =>
        page
          .locator('[aria-selected="true"]')
          .evaluateAll((all) => all.map((one) => one.getAttribute('data-quantity')));
      await expect.poll(picked).toContain('milkVolume');
      expect(await picked()).toEqual(
        expect.arrayContaining(['blendWater', 'blenderLoads', 'milkSolids', 'milkVolume']),
      );
      await press('Delete');
      await expect.poll(() => page.locator('.given').count()).toBe(0);
      expect(await button(/^Undo/).getAttribute('title')).toContain('Clear the selected cells');
      await undo();
      await expectShown(cell('milkVolume'), /^1000 mL/);
      await expectShown(cell('milkVolume', 'b2'), /^500 mL/);
    });
  });

  test('a range is copied as tab-separated text, and a pasted one is typed, but for what can’t be read', async () => {
    await visit.context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await type('sourceMass', '200 g');
    await button('+ Batch').click();
    await type('sourceMass', '8 oz', 'b2');
    await cell('source').click({ position: { x: 5, y: 5 } });
    await cell('source').focus();
    for (const key of ['Shift+ArrowRight', 'Shift+ArrowRight', 'Shift+ArrowRight']) await press(key);
    await press('Control+c');
    await expectShown(page.locator('.notice'), 'Copied 2 rows of 2 batches.');
    const copied = 'Almonds, whole\tAlmonds, whole\n200 g\t8 oz';
    expect((await page.evaluate(() => navigator.clipboard.readText())).replaceAll('\r', '')).toBe(copied);
    await page.evaluate(() => navigator.clipboard.writeText('cashews\tSawdust\n250 g\tsome\n9 h\t'));
    await press('Control+v');
    await expectShown(
      page.locator('.notice'),
      /^Pasted into 3 cells. Not taken: “Sawdust” is not on the menu there \(“Nut, seed or coconut”, Almonds\); “some” can’t be read there/,
    );
    await expectShown(cell('sourceMass'), /^250 g/);
    await expectShown(cell('soakTime'), /^9 h/);
    await expectShown(cell('sourceMass', 'b2'), /^227 g/);
    expect(await cell('source').getByRole('combobox').inputValue()).toBe('cashew');
    expect(await button(/^Undo/).getAttribute('title')).toContain('Paste 3 cells');
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
      await waitForPage(page);
      await showAllFigures(page);
    });

    test('are drawn as far as they are seen, and counted as far as they go', async () => {
      await expect.poll(columns).toBeLessThan(10);
      expect(await page.getByRole('treegrid').getAttribute('aria-colcount')).toBe('201');
      expect(await cell('sourceMass').getAttribute('aria-colindex')).toBe('3');
      const frame = page.locator('.sheet-frame');
      await frame.evaluate((one) => one.scrollTo({ left: one.scrollWidth / 2, behavior: 'instant' }));
      await expect.poll(() => cell('sourceMass', 'b50').count()).toBe(1);
      expect(await cell('sourceMass', 'b50').getAttribute('aria-colindex')).toBe('101');
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
      expect(await last.getAttribute('aria-colindex')).toBe('201');
      await page.keyboard.type('123 g');
      await press('Enter');
      await expectShown(last, /^123 g/);
      await press('Home');
      await press('ArrowRight');
      await press('ArrowRight');
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

  test('a telephone shows one batch at a time, its neighbours a tap away', async () => {
    await visit.close();
    await open({ viewport: { width: 390, height: 844 } });
    await button('More').click();
    await button('+ Batch').click();
    await expect.poll(heads).toEqual(['Almonds']);
    await button('Batch before').click();
    await expect.poll(heads).toEqual(['Saturday almond']);
    expect(await cell('sourceMass', 'b2').count()).toBe(0);
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
  });
});
