import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { openPart, waitForPage } from './open-part';
import { noFaults, type OpenedPage, openPage, type Visit, type VisitOptions } from './page';
import { screenshot } from './screenshots';

declare global {
  interface Window {
    readonly axe: typeof import('axe-core');
  }
}

const checker = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const desk = { viewport: { width: 1366, height: 768 } } as const;
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true } as const;

const packageOf = (page: Page, food: string) => page.getByRole('textbox', { name: `Package of ${food}`, exact: true });
const price = (page: Page, food: string) => page.getByRole('textbox', { name: `Price of that package of ${food}` });

/** Prices what the open batch takes: two fields each, and one of them as it stands. */
async function priceBatch(page: Page): Promise<void> {
  await packageOf(page, 'Almonds, whole').fill('500 g');
  await price(page, 'Almonds, whole').fill('9.90 €');
  await price(page, 'Cane sugar, white').fill('1.49');
  await page.keyboard.press('Enter');
}

/** What is seen of a piece of the page, each run of spaces as one. */
async function seen(piece: Locator): Promise<string> {
  // biome-ignore lint/performance/useDomNodeTextContent: what is hidden from sight must not count as shown.
  const text = await piece.innerText();
  return text.replaceAll(/[\u00A0\u202F\s]+/g, ' ');
}

/** Amounts of money in a text, in cents. */
function centsIn(text: string): readonly number[] {
  return [...text.matchAll(/(\d+)\.(\d\d) €/g)].map(([, whole, cents]) => Number(`${whole}${cents}`));
}

async function violations(page: Page): Promise<readonly string[]> {
  await page.evaluate(`${checker};0`);
  const found = await page.evaluate(() =>
    window.axe.run(document, {
      runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] },
    }),
  );
  expect(found.passes.map(({ id }) => id)).toContain('color-contrast');
  return found.violations
    .filter(({ id }) => id !== 'label-content-name-mismatch')
    .flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
}

async function findOverflow(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    return scrollWidth <= clientWidth ? [] : [`${scrollWidth} in ${clientWidth}`];
  });
}

describeInBrowser('what a batch costs', () => {
  let opened: OpenedPage;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  async function visit(options: VisitOptions, part: string): Promise<Visit> {
    const found = await opened.visit(options);
    await waitForPage(found.page);
    await openPart(found.page, part);
    return found;
  }

  test('is priced in a few presses, by the batch, the litre and the glass, to the cent', async () => {
    const { page, faults, close } = await visit(desk, 'Cost');
    await priceBatch(page);
    const region = page.getByRole('region', { name: 'Cost of Saturday almond' });
    await expect.poll(() => seen(region.locator('[role=status]'))).toMatch(/€ the batch/);
    const [batch = 0] = centsIn(await seen(page.getByRole('region', { name: 'Cost of Saturday almond' })));
    const parts = centsIn((await Promise.all((await region.locator('.price-cost').all()).map(seen))).join(' '));
    expect(parts).toHaveLength(2);
    expect(parts.reduce((sum, cents) => sum + cents, 0)).toBe(batch);
    await screenshot(page, 'cost-laptop');
    await page.getByRole('button', { name: /^Undo/ }).first().click();
    await expect.poll(() => seen(region.locator('[role=status]'))).toMatch(/so far/);
    expect(faults).toEqual(noFaults);
    await close();
  });

  test('is held against another source, and says what the pulp keeps', async () => {
    const { page, close } = await visit(desk, 'Cost');
    await priceBatch(page);
    await page.getByText('Other prices').click();
    await page.getByRole('combobox', { name: 'Another food' }).selectOption('source.coconutDried');
    await price(page, 'Coconut, dried').fill('6');
    await page.keyboard.press('Enter');
    const table = page.getByRole('table', { name: 'As much kefir of another source' });
    await expect.poll(() => table.getByRole('row').count()).toBe(3);
    expect(await seen(page.getByRole('region', { name: 'Cost of Saturday almond' }))).toMatch(
      /The pulp keeps about 32 %/,
    );
    await screenshot(page, 'cost-compared');
    await close();
  });

  test('refuses what is no price beside its field, and keeps what was typed', async () => {
    const { page, close } = await visit(desk, 'Cost');
    await price(page, 'Almonds, whole').fill('dear');
    await page.keyboard.press('Enter');
    await expect.poll(() => seen(page.getByRole('alert').first())).toContain('Type a price as a number');
    expect(await price(page, 'Almonds, whole').inputValue()).toBe('dear');
    await close();
  });

  test('leads to a shopping list on paper, by itself, on one page', async () => {
    const { page, context, close } = await visit(desk, 'Cost');
    await priceBatch(page);
    const list = page.getByRole('region', { name: 'Shopping list' });
    await expect.poll(() => list.getByRole('listitem').count()).toBe(2);
    await list.getByRole('checkbox', { name: /^Almonds, whole/ }).check();
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    await list.getByRole('button', { name: 'Print the list' }).click();
    await page.locator('[data-paper=shopping]').waitFor();
    await page.emulateMedia({ media: 'print' });
    const paper = await seen(page.locator('body'));
    expect(paper).toMatch(/^ ?Shopping list .*For Saturday almond Almonds, whole .*500 g.*Cane sugar, white.*Together/);
    expect(paper).not.toMatch(/Undo|Other prices|Copy it/);
    await screenshot(page, 'cost-paper');
    const pdf = await page.pdf({ format: 'A4' });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
    await page.emulateMedia({ media: 'screen' });
    await expect.poll(() => page.locator('.shopping-paper').count()).toBe(0);
    // The tick outlives a visit.
    const again = await context.newPage();
    await again.goto(page.url());
    await waitForPage(again);
    await openPart(again, 'Cost');
    expect(await again.getByRole('checkbox', { name: /^Almonds, whole/ }).isChecked()).toBe(true);
    await close();
  });

  test.each([
    ['a desk', desk, 'Cost', 'light'],
    ['a desk in the dark', desk, 'Cost', 'dark'],
    ['a phone', phone, 'Cost', 'light'],
    ['a narrow phone', { ...phone, viewport: { width: 320, height: 640 } }, 'Cost', 'light'],
    ['a desk', desk, 'Glass', 'light'],
    ['a phone', phone, 'Glass', 'dark'],
    ['a narrow phone', { ...phone, viewport: { width: 320, height: 640 } }, 'Glass', 'light'],
  ] as const)('breaks no rule of access on %s: %s %s', async (name, options, part, colorScheme) => {
    const { page, faults, close } = await visit({ ...options, colorScheme }, part);
    if (part === 'Cost') {
      await priceBatch(page);
      await price(page, 'Cane sugar, white').fill('dear');
      await page.keyboard.press('Enter');
      await page.getByRole('alert').waitFor();
      await page.getByText('Other prices').click();
    }
    expect(await violations(page)).toEqual([]);
    expect(await findOverflow(page)).toEqual([]);
    expect(faults).toEqual(noFaults);
    await screenshot(page, `${part}-${name}-${colorScheme}`.replaceAll(' ', '-'));
    await close();
  });
});
