import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { openPart, waitForPage } from './open-part';
import { readCell, typeInto } from './sheet-page';
import { visitEach } from './visit-each';

declare global {
  interface Window {
    readonly axe: typeof import('axe-core');
  }
}

const names = (page: Page) => page.getByRole('treegrid').getByRole('heading', { level: 2 });

async function openFiles(page: Page): Promise<void> {
  await openPart(page, 'Paper');
  await page.locator('summary', { hasText: 'Save, open and share' }).click();
  await page.getByRole('region', { name: 'Save a copy' }).waitFor();
}

/** Presses a button that saves a file, and gives its name and text. */
async function save(page: Page, button: string): Promise<{ readonly name: string; readonly text: string }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
}

async function choose(page: Page, text: string | Buffer): Promise<Locator> {
  const panel = page.getByRole('region', { name: 'Open a file' });
  const buffer = typeof text === 'string' ? Buffer.from(text) : text;
  await panel.locator('input[type=file]').setInputFiles({ name: 'copy.json', mimeType: 'application/json', buffer });
  return panel;
}

/** What a part of the page shows, every run of spaces one. */
async function said(part: Locator): Promise<string> {
  // biome-ignore lint/performance/useDomNodeTextContent: what is hidden from sight must not count as shown.
  return (await part.innerText()).replaceAll(/\s+/g, ' ');
}

async function startAfresh(page: Page): Promise<void> {
  await page.evaluate(async () => {
    localStorage.clear();
    for (const { name } of await indexedDB.databases()) if (name !== undefined) indexedDB.deleteDatabase(name);
  });
}

async function linkOf(page: Page): Promise<string> {
  const box = page.getByRole('textbox', { name: 'Link to this batch' });
  await expect.poll(() => box.inputValue()).toContain('#batch=');
  return box.inputValue();
}

async function rename(page: Page, name: string): Promise<void> {
  const file = await save(page, 'Save a copy');
  const panel = await choose(page, file.text.replace('Saturday almond', name));
  await panel.getByRole('button', { name: 'Replace' }).click();
}

describeInBrowser('files', () => {
  const page = visitEach();

  test('a copy saved here opens in an empty sheet with all that was typed', async () => {
    await typeInto(page(), 'Weight as bought', '1 1/2 cups');
    const milk = await readCell(page(), 'Milk after straining');
    await openFiles(page());
    const { name, text } = await save(page(), 'Save a copy');
    expect(name).toMatch(/^jarwright-\d{4}-\d\d-\d\d\.json$/);

    const other = await page().context().browser()?.newContext();
    const fresh = (await other?.newPage()) ?? expect.fail('no other visitor');
    await fresh.goto(page().url());
    await waitForPage(fresh);
    await openFiles(fresh);
    const panel = await choose(fresh, text);
    await panel.getByRole('region', { name: 'What it would change' }).waitFor();
    expect(await said(panel)).toContain('1 batch changed: Saturday almond');
    expect(await readCell(fresh, 'Milk after straining')).not.toBe(milk);
    await panel.getByRole('button', { name: 'Replace' }).click();
    expect(await readCell(fresh, 'Milk after straining')).toBe(milk);
    await fresh.getByRole('button', { name: /^Undo/ }).click();
    expect(await readCell(fresh, 'Milk after straining')).not.toBe(milk);
    await other?.close();
  });

  test('merging puts a batch that differs beside yours, and undo takes it back', async () => {
    await openFiles(page());
    const { text } = await save(page(), 'Save a copy');
    const panel = await choose(page(), text.replace('"almond"', '"hemp"'));
    await panel.getByRole('region', { name: 'What it would change' }).waitFor();
    expect(await said(panel)).toContain('1 batch added: Saturday almond (from file)');
    expect(await names(page()).allInnerTexts()).toEqual(['Saturday almond']);
    await panel.getByRole('button', { name: 'Merge' }).click();
    expect(await names(page()).allInnerTexts()).toEqual(['Saturday almond', 'Saturday almond (from file)']);
    await page()
      .getByRole('button', { name: /^Undo.*Merge a file/ })
      .click();
    expect(await names(page()).allInnerTexts()).toEqual(['Saturday almond']);
  });

  test('the same sheet again is said to change nothing, and can be left', async () => {
    await openFiles(page());
    const { text } = await save(page(), 'Save a copy');
    const panel = await choose(page(), text);
    await panel.getByRole('region', { name: 'What it would change' }).waitFor();
    expect(await said(panel)).toContain('It would change nothing.');
    expect(await panel.getByRole('button', { name: 'Merge' }).isDisabled()).toBe(true);
    await panel.getByRole('button', { name: 'Leave it' }).click();
    expect(await said(panel)).toContain('Nothing was changed.');
  });

  test('a damaged file says what is damaged, and gives the rest', async () => {
    await openFiles(page());
    const { text } = await save(page(), 'Save a copy');
    const data = JSON.parse(text);
    const [one] = data.batches;
    data.batches = [
      { ...one, id: 'b2', name: 'Sound' },
      { ...one, id: 'b3', name: '<img src=x onerror=alert(1)>', vessel: 'bucket' },
    ];
    const panel = await choose(page(), JSON.stringify(data));
    await panel.getByRole('region', { name: 'What it would change' }).waitFor();
    expect(await said(panel)).toContain('Batch 2 (“<img src=x onerror=alert(1)>”): Wrong in it: vessel.');
    expect(await said(panel)).toContain('1 batch added: Sound');
    expect(await page().locator('img').count()).toBe(0);
    await choose(page(), text.slice(0, 40));
    await expect.poll(() => said(panel)).toContain('There is no sheet in this file');
    await choose(page(), Buffer.alloc(10_000_001, 0x20));
    await expect.poll(() => said(panel)).toContain('larger than 10 MB');
    expect(await names(page()).allInnerTexts()).toEqual(['Saturday almond']);
  });

  test('a copy that has lost a quote, or its end, names what is gone, and keeps yours of it in replacing', async () => {
    await openFiles(page());
    const { text } = await save(page(), 'Save a copy');
    const data = JSON.parse(text);
    const [one] = data.batches;
    data.batches = ['One', 'Two', 'Three'].map((name, at) => ({ ...one, id: `b${at + 1}`, name }));
    const three = JSON.stringify(data, null, 2);
    const panel = await choose(page(), three.replace('"id": "b2"', '"id: "b2"'));
    await expect.poll(() => said(panel)).toContain('A part between “One” and “Three”');
    expect(await said(panel)).not.toContain('All of its parts can be read');
    await choose(page(), three.slice(0, three.indexOf('"settings"') + 20));
    await expect.poll(() => said(panel)).toContain('The log, or its end');
    expect(await said(panel)).toContain(
      'so yours stay: the log, own foods, jars of grains, cartons, prices, classes, blends.',
    );
    await panel.getByRole('button', { name: 'Replace' }).click();
    await expect.poll(() => said(panel)).toContain('Undo takes it back.');
    await page().getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => said(panel)).not.toContain('Undo takes it back.');
  });

  test('a file of far more than a sheet holds is refused in words, soon', async () => {
    await openFiles(page());
    const panel = await choose(page(), `{"version":2,"batches":[${'{},'.repeat(3_299_950)}{}]}`);
    await expect.poll(() => said(panel), { timeout: 15_000 }).toContain('There is more in it than any sheet holds.');
  });

  test('a file dropped on the panel is looked at too', async () => {
    await openFiles(page());
    const { text } = await save(page(), 'Save a copy');
    const panel = page().getByRole('region', { name: 'Open a file' });
    const data = await page().evaluateHandle((dropped) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([dropped], 'dropped.json', { type: 'application/json' }));
      return transfer;
    }, text);
    await panel.dispatchEvent('drop', { dataTransfer: data });
    await panel.getByRole('region', { name: 'What it would change' }).waitFor();
    expect(await said(panel)).toContain('dropped.json');
  });

  test('tables and recipe markup are saved, too', async () => {
    await openFiles(page());
    const table = await save(page(), 'Batches as CSV');
    expect(table.name).toMatch(/^jarwright-batches-.*\.csv$/);
    expect(table.text).toMatch(/^\uFEFFName,.*\r\nSaturday almond,/);
    const piece = await save(page(), 'Piece for a page (.html)');
    expect(piece.name).toMatch(/^Saturday almond-.*\.html$/);
    expect(piece.text).toContain('"@type": "Recipe"');
    expect(JSON.parse((await save(page(), 'By itself (.jsonld)')).text)['@type']).toBe('Recipe');
  });
});

const checker = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/** What breaks a rule in the panel or in what is offered, each with the element it is found at. */
async function findViolations(page: Page): Promise<readonly string[]> {
  // Not as a script of the page, which its content security policy would not run.
  await page.evaluate(`${readFileSync(checker, 'utf8')};0`);
  const { violations, passes } = await page.evaluate(() =>
    window.axe.run('.files, .link-offer', {
      runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'] },
    }),
  );
  expect(passes.map(({ id }) => id)).toContain('button-name');
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
}

/** Targets too low for a thumb, and whether the page is wider than its window. */
function findMisfits(): readonly string[] {
  const { scrollWidth, clientWidth } = document.documentElement;
  const low = [
    ...document.querySelectorAll(':is(.files, .link-offer) :is(button, summary, .link-box, label:has([type=radio]))'),
  ]
    .filter((target) => target.checkVisibility() && target.getBoundingClientRect().height < 43.9)
    .map((target) => target.outerHTML.slice(0, 100));
  return scrollWidth > clientWidth ? [`${scrollWidth} in ${clientWidth}`, ...low] : low;
}

describeInBrowser('files and links for everyone', () => {
  const page = visitEach();

  test.each(['light', 'dark'] as const)('keep to WCAG and fit 320 px, on a %s screen', async (colorScheme) => {
    await page().emulateMedia({ colorScheme });
    await page().setViewportSize({ width: 320, height: 640 });
    await openFiles(page());
    const { text } = await save(page(), 'Save a copy');
    await choose(page(), text.replace('"almond"', '"hemp"').replace('"metric"', '"us"'));
    await page().getByRole('region', { name: 'What it would change' }).waitFor();
    const link = await linkOf(page());
    expect(await findViolations(page())).toEqual([]);
    expect(await page().evaluate(findMisfits)).toEqual([]);
    await page().getByRole('textbox', { name: 'A link to a batch' }).fill(link);
    await page().getByRole('button', { name: 'Look at it' }).click();
    await page().getByRole('button', { name: 'Add this batch' }).waitFor();
    expect(await findViolations(page())).toEqual([]);
    expect(await page().evaluate(findMisfits)).toEqual([]);
  });
});

describeInBrowser('a link', () => {
  const page = visitEach();
  const offer = () => page().getByRole('dialog', { name: 'A batch by link' });

  test('opens the batch as a new one, once it is added, and then goes from the address', async () => {
    await typeInto(page(), 'Weight as bought', '222 g');
    await openFiles(page());
    const link = await linkOf(page());
    await startAfresh(page());
    await page().goto('about:blank');
    await page().goto(link);
    await offer().getByRole('button', { name: 'Add this batch' }).waitFor();
    expect(await said(offer())).toContain('Weight as bought: 222 g');
    const before = await names(page()).allInnerTexts();
    expect(before).toHaveLength(1);
    await page().keyboard.press('Enter');
    expect(await names(page()).allInnerTexts()).toEqual(before);
    await page().keyboard.press('Tab');
    await page().keyboard.press('Enter');
    await expect.poll(() => names(page()).count()).toBe(2);
    expect((await names(page()).allInnerTexts())[0]).toBe(before[0]);
    await expect.poll(() => page().evaluate(() => location.hash)).toBe('');
    expect(await offer().count()).toBe(0);
    await page()
      .getByRole('button', { name: /^Undo.*from a link/ })
      .click();
    expect(await names(page()).allInnerTexts()).toEqual(before);
  });

  test('that is left, or closed by Escape, changes nothing and goes from the address', async () => {
    await openFiles(page());
    const link = await linkOf(page());
    for (const leave of [
      () => offer().getByRole('button', { name: 'Leave it' }).click(),
      () => page().keyboard.press('Escape'),
    ]) {
      await page().evaluate((address) => {
        location.hash = new URL(address).hash;
      }, link);
      await offer().getByRole('button', { name: 'Add this batch' }).waitFor();
      await leave();
      await expect.poll(() => offer().count()).toBe(0);
      await expect.poll(() => page().evaluate(() => location.hash)).toBe('');
    }
    expect(await names(page()).count()).toBe(1);
  });

  test('pasted into the page is offered as well; a damaged one says so', async () => {
    await openFiles(page());
    const link = await linkOf(page());
    const box = page().getByRole('textbox', { name: 'A link to a batch' });
    await box.fill(`Try this ${link}`);
    await page().getByRole('button', { name: 'Look at it' }).click();
    await offer().getByRole('button', { name: 'Add this batch' }).click();
    await expect.poll(() => names(page()).allInnerTexts()).toEqual(['Saturday almond', 'Saturday almond (from link)']);
    await openFiles(page());
    await box.fill(link.slice(0, -20));
    await page().getByRole('button', { name: 'Look at it' }).click();
    await expect.poll(() => said(offer())).toContain('damaged or not whole');
    await offer().getByRole('button', { name: 'Close' }).click();
    await expect.poll(() => offer().count()).toBe(0);
  });

  test('has a picture, on screen and on the printed card', async () => {
    await openFiles(page());
    await linkOf(page());
    const picture = page().getByRole('img', { name: 'QR picture of the link to Saturday almond' });
    await picture.waitFor();
    await page().locator('summary', { hasText: 'Save, open and share' }).click();
    await expect.poll(() => picture.count()).toBe(0);
    await page().emulateMedia({ media: 'print' });
    await picture.waitFor();
    const { width, height } = (await picture.boundingBox()) ?? expect.fail('no picture');
    // 40 mm at 96 pixels an inch.
    expect([width, height].map(Math.round)).toEqual([151, 151]);
  });

  test('with tags and bidi controls in its name shows them as text', async () => {
    await openFiles(page());
    await rename(page(), '<b onclick=alert(1)>\\u202Egnp.exe');
    await expect.poll(() => names(page()).allInnerTexts()).toEqual(['<b onclick=alert(1)>\u202Egnp.exe']);
    const link = await linkOf(page());
    await page().evaluate((address) => {
      location.hash = new URL(address).hash;
    }, link);
    await offer().getByRole('button', { name: 'Add this batch' }).waitFor();
    expect(await said(offer())).toContain('<b onclick=alert(1)>');
    expect(await page().locator('b[onclick]').count()).toBe(0);
    const isolated = await offer()
      .locator('h2 bdi')
      .evaluate((part) => getComputedStyle(part).unicodeBidi);
    expect(isolated).toBe('isolate');
  });
});
