import type { Page } from 'playwright-core';
import { beforeEach, expect, test } from 'vitest';
import { grains } from '../../src/reference/grains';
import { jars } from '../../src/reference/jars';
import { sources } from '../../src/reference/sources';
import { sweeteners } from '../../src/reference/sweeteners';
import { describeInBrowser } from './chromium';
import { showAllFigures } from './open-part';
import { choose } from './sheet-page';
import { visitEach } from './visit-each';

const names = (table: Readonly<Record<string, { readonly name: string }>>): readonly string[] =>
  Object.values(table).map(({ name }) => name);

/** What a missing value looks like when it is written all the same. */
const nothingWritten = 'NaN|Infinity|\\bundefined\\b|\\bnull\\b|\\[object';

describeInBrowser('a tour of the tables', () => {
  let page: Page;
  const current = visitEach();

  beforeEach(async () => {
    page = current();
    await showAllFigures(page);
  });

  /** What is wrong with the page as it stands, in words: numbers that are none, empty cells, missing steps. */
  const findSlips = (): Promise<readonly string[]> =>
    page.evaluate(async (nothing) => {
      await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
      const slips: string[] = [];
      // Also what only a screen reader gets: names and descriptions are attributes.
      const [bad] = new RegExp(`.{0,40}(${nothing}).{0,20}`).exec(document.body.outerHTML) ?? [];
      if (bad !== undefined) slips.push(bad);
      const cells = [...document.querySelectorAll<HTMLElement>('[data-quantity]')];
      if (cells.length < 20) slips.push(`only ${cells.length} cells`);
      for (const cell of cells) {
        // biome-ignore lint/performance/useDomNodeTextContent: what is hidden from sight must not count as shown.
        if (cell.innerText.trim() === '' && cell.querySelector('select') === null)
          slips.push(`${cell.dataset.quantity} is empty`);
      }
      const steps = [...document.querySelectorAll('section')].filter((one) => one.ariaLabel?.startsWith('Steps for'));
      for (const one of steps) {
        if (one.querySelectorAll('ol > li').length < 5) slips.push('hardly any steps');
      }
      return steps.length === 0 ? [...slips, 'no steps'] : slips;
    }, nothingWritten);

  test.each(names(grains))('every source is worked out with %s', async (grain) => {
    await choose(page, 'Kind of culture', grain);
    for (const source of names(sources)) {
      await choose(page, 'Nut, seed or coconut', source);
      expect(await findSlips(), source).toEqual([]);
    }
  });

  test('every jar is filled', async () => {
    for (const jar of names(jars)) {
      await choose(page, 'Kind of jar', jar);
      expect(await findSlips(), jar).toEqual([]);
      await page.getByRole('img', { name: new RegExp(`: ${jar}, filled with`) }).waitFor();
    }
  });

  test('every sweetener is taken, or refused with its reason', async () => {
    for (const { name, refused } of Object.values(sweeteners)) {
      await choose(page, 'Kind of sweetener', name);
      expect(await findSlips(), name).toEqual([]);
      if (refused !== undefined) await page.getByRole('treegrid').getByText(refused).first().waitFor();
    }
  });

  /** What is wrong with the working of each row in turn: nothing there, or a number that is none. */
  const findWorkingSlips = (): Promise<readonly string[]> =>
    page.evaluate(async (nothing) => {
      const slips: string[] = [];
      for (const cell of document.querySelectorAll<HTMLElement>('[data-quantity]')) {
        cell.focus();
        await new Promise((done) => setTimeout(done));
        const row = cell.dataset.quantity ?? '';
        const workings = [...document.querySelectorAll('section')].filter((one) =>
          one.ariaLabel?.startsWith('Working of'),
        );
        const said = workings.map((one) => one.textContent).join();
        if (said.length < 20) slips.push(`${row} says only “${said}”`);
        const [bad] = new RegExp(`.{0,40}(${nothing}|\\{\\w+\\}).{0,20}`).exec(said) ?? [];
        if (bad !== undefined) slips.push(`${row}: ${bad}`);
      }
      return slips;
    }, nothingWritten);

  test('every row has its working for every source', async () => {
    await page.locator('[data-quantity]').first().focus();
    await page.keyboard.press('?');
    await page.getByRole('region', { name: /^Working of/ }).waitFor();
    for (const source of names(sources)) {
      await choose(page, 'Nut, seed or coconut', source);
      expect(await findWorkingSlips(), source).toEqual([]);
    }
  });
});
