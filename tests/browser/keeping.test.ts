import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { message, readRecords, waitForKept, waitForSheet } from './kept-page';
import { openPart, waitForPage } from './open-part';
import { noFaults, type OpenedPage, openPage, type Visit } from './page';
import { findCell, readCell, typeInto } from './sheet-page';

const source = 'Weight as bought';

describeInBrowser('a kept sheet', () => {
  let opened: OpenedPage;
  let visit: Visit;
  let page: Page;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  beforeEach(async () => {
    visit = await opened.visit({ viewport: { width: 1280, height: 900 } });
    page = visit.page;
    await waitForSheet(page);
    return async () => {
      expect(visit.faults).toEqual(noFaults);
      await visit.close();
    };
  });

  async function openAnother(): Promise<Page> {
    const other = await visit.context.newPage();
    await other.goto(opened.address);
    await waitForSheet(other);
    return other;
  }

  test('has each edit kept as it is made, under a revision of its own', async () => {
    for (const grams of [110, 120, 130]) {
      await typeInto(page, source, `${grams} g`);
      await waitForKept(page);
    }
    const { states } = await readRecords(page);
    expect(states.map(([revision]) => revision)).toEqual([1, 2, 3]);
    expect(states.map(([, text]) => String(text).includes('"130 g"'))).toEqual([false, false, true]);
  });

  test('offers its earlier states, and opens one again as one step', async () => {
    for (const grams of [110, 120, 130]) {
      await typeInto(page, source, `${grams} g`);
      await waitForKept(page);
    }
    await openPart(page, 'Paper');
    await page.locator('.kept > summary').click();
    const again = page.getByRole('button', { name: /^Open the sheet of .* again$/ });
    await expect.poll(() => again.count()).toBe(2);
    await again.last().click();
    await expect.poll(() => readCell(page, source)).toContain('110 g');
    await waitForKept(page);
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => readCell(page, source)).toContain('130 g');
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page
        .getByRole('button', { name: /^Download the sheet of/ })
        .first()
        .click(),
    ]);
    expect(file.suggestedFilename()).toMatch(/\.json$/);
  });

  test('is read in a second window, which follows the first and may take over', async () => {
    await typeInto(page, source, '110 g');
    await waitForKept(page);
    const other = await openAnother();
    expect(await message(other).textContent()).toContain('open in another window');
    expect(await readCell(other, source)).toContain('110 g');
    const shown = await readCell(other, source);
    await findCell(other, source).click();
    await other.keyboard.type('9 g');
    await other.keyboard.press('Enter');
    await other.keyboard.press('Delete');
    expect(await readCell(other, source)).toBe(shown);
    expect(await other.getByRole('combobox', { name: 'Kind of jar' }).isDisabled()).toBe(true);
    expect(await other.getByRole('radio', { name: 'US', exact: true }).isDisabled()).toBe(true);

    await typeInto(page, source, '120 g');
    await expect.poll(() => readCell(other, source)).toContain('120 g');

    // What is typed in the first and not committed yet goes along.
    await findCell(page, source).click();
    await page.keyboard.type('125 g');
    await other.getByRole('button', { name: 'Edit here instead' }).click();
    await expect.poll(() => message(other).count()).toBe(0);
    await expect.poll(() => readCell(other, source)).toContain('125 g');
    expect(await message(page).textContent()).toContain('open in another window');
    await typeInto(other, source, '130 g');
    await expect.poll(() => readCell(page, source)).toContain('130 g');

    await page.getByRole('button', { name: 'Edit here instead' }).click();
    await expect.poll(() => message(page).count()).toBe(0);
    await typeInto(page, source, '140 g');
    await expect.poll(() => readCell(other, source)).toContain('140 g');
    const { states, aside } = await readRecords(page);
    expect(states.at(-1)?.[0]).toBe(5);
    expect(aside).toEqual([]);
  });

  test('can be copied, shared and printed in a second window, but not opened over there', async () => {
    await typeInto(page, source, '110 g');
    await waitForKept(page);
    const other = await openAnother();
    await openPart(other, 'Paper');
    await other.locator('summary', { hasText: 'Save, open and share' }).click();
    const [copy] = await Promise.all([
      other.waitForEvent('download'),
      other
        .getByRole('region', { name: 'Save a copy' })
        .getByRole('button', { name: 'Save a copy', exact: true })
        .click(),
    ]);
    expect(copy.suggestedFilename()).toMatch(/^jarwright-.+\.json$/);
    const open = other.getByRole('region', { name: 'Open a file' });
    expect(await open.locator('input[type=file]').isDisabled()).toBe(true);
    expect(await other.getByRole('button', { name: 'Print this card' }).isDisabled()).toBe(false);
    await openPart(other, 'Plan');
    expect(await other.getByRole('button', { name: /^Start now/ }).isDisabled()).toBe(true);
    await openPart(other, 'Recipe');
    expect(await other.getByRole('button', { name: /^Copy/ }).first().isDisabled()).toBe(false);
    await findCell(other, source).click();
    await other.keyboard.type('9 g');
    expect(await other.getByRole('treegrid').getByRole('textbox').count()).toBe(0);
  });

  test('has what stands in an open cell kept when the page is left, which the browser asks about first', async () => {
    await findCell(page, source).click();
    await page.keyboard.type('199 g');
    const asked = page.waitForEvent('dialog');
    await page.evaluate(() => {
      setTimeout(() => location.reload());
    });
    const dialog = await asked;
    expect(dialog.type()).toBe('beforeunload');
    await dialog.dismiss();
    await waitForKept(page);
    await page.reload();
    await waitForSheet(page);
    expect(await readCell(page, source)).toContain('199 g');
  });

  test('takes a batch by link into a second window, once that edits, or leaves it', async () => {
    await openPart(page, 'Paper');
    await page.locator('summary', { hasText: 'Save, open and share' }).click();
    const box = page.getByRole('textbox', { name: 'Link to this batch' });
    await expect.poll(() => box.inputValue()).toContain('#batch=');
    const link = await box.inputValue();
    const other = await visit.context.newPage();
    await other.goto(link);
    const offer = other.getByRole('dialog', { name: 'A batch by link' });
    const add = offer.getByRole('button', { name: 'Add this batch' });
    await add.waitFor();
    await waitForKept(other);
    expect(await add.isDisabled()).toBe(true);
    await offer.getByRole('button', { name: 'Leave it' }).click();
    await expect.poll(() => offer.count()).toBe(0);
    await other.evaluate((address) => {
      location.hash = new URL(address).hash;
    }, link);
    await offer.getByRole('button', { name: 'Edit here instead' }).click();
    await expect.poll(() => add.isDisabled()).toBe(false);
    await add.click();
    await expect.poll(() => other.getByRole('heading', { name: /from link/ }).count()).toBeGreaterThan(0);
    await expect.poll(() => page.getByRole('heading', { name: /from link/ }).count()).toBeGreaterThan(0);
    expect((await readRecords(other)).aside).toEqual([]);
  });

  test('has what was typed before it was opened put aside, where another window has the sheet by then', async () => {
    // A worker would answer from what it has kept, and no part would be late.
    const slow = await opened.visit({ viewport: { width: 1280, height: 900 } });
    await waitForSheet(slow.page);
    await typeInto(slow.page, source, '110 g');
    await waitForKept(slow.page);
    const other = await slow.context.newPage();
    let letThrough = () => {};
    const held = new Promise<void>((resolve) => {
      letThrough = resolve;
    });
    await other.route('**/keep-sheet-*.js', async (route) => {
      await held;
      await route.continue();
    });
    // As a first visitor, who sees the first sheet and can type before what keeps it is there.
    await other.addInitScript(() => {
      IDBFactory.prototype.databases = () => Promise.resolve([]);
    });
    await other.goto(opened.address);
    await findCell(other, source).click();
    await other.keyboard.press('Enter');
    await other.getByRole('textbox', { name: source, exact: true }).fill('330 g');
    await other.keyboard.press('Enter');
    letThrough();
    await waitForSheet(other);
    await expect.poll(() => message(other).textContent()).toContain('put aside');
    expect(await readCell(other, source)).toContain('110 g');
    expect(JSON.stringify((await readRecords(slow.page)).aside)).toContain('330 g');
    expect(slow.faults).toEqual(noFaults);
    await slow.close();
  });

  test('goes to the window that is left when the other is closed', async () => {
    const other = await openAnother();
    const third = await openAnother();
    await third.getByRole('button', { name: 'Edit here instead' }).click();
    await expect.poll(() => message(third).count()).toBe(0);
    expect(await message(other).count()).toBe(1);
    await typeInto(third, source, '110 g');
    await waitForKept(third);
    await third.close();
    await page.close();
    await expect.poll(() => message(other).count()).toBe(0);
    await typeInto(other, source, '120 g');
    await waitForKept(other);
    expect(await readCell(other, source)).toContain('120 g');
  });

  test('is followed by a window that has no lock either, with nothing typed in it', async () => {
    await visit.context.addInitScript(() => Object.defineProperty(Navigator.prototype, 'locks', { value: undefined }));
    const one = await openAnother();
    const two = await openAnother();
    await typeInto(one, source, '110 g');
    await waitForKept(one);
    await expect.poll(() => readCell(two, source)).toContain('110 g');
    await typeInto(two, source, '220 g');
    await waitForKept(two);
    await expect.poll(() => readCell(one, source)).toContain('220 g');
    expect((await readRecords(page)).aside).toEqual([]);
  });

  test('is never overwritten by a window that has no lock and builds on an older revision', async () => {
    const { context } = visit;
    await context.addInitScript(() => {
      Object.defineProperty(Navigator.prototype, 'locks', { value: undefined });
      // A window that hears of what the other saved would have followed it.
      BroadcastChannel.prototype.postMessage = () => {};
    });
    const one = await openAnother();
    const two = await openAnother();
    await typeInto(one, source, '110 g');
    await waitForKept(one);
    await typeInto(two, source, '220 g');
    await message(two).waitFor();
    expect(await message(two).textContent()).toContain('put aside');
    await expect.poll(() => readCell(two, source)).toContain('110 g');
    const { states, aside } = await readRecords(page);
    expect(states.length).toBe(1);
    expect(String(states[0]?.[1])).toContain('110 g');
    expect(aside.length).toBe(1);
    expect(JSON.stringify(aside)).toContain('220 g');
    await two.getByRole('button', { name: 'Edit here instead' }).click();
    await expect.poll(() => findCell(two, source).count()).toBe(1);
    await typeInto(two, source, '230 g');
    await waitForKept(two);
    expect((await readRecords(page)).states.length).toBe(2);
  });
});

describeInBrowser('the content security policy', () => {
  let opened: OpenedPage;

  beforeAll(async () => {
    opened = await openPage({ base: '/shelf/' });
  });

  afterAll(() => opened?.close());

  test('is met by the whole page, and the page asks nobody else and sets no cookie', async () => {
    const { page, context, faults, close } = await opened.visit({ serviceWorkers: 'allow' });
    await context.addInitScript(() => {
      const broken: string[] = [];
      Reflect.set(window, 'broken', broken);
      document.addEventListener('securitypolicyviolation', (event) => {
        broken.push(`${event.violatedDirective} ${event.blockedURI}`);
      });
    });
    // What comes after the page would be broken off by the next visit, and told of as a fault.
    await waitForSheet(page);
    await page.waitForLoadState('networkidle');
    await page.goto(opened.address);
    await waitForSheet(page);
    await typeInto(page, source, '1 1/2 cups');
    await waitForKept(page);
    for (const tab of await page.getByRole('tab').all()) {
      await tab.click();
      await waitForPage(page);
      for (const fold of await page.getByRole('tabpanel').locator('details > summary:visible').all())
        await fold.click();
    }
    await page.waitForLoadState('networkidle');
    await page.reload();
    await waitForSheet(page);
    expect(await page.evaluate(() => Reflect.get(window, 'broken'))).toEqual([]);
    expect(faults).toEqual(noFaults);
    expect(await context.cookies()).toEqual([]);
    await close();
  });

  test('refuses script in the page, scripts and requests from elsewhere, forms and a new base', async () => {
    const { page, close } = await opened.visit({ serviceWorkers: 'allow' });
    const refused = await page.evaluate(async () => {
      const found = new Set<string>();
      document.addEventListener('securitypolicyviolation', ({ effectiveDirective }) => found.add(effectiveDirective));
      const add = (tag: string, attributes: Record<string, string>, text = '') => {
        const element = document.createElement(tag);
        for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
        element.textContent = text;
        document.body.append(element);
        return element;
      };
      add('script', {}, 'window.ran = true');
      add('script', { src: 'https://elsewhere.example/a.js' });
      add('style', {}, 'body { color: red }');
      add('img', { src: 'https://elsewhere.example/a.png' });
      add('iframe', { src: 'https://elsewhere.example/' });
      add('base', { href: 'https://elsewhere.example/' });
      add('button', { onclick: 'window.ran = true' }).click();
      await fetch('https://elsewhere.example/').catch(() => undefined);
      // Outside of the test's own evaluation, for which the browser lets code be made from text.
      setTimeout(() => Reflect.construct(Function, ['window.ran = true'])());
      // They are told of in any order, each a little later.
      for (let waited = 0; waited < 50 && found.size < 8; waited += 1) {
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
      return { found: [...found].sort(), ran: Reflect.get(window, 'ran') };
    });
    expect(refused).toEqual({
      found: [
        'base-uri',
        'connect-src',
        'frame-src',
        'img-src',
        'script-src',
        'script-src-attr',
        'script-src-elem',
        'style-src-elem',
      ],
      ran: undefined,
    });
    await close();
  });
});
