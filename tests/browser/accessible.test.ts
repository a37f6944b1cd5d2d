import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { openPart, showAllFigures, waitForPage } from './open-part';
import { noFaults, type OpenedPage, openPage, type Visit, type VisitOptions } from './page';
import { choose, findCell, typeInto } from './sheet-page';

declare global {
  interface Window {
    readonly axe: typeof import('axe-core');
  }
}

// As text to evaluate: the page's own policy lets no script in that it does not know.
const checker = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const ofColours = ['color-contrast', 'link-in-text-block'];
const standards = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const desk = { viewport: { width: 1280, height: 900 } } as const;
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true } as const;

/** What breaks a rule, each with the element it is found at; other colours of the same page break only a rule of colours. */
async function findViolations(page: Page, rules: 'all' | 'colours' = 'all'): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(`${checker};0`);
  const { violations, passes } = await page.evaluate(
    (runOnly) => window.axe.run(document, { runOnly }),
    rules === 'all' ? { type: 'tag' as const, values: standards } : { type: 'rule' as const, values: ofColours },
  );
  // A checker that looked at nothing would find nothing.
  expect(passes.map(({ id }) => id)).toContain('color-contrast');
  return violations.flatMap(({ id, nodes }) =>
    nodes
      .filter(({ html }) => !isNamedAfterItsRow(id, html))
      .map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary ?? ''}`),
  );
}

/** A cell's name begins with its row, and one with a menu shows but one of the options the checker reads. */
function isNamedAfterItsRow(rule: string, html: string): boolean {
  return rule === 'label-content-name-mismatch' && html.includes('role="gridcell"');
}

/** Touch targets under 44 px, in words. A button in a line of text is as tall as its line, which WCAG allows. */
function findSmallTargets(): readonly string[] {
  const targets = document.querySelectorAll<HTMLElement>(
    'button, select, summary, input:not([type=radio], [type=checkbox]), label:has([type=radio], [type=checkbox]), [data-quantity]',
  );
  const inText = (target: Element): boolean =>
    target.matches('button') &&
    [...(target.parentNode?.childNodes ?? [])].some(
      (one) => one instanceof Text && one.data.trim() !== '' && getComputedStyle(target).display.startsWith('inline'),
    );
  return [...targets]
    .filter((target) => target.checkVisibility() && !inText(target))
    .map((target) => ({ target, height: target.getBoundingClientRect().height }))
    .filter(({ height }) => height < 43.9)
    .map(({ target, height }) => `${height}: ${target.outerHTML.slice(0, 120)}`);
}

/** By how much the page is wider than its window, px, and what sticks out. */
function findOverflow(): readonly string[] {
  const { scrollWidth, clientWidth } = document.documentElement;
  return scrollWidth <= clientWidth ? [] : [`${scrollWidth} in ${clientWidth}`];
}

/** The states a page is looked at in; each is reached from the page as it opens. */
const states: Readonly<Record<string, (page: Page) => Promise<unknown>>> = {
  'as it opens': async () => {},
  'with every figure': (page) => showAllFigures(page),
  'with a working open and a figure being corrected': async (page) => {
    await showAllFigures(page);
    await openWorking(page, 'After soaking and draining');
    await page.getByRole('button', { name: 'Use my own: Water taken up in soaking' }).click();
    await page
      .getByRole('region', { name: /^Working of/ })
      .getByRole('button', { name: 'Keep', exact: true })
      .click();
    await page.getByRole('alert').waitFor();
  },
  'with a choice explained': (page) => openWorking(page, 'Nut, seed or coconut'),
  'with cells refused': async (page) => {
    await typeInto(page, 'Weight as bought', '17o g');
    await typeInto(page, 'Headspace', '60 cm');
    await page.getByText('deep inside').first().waitFor();
  },
  'with a sweetener refused': async (page) => {
    await choose(page, 'Kind of sweetener', 'Xylitol');
    await page.getByText('can’t feed the grains').first().waitFor();
  },
  'with a cell being typed in': async (page) => {
    await findCell(page, 'Culture to add').click();
    if ((await page.getByRole('textbox', { name: 'Culture to add' }).count()) === 0) await page.keyboard.press('5');
    await page.getByRole('textbox', { name: 'Culture to add' }).waitFor();
  },
  'with amounts that contradict each other': async (page) => {
    await typeInto(page, 'Weight as bought', '200 g');
    await typeInto(page, 'Water to blend', '1 L');
    await typeInto(page, 'Milk after straining', '2 L');
    await page.getByText('apart').first().waitFor();
  },
  'with batches side by side that differ': async (page) => {
    if ((await page.getByRole('button', { name: '+ Batch' }).count()) === 0)
      await page.getByRole('button', { name: 'More', exact: true }).click();
    await page.getByRole('button', { name: '+ Batch' }).click();
    await page.getByRole('combobox', { name: 'Nut, seed or coconut', exact: true }).last().selectOption({
      label: 'Hemp hearts',
    });
    await page.locator('.batch-tools > summary').last().click();
    await page.getByRole('button', { name: 'Move left' }).last().waitFor();
  },
  'with a recipe read': async (page) => {
    await openPart(page, 'Recipe');
    await page.getByRole('textbox', { name: 'Recipe text' }).fill('1 cup almonds\n1 heaped cup oats\n½/0 nuts');
    await page.getByRole('button', { name: 'Read it' }).click();
    await page.getByText('1 heaped cup oats').last().waitFor();
  },
  'with grains weighed out, gone wrong and told of': async (page) => {
    await openPart(page, 'Grains');
    const grains = page.getByRole('region', { name: 'Grains', exact: true });
    await grains.getByLabel('Drained, they weigh').fill('60');
    await grains.getByRole('button', { name: 'Keep these grains' }).click();
    for (const back of ['44', '46']) {
      await grains.getByRole('button', { name: 'Out', exact: true }).click();
      await grains.getByLabel(/^Back from/).fill(back);
      await grains.getByRole('button', { name: 'Back', exact: true }).click();
    }
    await grains.getByRole('button', { name: 'Out', exact: true }).click();
    await grains.getByRole('button', { name: 'It went wrong' }).click();
    for (const fold of await grains.locator('details > summary').all()) await fold.click();
    for (const name of ['how so', 'where from']) await grains.getByRole('button', { name }).click();
    await grains
      .getByRole('button', { name: /^Change back/ })
      .first()
      .click();
  },
  'with a class': async (page) => {
    await openPart(page, 'Class');
    await page.getByRole('button', { name: 'Start a class with Saturday almond' }).click();
    await page.getByLabel('List of kitchens').fill('Ana, 2 L, US, milk grains\nBen\nCleo, a bucket');
    await page.getByRole('button', { name: 'Add these kitchens' }).click();
    await page.getByLabel('Plan for the class').selectOption('drink');
    await page.getByRole('alert').waitFor();
  },
  ...Object.fromEntries(
    ['Steps', 'Time', 'Fizz', 'Plan', 'Log', 'Swap', 'On hand', 'Paper', 'Care', 'Kitchen', 'Numbers'].map((name) => [
      `with the part ${name}`,
      (page: Page) => openPart(page, name),
    ]),
  ),
};

async function openWorking(page: Page, label: string): Promise<void> {
  await findCell(page, label).focus();
  await page.keyboard.press('?');
  await page.getByRole('region', { name: `Working of ${label}` }).waitFor();
}

describeInBrowser('for everyone', () => {
  let opened: OpenedPage;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  async function arrive(options: VisitOptions): Promise<Visit> {
    const visit = await opened.visit({ reducedMotion: 'reduce', ...options });
    await waitForPage(visit.page);
    return visit;
  }

  async function leave({ faults, close }: Visit): Promise<void> {
    expect(faults).toEqual(noFaults);
    await close();
  }

  describe.each(Object.entries(states))('%s', (_, reach) => {
    // One visit a width: the schemes are put on in place, as a reader may switch them.
    test('breaks no rule of access on a desk, in light, dark and forced colours', async () => {
      const visit = await arrive(desk);
      await reach(visit.page);
      expect(await findViolations(visit.page)).toEqual([]);
      await visit.page.emulateMedia({ colorScheme: 'dark' });
      expect(await findViolations(visit.page, 'colours')).toEqual([]);
      await visit.page.emulateMedia({ colorScheme: 'light', forcedColors: 'active' });
      expect(await findViolations(visit.page, 'colours')).toEqual([]);
      // 400 % of a desk of 1280 px is a window of 320.
      await visit.page.emulateMedia({ forcedColors: 'none' });
      await visit.page.setViewportSize({ width: 320, height: 256 });
      expect(await visit.page.evaluate(findOverflow)).toEqual([]);
      await leave(visit);
    });

    test('breaks no rule of access on a phone, fits its screen, and every target is big enough for a thumb', async () => {
      const visit = await arrive(phone);
      await reach(visit.page);
      expect(await findViolations(visit.page)).toEqual([]);
      await visit.page.emulateMedia({ colorScheme: 'dark' });
      expect(await findViolations(visit.page, 'colours')).toEqual([]);
      for (const width of [390, 320]) {
        await visit.page.setViewportSize({ width, height: 700 });
        expect(await visit.page.evaluate(findOverflow), `${width} px`).toEqual([]);
        expect(await visit.page.evaluate(findSmallTargets), `${width} px`).toEqual([]);
      }
      await leave(visit);
    });
  });

  test('nothing moves for those who want no motion', async () => {
    const moving = () =>
      [...document.querySelectorAll('*')]
        .map((one) => getComputedStyle(one))
        .filter(
          (style) => /[1-9]/.test(style.transitionDuration) || (style.animationName !== 'none' && style.animationName),
        ).length;
    const still = await arrive(desk);
    expect(await still.page.evaluate(moving)).toBe(0);
    await leave(still);
    const moved = await arrive({ ...desk, reducedMotion: 'no-preference' });
    expect(await moved.page.evaluate(moving)).toBeGreaterThan(0);
    await leave(moved);
  });
});
