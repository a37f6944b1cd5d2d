import type { Locator, Page } from 'playwright-core';
import { beforeEach, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { openPart } from './open-part';
import { screenshot } from './screenshots';
import { choose, readCell } from './sheet-page';
import { visitEach } from './visit-each';

describeInBrowser('the log', () => {
  let page: Page;
  let log: Locator;
  const current = visitEach();
  const ready = () => readCell(page, 'Ready to taste after');

  beforeEach(async () => {
    page = current();
    await openPart(page, 'Log');
    log = page.getByRole('region', { name: /^Log of/ });
  });

  async function logReady(day: string): Promise<void> {
    await log.getByRole('radio', { name: 'Ready', exact: true }).check();
    await log.getByLabel('Hours since the grains went in').fill('9 h');
    await log.getByLabel('When you looked').fill(`${day}T08:00`);
    await log.getByRole('button', { name: 'Save' }).click();
    await log.getByText(/^Saved: Ready after 9/).waitFor();
  }

  test('moves the ready time with every batch that was ready sooner, and undo brings it back', async () => {
    const shown = [await ready()];
    for (const [made, day] of ['2026-01-10', '2026-01-12', '2026-01-14'].entries()) {
      await logReady(day);
      await log.getByText(made === 0 ? 'From 1 batch:' : `From ${made + 1} batches:`).waitFor();
      shown.push(await ready());
    }
    await screenshot(page, 'log');
    expect(new Set(shown).size).toBeGreaterThan(2);
    const hours = shown.map((text) => Number(/\d+(\.\d+)?/.exec(text)?.[0]));
    expect(hours).toEqual([...hours].sort((one, other) => other - one));
    for (const before of shown.slice(0, -1).reverse()) {
      await page.getByRole('button', { name: /^Undo/ }).click();
      await expect.poll(ready).toBe(before);
    }
    await log.getByText('Nothing yet.').waitFor();
  });

  test('is filled in by keyboard alone, and tells what it can’t read beside the field', async () => {
    await log.getByRole('radio', { name: 'Not sour yet' }).focus();
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => log.getByRole('radio', { name: 'Ready', exact: true }).isChecked()).toBe(true);
    // Past the question since when it has been ready.
    await page.keyboard.press('Tab');
    await page.keyboard.press('Tab');
    await page.keyboard.type('a night');
    await page.keyboard.press('Enter');
    const hours = log.getByLabel('Hours since the grains went in');
    await expect.poll(() => hours.getAttribute('aria-invalid')).toBe('true');
    expect(await hours.inputValue()).toBe('a night');
    await hours.fill('13:30');
    await hours.press('Enter');
    await log.getByText(/^Saved: Ready after 13.5/).waitFor();
  });

  test('lets a carton be waited for up to a stop, and a homemade milk not', async () => {
    await log.getByText('before 24 h are over').waitFor();
    await choose(page, 'Nut, seed or coconut', 'Carton, unsweetened');
    await log.getByRole('checkbox', { name: 'A heat-treated carton, opened for this batch' }).check();
    await log.getByText('Day 3: taste it and measure the pH.').waitFor();
    await log.getByRole('radio', { name: 'Just looked' }).check();
    await log.getByLabel('Hours since the grains went in').fill('74 h');
    await log.getByLabel('pH', { exact: true }).fill('5.1');
    await log.getByRole('button', { name: 'Save' }).click();
    await log.getByText('It did not reach pH 4.6 within 3 days: throw it out.').waitFor();
  });

  test('of a carton that stays flat leaves the time of a homemade milk as it is', async () => {
    const before = await ready();
    await choose(page, 'Nut, seed or coconut', 'Carton, unsweetened');
    for (const hours of ['24 h', '71 h']) {
      await log.getByRole('radio', { name: 'Not sour yet' }).check();
      await log.getByLabel('Hours since the grains went in').fill(hours);
      await log.getByRole('button', { name: 'Save' }).click();
      await log.getByText(new RegExp(`^Saved: Not sour yet after ${hours.replace(' ', '\\s')}`)).waitFor();
    }
    await log.getByText('A carton does not: some never turn.').waitFor();
    await choose(page, 'Nut, seed or coconut', 'Almonds, whole');
    expect(await ready()).toBe(before);
  });

  test('says what to change after three results, and makes that batch in one press', async () => {
    for (const [day, hours] of [
      ['2026-01-10', '18 h'],
      ['2026-01-12', '20 h'],
      ['2026-01-14', '22 h'],
    ] as const) {
      await log.getByRole('radio', { name: 'Not sour yet' }).check();
      await log.getByLabel('Hours since the grains went in').fill(hours);
      await log.getByLabel('When you looked').fill(`${day}T08:00`);
      await log.getByRole('button', { name: 'Save' }).click();
      await log.getByText(new RegExp(`^Saved: Not sour yet after ${hours.replace(' ', '\\s')}`)).waitFor();
    }
    await log.getByText(/^A warmer place: /).waitFor();
    await log.getByText('Found against expected').click();
    await screenshot(page, 'log-next-time');
    const said = await log.getByText(/^A warmer place: /).textContent();
    const [, to] = /A warmer place: ([\d.]+)/.exec(said ?? '') ?? [];
    await log.getByRole('button', { name: 'Make the next batch' }).click();
    await page
      .getByText(/, next: A warmer place/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: /^Undo.*Make the next/ }).waitFor();
    expect(await page.locator(`[data-quantity="roomTemperature"][data-batch="b2"]`).textContent()).toContain(to);
  });

  test('warns of a carton that refused twice, when it is chosen again', async () => {
    await choose(page, 'Nut, seed or coconut', 'Carton, unsweetened');
    await log.getByLabel('Which carton is it?').fill('Blue soy');
    await log.getByLabel('Which carton is it?').press('Enter');
    for (const day of ['2026-01-10', '2026-01-20']) {
      await log.getByRole('radio', { name: 'Not sour yet' }).check();
      await log.getByRole('checkbox', { name: 'Given up: it never turned' }).check();
      await log.getByLabel('Hours since the grains went in').fill('120 h');
      await log.getByLabel('When you looked').fill(`${day}T08:00`);
      await log.getByRole('button', { name: 'Save' }).click();
      await log.getByText(/^Saved: Not sour yet after 120/).waitFor();
    }
    await log.getByText('Never turned: tried 2 times, given up after 5 days.').waitFor();
    await screenshot(page, 'log-cartons');
    const warning = page.locator('.remarks').getByText('“Blue soy” did not ferment either time');
    await warning.waitFor();
    await log.getByLabel('Which carton is it?').fill('Green oat');
    await log.getByLabel('Which carton is it?').press('Enter');
    await warning.waitFor({ state: 'detached' });
    await log.getByRole('button', { name: 'Blue soy', exact: true }).click();
    await warning.waitFor();
  });

  test('fits a narrow phone', async () => {
    await page.setViewportSize({ width: 320, height: 800 });
    await logReady('2026-01-10');
    const [scrolled, wide] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
    expect(scrolled).toBeLessThanOrEqual(wide ?? 0);
    const box = await log.boundingBox();
    expect((box?.x ?? 0) + (box?.width ?? 999)).toBeLessThanOrEqual(320);
  });
});
