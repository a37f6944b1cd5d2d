import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { noFaults, type OpenedPage, openPage, type Visit, type VisitOptions } from './page';
import { choose, findCell, typeInto } from './sheet-page';

declare global {
  interface Window {
    readonly axe: typeof import('axe-core');
  }
}

// As text to evaluate: the page's own policy lets no script in that it does not know.
const checker = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const standards = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
const desk = { viewport: { width: 1280, height: 900 } } as const;
const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true } as const;
const smallest = { viewport: { width: 320, height: 640 }, hasTouch: true, isMobile: true } as const;

/** What breaks a rule, each with the element it is found at. */
async function findViolations(page: Page): Promise<readonly string[]> {
  await page.evaluate(`${checker};0`);
  const { violations, passes } = await page.evaluate(
    (values) => window.axe.run(document, { runOnly: { type: 'tag', values } }),
    standards,
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

describeInBrowser('for everyone', () => {
  let opened: OpenedPage;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  async function arrive(options: VisitOptions): Promise<Visit> {
    const visit = await opened.visit({ reducedMotion: 'reduce', ...options });
    await visit.page.getByRole('region', { name: /^Steps for/ }).waitFor();
    return visit;
  }

  async function leave({ faults, close }: Visit): Promise<void> {
    expect(faults).toEqual(noFaults);
    await close();
  }

  /** The states a page is looked at in. */
  const states: Readonly<Record<string, (page: Page) => Promise<unknown>>> = {
    'as it opens': async () => {},
    'with a working open': async (page) => {
      await findCell(page, 'Milk after straining').click();
      await page.getByRole('heading', { name: 'What went in' }).waitFor();
    },
    'with a figure being corrected': async (page) => {
      await findCell(page, 'After soaking and draining').click();
      await page.getByRole('button', { name: 'Use my own: Water taken up in soaking' }).click();
      await page
        .getByRole('region', { name: /^Working of/ })
        .getByRole('button', { name: 'Keep', exact: true })
        .click();
      await page.getByRole('alert').waitFor();
    },
    'with a choice explained': async (page) => {
      await findCell(page, 'Nut, seed or coconut').focus();
      await page.getByRole('region', { name: 'Working of Nut, seed or coconut' }).waitFor();
    },
    'with cells refused': async (page) => {
      await typeInto(page, 'Weight as bought', '17o g');
      await typeInto(page, 'Headspace', '60 cm');
      await page.getByText('deep inside').waitFor();
    },
    'with a sweetener refused': async (page) => {
      await choose(page, 'Kind of sweetener', 'Xylitol');
      await page.getByText('can’t feed the grains').waitFor();
    },
    'with a cell being typed in': async (page) => {
      await findCell(page, 'Grains to add').click();
      await page.keyboard.press('5');
    },
    'with a cell typed in and measured': async (page) => {
      await typeInto(page, 'Weight as bought', '1 ½ cups');
      await findCell(page, 'Milk after straining').click();
      await page.getByRole('textbox', { name: 'Measured: Milk after straining' }).fill('700 mL');
      await page.getByRole('button', { name: 'Measured', exact: true }).click();
    },
    'with the settings and the heat step open': async (page) => {
      await page.getByText('Spoons and cups', { exact: true }).click();
      await page.getByText('Add a heat step', { exact: true }).click();
    },
    'with a recipe read and written, sweeteners swapped and a cup looked up': async (page) => {
      for (const panel of ['Paste a recipe', 'Swap the sweetener', 'Write it as a recipe', 'Cups to grams, any food'])
        await page.locator('summary', { hasText: panel }).first().click();
      await page
        .getByRole('textbox', { name: 'Recipe text' })
        .fill('1 cup (170 g) almonds\n1 heaped cup oats\n½/0 nuts');
      await page.getByRole('button', { name: 'Read it' }).click();
      await page.getByText('Swap its sweetener first').click();
      await page.getByText('Weigh a cup once and keep it').click();
      await page.getByRole('textbox', { name: 'Amount', exact: true }).fill('17o g');
      await page.getByRole('alert').waitFor();
    },
    'with batches side by side that differ': async (page) => {
      await page.getByRole('button', { name: 'Add a batch' }).click();
      const sources = page.getByRole('combobox', { name: 'Nut, seed or coconut', exact: true });
      await sources.last().selectOption({ label: 'Hemp hearts' });
      await page.getByText('This batch', { exact: true }).first().click();
      await page.getByRole('button', { name: 'Rename' }).first().waitFor();
    },
    'with amounts that contradict each other': async (page) => {
      await typeInto(page, 'Weight as bought', '200 g');
      await typeInto(page, 'Water to blend', '1 L');
      await typeInto(page, 'Milk after straining', '2 L');
      await page.getByText('apart').waitFor();
    },
    'with a section folded': async (page) => {
      await page.getByRole('grid').getByRole('button', { name: 'Milk', exact: true }).click();
    },
  };

  describe.each(Object.entries(states))('%s', (_, reach) => {
    test.each([
      ['a light desk', { ...desk, colorScheme: 'light' }],
      ['a dark desk', { ...desk, colorScheme: 'dark' }],
      ['a light phone', { ...phone, colorScheme: 'light' }],
      ['a dark phone', { ...phone, colorScheme: 'dark' }],
    ] as const)('breaks no rule of access on %s', async (__, options) => {
      const visit = await arrive(options);
      await reach(visit.page);
      expect(await findViolations(visit.page)).toEqual([]);
      await leave(visit);
    });

    test.each([320, 390])('fits a screen of %d px, every target big enough for a thumb', async (width) => {
      const visit = await arrive({ ...smallest, viewport: { width, height: 700 } });
      await reach(visit.page);
      expect(await visit.page.evaluate(findOverflow)).toEqual([]);
      expect(await visit.page.evaluate(findSmallTargets)).toEqual([]);
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
