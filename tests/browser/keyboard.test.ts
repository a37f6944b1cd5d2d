import type { Locator, Page } from 'playwright-core';
import { beforeEach, describe, expect, test } from 'vitest';
import type { RowId } from '../../src/formula/recipe/order';
import { describeInBrowser } from './chromium';
import { showAllFigures } from './open-part';
import { visitEach } from './visit-each';

describeInBrowser('by keyboard alone', () => {
  let page: Page;
  const current = visitEach();

  beforeEach(async () => {
    page = current();
    await showAllFigures(page);
  });

  const cell = (row: RowId): Locator => page.locator(`[data-quantity="${row}"]`).first();
  const press = (key: string): Promise<void> => page.keyboard.press(key);
  const textOf = async (row: RowId): Promise<string> =>
    ((await cell(row).locator('.cell-body').textContent()) ?? '').replaceAll(/\s+/g, ' ');
  const editor = (): Locator => page.getByRole('treegrid').getByRole('textbox');

  /** Where the focus is: the row of a cell, the label of a line, or another element's tag. */
  const focus = (): Promise<string> =>
    page.evaluate(() => {
      const here = document.activeElement;
      if (here?.closest('[role="treegrid"]') === null) return here?.tagName.toLowerCase() ?? '';
      return here?.getAttribute('data-quantity') ?? here?.textContent?.trim() ?? '';
    });
  const expectFocus = (on: string) => expect.poll(focus).toBe(on);
  const isInCell = (): Promise<boolean> =>
    page.evaluate(() => document.activeElement?.closest('[data-quantity]') !== null);

  /** Tabs until the focus is in a cell, as one comes to the page. */
  async function tabToCell(): Promise<void> {
    for (let presses = 0; presses < 60; presses++) {
      await press('Tab');
      if (await isInCell()) return;
    }
    throw new Error('Tab never comes to a cell');
  }

  async function goTo(row: RowId): Promise<void> {
    await cell(row).focus();
    await expectFocus(row);
  }

  describe('the grid', () => {
    test('is one tab stop, before and after moving about', async () => {
      const stops = () =>
        page
          .getByRole('treegrid')
          .locator('[data-spot]')
          .evaluateAll((all) => all.filter((one) => one instanceof HTMLElement && one.tabIndex >= 0).length);
      expect(await stops()).toBe(1);
      await tabToCell();
      await press('ArrowDown');
      await press('ArrowDown');
      await press('ArrowDown');
      expect(await stops()).toBe(1);
      await press('PageUp');
      const stays = await focus();
      await press('Shift+Tab');
      await expect.poll(focus).not.toBe(stays);
      expect(await isInCell()).toBe(false);
      await press('Tab');
      await expectFocus(stays);
    });

    test('keeps up with keys that come faster than it is drawn', async () => {
      await goTo('brimful');
      for (const key of ['PageDown', 'PageUp', 'ArrowDown', 'ArrowDown', 'PageDown', 'ArrowUp', 'PageUp'])
        await press(key);
      await expectFocus('headspaceDepth');
    });

    test('is walked by arrows, through lines, their details and their labels', async () => {
      await goTo('sourceMass');
      await press('ArrowDown');
      await expectFocus('soakWater');
      await press('ArrowDown');
      await expectFocus('soakedMass');
      await press('ArrowUp');
      await expectFocus('soakWater');
      await press('ArrowLeft');
      await expectFocus('soakTime');
      await press('ArrowLeft');
      await expectFocus('Soak');
      await press('ArrowUp');
      await expectFocus('Nut, seed');
      await press('ArrowRight');
      await expectFocus('source');
      await press('ArrowRight');
      await expectFocus('sourceMass');
    });

    test('is crossed by Home, End, Page Up and Page Down', async () => {
      await goTo('sourceMass');
      await press('Control+End');
      await expectFocus('keepDays');
      await press('ArrowDown');
      await expectFocus('keepDays');
      await press('Control+Home');
      await expectFocus('Jar');
      await press('ArrowUp');
      await expectFocus('Jar');
      await goTo('sourceMass');
      await press('PageDown');
      await expect.poll(focus).not.toBe('sourceMass');
      await press('PageUp');
      await expectFocus('sourceMass');
      await press('Home');
      await expectFocus('Nut, seed');
      await press('End');
      await expectFocus('sourceMass');
    });

    test('keeps the cell in sight', async () => {
      await goTo('vessel');
      await press('Control+End');
      await expectFocus('keepDays');
      await expect
        .poll(() =>
          cell('keepDays').evaluate((one) => {
            const { top, bottom } = one.getBoundingClientRect();
            // Scrolling stops at whole pixels.
            return top > -1 && bottom < innerHeight + 1;
          }),
        )
        .toBe(true);
    });
  });

  describe('a cell', () => {
    test('is typed over, and keeps the focus when Enter commits', async () => {
      await goTo('sourceMass');
      await page.keyboard.type('200 g');
      expect(await editor().inputValue()).toBe('200 g');
      await press('Enter');
      await expectFocus('sourceMass');
      expect(await textOf('sourceMass')).toContain('200 g');
      await press('ArrowDown');
      await expectFocus('soakWater');
    });

    test.each(['Enter', 'F2'])('opens with %s on what stands there', async (key) => {
      await goTo('sourceMass');
      const before = await textOf('sourceMass');
      await press(key);
      const standing = (await editor().inputValue()).replaceAll(/\s+/g, ' ');
      expect(standing).not.toBe('');
      expect(before).toContain(standing);
      expect(await page.evaluate(() => getSelection()?.toString().replaceAll(/\s+/g, ' '))).toBe(standing);
      await press('Enter');
      await expectFocus('sourceMass');
      expect(await textOf('sourceMass')).toBe(before);
    });

    test('is restored by Escape, with the focus', async () => {
      await goTo('sourceMass');
      const before = await textOf('sourceMass');
      await page.keyboard.type('999');
      await press('Escape');
      await expectFocus('sourceMass');
      expect(await editor().count()).toBe(0);
      expect(await textOf('sourceMass')).toBe(before);
    });

    test('is committed and left by Tab', async () => {
      await goTo('sourceMass');
      await page.keyboard.type('210 g');
      await press('Tab');
      await expect.poll(() => textOf('sourceMass')).toContain('210 g');
      expect(await editor().count()).toBe(0);
      await expect.poll(focus).not.toBe('body');
      expect(await page.getByRole('treegrid').locator('[tabindex="0"]').count()).toBe(1);
    });

    test.each(['Delete', 'Backspace'])('is given back by %s', async (key) => {
      await goTo('sourceMass');
      const before = await textOf('sourceMass');
      await page.keyboard.type('200 g');
      await press('Enter');
      await expect.poll(() => textOf('sourceMass')).toContain('200 g');
      await press(key);
      await expect.poll(() => textOf('sourceMass')).toBe(before);
      await expectFocus('sourceMass');
    });
  });

  describe('a cell with a menu', () => {
    const menu = () => cell('source').getByRole('combobox');
    const isInMenu = () => menu().evaluate((one) => one === document.activeElement);

    test.each(['Enter', 'F2'])('is gone into with %s and out of with Escape', async (key) => {
      await goTo('source');
      await press(key);
      await expect.poll(isInMenu).toBe(true);
      // The first Escape may only shut the list the browser has opened.
      await press('Escape');
      if (await isInMenu()) await press('Escape');
      await expectFocus('source');
      await press('ArrowDown');
      await expectFocus('soakTime');
    });

    test('takes a choice, which undo takes back', async () => {
      await goTo('source');
      await press('Enter');
      await expect.poll(isInMenu).toBe(true);
      await page.keyboard.type('cash');
      await press('Enter');
      await expect.poll(() => menu().inputValue()).toBe('cashew');
      if (await isInMenu()) await press('Escape');
      await expectFocus('source');
      await page.getByRole('button', { name: /^Undo/ }).press('Enter');
      await expect.poll(() => menu().inputValue()).toBe('almond');
    });
  });

  test('a line is unfolded and folded on its label, by Enter, by Space and by the arrows', async () => {
    await page.getByRole('checkbox', { name: 'All figures' }).uncheck();
    const row = page.getByRole('row').filter({ has: page.locator('[data-line="milk"]') });
    await goTo('milkSolids');
    await press('ArrowLeft');
    await expectFocus('Milk');
    for (const [open, close] of [
      ['Enter', 'Enter'],
      ['Space', 'Space'],
      ['ArrowRight', 'ArrowLeft'],
    ] as const) {
      await press(open);
      await expect.poll(() => row.getAttribute('aria-expanded')).toBe('true');
      expect(await cell('pulpMass').count()).toBe(1);
      await expectFocus('Milk');
      await press(close);
      await expect.poll(() => row.getAttribute('aria-expanded')).toBe('false');
      expect(await cell('pulpMass').count()).toBe(0);
    }
  });

  test('undo and redo are buttons that name the step', async () => {
    const undo = page.getByRole('button', { name: /^Undo/ });
    const redo = page.getByRole('button', { name: /^Redo/ });
    await goTo('sourceMass');
    await page.keyboard.type('200 g');
    await press('Enter');
    await expect.poll(() => undo.getAttribute('title')).toContain('Type 200 g for Weight as bought');
    await undo.focus();
    await press('Enter');
    await expect.poll(() => textOf('sourceMass')).not.toContain('200 g');
    expect(await undo.isDisabled()).toBe(true);
    await redo.focus();
    await press('Space');
    await expect.poll(() => textOf('sourceMass')).toContain('200 g');
    expect(await undo.isDisabled()).toBe(false);
  });

  test('the working opens by a key, is reached by Tab, leads on, and closes by Escape at its cell', async () => {
    await goTo('soakedMass');
    await press('?');
    const working = page.getByRole('region', { name: 'Working of After soaking and draining' });
    await working.waitFor();
    for (let presses = 0; presses < 40; presses += 1) {
      if (await working.evaluate((one) => one.contains(document.activeElement))) break;
      await press('Tab');
    }
    await working.getByRole('button', { name: 'Weight as bought' }).press('Enter');
    await expectFocus('sourceMass');
    await page.getByRole('region', { name: 'Working of Weight as bought' }).waitFor();
    await press('Escape');
    await expect.poll(() => page.getByRole('region', { name: /^Working of/ }).count()).toBe(0);
    await expectFocus('sourceMass');
  });
});
