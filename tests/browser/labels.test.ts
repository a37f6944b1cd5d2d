import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { openPart } from './open-part';
import { visitEach } from './visit-each';

/** Opens the labels with a number of them, and presses Print; the dialogue of the browser itself stays away. */
async function putOnPaper(page: Page, count: number): Promise<void> {
  await page.evaluate(() => {
    window.print = () => undefined;
  });
  await openPart(page, 'Paper');
  await page.locator('summary', { hasText: 'Labels' }).click();
  const panel = page.getByRole('region', { name: 'Labels for Saturday almond' });
  await panel.getByLabel(/^Made/).fill('2026-03-28');
  await panel.getByRole('textbox', { name: 'Number of labels' }).fill(String(count));
  await panel.getByRole('textbox', { name: 'A line of your own' }).fill('Shelf 2, W'.padEnd(60, 'W'));
  await panel.getByRole('button', { name: 'Print labels' }).click();
  await page.locator('[data-paper=labels]').waitFor();
  expect(await page.locator('.label-sheet .jar-label').count()).toBe(count);
}

/** Labels on paper of a width in mm within 12 mm of margin: what of them is out of sight or of their box. */
function findCut(): readonly string[] {
  const sheet = document.querySelector('.label-sheet')?.getBoundingClientRect();
  if (sheet === undefined) return ['there is no sheet'];
  return [...document.querySelectorAll('.label-sheet .jar-label')].flatMap((label, place) => {
    const box = label.getBoundingClientRect();
    const isOut = box.left < sheet.left - 0.5 || box.right > sheet.right + 0.5 || box.width < 100;
    const cut = [...label.children].filter((line) => {
      const { left, right, top, bottom } = line.getBoundingClientRect();
      const isOver = left < box.left || right > box.right || top < box.top || bottom > box.bottom;
      return isOver || line.scrollWidth > line.clientWidth + 1 || !line.checkVisibility();
    });
    return [...(isOut ? [`label ${place}`] : []), ...cut.map((line) => `${place}: ${line.textContent}`)];
  });
}

/** The text of each page of a PDF; null where this machine has no program to read it. */
function readPages(pdf: Buffer): readonly string[] | null {
  const folder = mkdtempSync(join(tmpdir(), 'labels-'));
  try {
    const file = join(folder, 'labels.pdf');
    writeFileSync(file, pdf);
    const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
    return text.split('\f').slice(0, -1);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return null;
    throw error;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const countIn = (text: string, part: RegExp): number => text.match(part)?.length ?? 0;

describeInBrowser('labels on paper', () => {
  const page = visitEach();

  describe.each([
    ['A4', 210],
    ['Letter', 216],
  ] as const)('%s', (format, width) => {
    test('a sheet of 25 holds them all, nothing else, and each whole on one page', async () => {
      await putOnPaper(page(), 25);
      const pdf = await page().pdf({ format, preferCSSPageSize: false });
      const pages = countIn(pdf.toString('latin1'), /\/Type\s*\/Page\b/g);
      expect(pages).toBeGreaterThanOrEqual(2);
      expect(pages).toBeLessThanOrEqual(4);
      const texts = readPages(pdf);
      if (texts === null) {
        console.warn('No pdftotext here: the pages of the labels were counted and not read.');
        return;
      }
      expect(texts).toHaveLength(pages);
      const all = texts.join('');
      for (const part of [
        /Saturday almond/g,
        /Made 28 Mar 2026/g,
        /Taste by 3 Apr 2026/g,
        /May hold more/g,
        /Shelf 2/g,
      ])
        expect(countIn(all, part), String(part)).toBe(25);
      // The first and the last line of every label are on one page, and no page is empty.
      for (const text of texts) {
        expect(countIn(text, /Saturday almond/g)).toBeGreaterThan(0);
        expect(countIn(text, /Shelf 2/g)).toBe(countIn(text, /Saturday almond/g));
      }
      expect(all).not.toMatch(/Take care|Steps|Undo|Recipe text|Copy the text|Number of labels/);
    });

    test('no line leaves its label, and no label the sheet', async () => {
      await putOnPaper(page(), 3);
      await page().emulateMedia({ media: 'print' });
      // What is left of the width between margins of 12 mm, at 96 dots an inch.
      await page().setViewportSize({ width: Math.floor(((width - 24) / 25.4) * 96), height: 900 });
      expect(await page().evaluate(findCut)).toEqual([]);
      const boxes = await page()
        .locator('.label-sheet .jar-label')
        .evaluateAll((labels) => labels.map((label) => label.getBoundingClientRect().top));
      expect(boxes[0]).toBe(boxes[1]);
      expect(boxes[2]).toBeGreaterThan(boxes[0] ?? Number.NaN);
      if (process.env.SCREENSHOTS !== undefined)
        await page().screenshot({ path: `${process.env.SCREENSHOTS}/labels-${format}.png` });
    });
  });

  test('the card of the batch prints as ever afterwards, without labels', async () => {
    await putOnPaper(page(), 2);
    await page().evaluate(() => dispatchEvent(new Event('afterprint')));
    await expect.poll(() => page().locator('.label-sheet').count()).toBe(0);
    await page().emulateMedia({ media: 'print' });
    await expect.poll(() => page().getByRole('article', { name: 'Card of Saturday almond' }).isVisible()).toBe(true);
    expect(await page().locator('.jar-label').first().isVisible()).toBe(false);
  });

  test('the panel is worked by keyboard alone', async () => {
    await openPart(page(), 'Paper');
    const summary = page().locator('summary', { hasText: 'Labels' });
    await summary.focus();
    await page().keyboard.press('Enter');
    const panel = page().getByRole('region', { name: 'Labels for Saturday almond' });
    await panel.getByRole('textbox', { name: 'Number of labels' }).focus();
    await page().keyboard.press('Tab');
    await page().keyboard.type('For a friend');
    expect(await panel.locator('.jar-label').first().textContent()).toMatch(/For a friend$/);
  });
});
