import type { Page } from 'playwright-core';
import { beforeEach, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { openPart } from './open-part';
import { readCell, typeInto } from './sheet-page';
import { visitEach } from './visit-each';

const time = (page: Page) => page.getByRole('region', { name: 'Time for Saturday almond' });
const readyIn = (page: Page) => page.getByRole('region', { name: 'Ready when you want Saturday almond' });

/** The likely hours, as the cell of the ready time says them under its range. */
async function likelyHours(page: Page): Promise<number> {
  const [, found] = /likely (\d+(?:\.\d+)?) h/.exec(await readCell(page, 'Ready to taste after')) ?? [];
  return Number(found);
}

/** The middle of the dot of this batch, as a share of the drawing from its left and its top. */
async function placeOfDot(page: Page): Promise<{ readonly left: number; readonly top: number }> {
  const plot = await time(page).locator('.ripening-plot').boundingBox();
  const dot = await time(page).locator('.ripening-plot .reach + .dot-edge + .dot').boundingBox();
  if (plot === null || dot === null) throw new Error('there is no dot to be seen');
  return {
    left: (dot.x + dot.width / 2 - plot.x) / plot.width,
    top: (dot.y + dot.height / 2 - plot.y) / plot.height,
  };
}

async function shoot(page: Page, name: string): Promise<void> {
  const folder = process.env.SCREENSHOTS;
  if (folder === undefined || folder === '') return;
  await page.getByRole('tabpanel', { name: 'Time' }).screenshot({ path: `${folder}/time-${name}.png` });
}

describeInBrowser('the time of a batch', () => {
  const page = visitEach();

  beforeEach(() => openPart(page(), 'Time'));

  test('moves with the temperature of the room, in its cell and in the chart', async () => {
    await typeInto(page(), 'Room temperature', '21C');
    const before = { hours: await likelyHours(page()), dot: await placeOfDot(page()) };
    expect(before.hours).toBe(12);
    await typeInto(page(), 'Room temperature', '26C');
    await expect.poll(() => likelyHours(page())).toBeLessThan(9);
    await time(page())
      .getByText(/^At 26\s°C \(79\s°F\) it is likely ready to taste after/)
      .waitFor();
    const after = await placeOfDot(page());
    expect(before.dot.left).toBeCloseTo(5 / 14, 1);
    expect(after.left).toBeCloseTo(10 / 14, 1);
    expect(after.top).toBeGreaterThan(before.dot.top);
    await shoot(page(), 'desktop');
  });

  test('is not told at 35 °C, with the reason, and the chart has no point', async () => {
    await typeInto(page(), 'Room temperature', '35 C');
    await time(page())
      .getByText(/^At 35\s°C \(95\s°F\) no time can be told: the published models part ways outside 16\s°C/)
      .waitFor();
    expect(await readCell(page(), 'Ready to taste after')).not.toMatch(/\d\s*h\b/);
    expect(await time(page()).locator('.dot').count()).toBe(0);
    expect(await time(page()).locator('.likely').count()).toBeGreaterThan(0);
  });

  test('is had in 9 hours by what the table says, at a press, and undone at another', async () => {
    await typeInto(page(), 'Room temperature', '21C');
    await readyIn(page()).getByRole('textbox', { name: 'To have it ready in' }).fill('9');
    await readyIn(page())
      .getByRole('button', { name: /^Use .* for “Room temperature”$/ })
      .click();
    await expect.poll(() => likelyHours(page())).toBeGreaterThan(8.9);
    expect(await likelyHours(page())).toBeLessThan(9.1);
    const said = readyIn(page()).getByRole('status');
    expect(await said.textContent()).toMatch(/done\. At .* it is likely ready to taste after 9/);
    // The button is gone; whoever works by keyboard is still here.
    expect(await said.evaluate((element) => element === document.activeElement)).toBe(true);
    await page()
      .getByRole('button', { name: /^Undo.*Room temperature/ })
      .click();
    await expect.poll(() => likelyHours(page())).toBe(12);
    expect(await readCell(page(), 'Room temperature')).toContain('21 °C');
  });

  test('refuses what is no time, beside the field, and keeps it', async () => {
    const field = readyIn(page()).getByRole('textbox', { name: 'To have it ready in' });
    await field.fill('soon');
    await readyIn(page()).getByRole('alert').waitFor();
    expect(await field.inputValue()).toBe('soon');
    expect(await readyIn(page()).getByRole('table').count()).toBe(0);
    await field.fill('1 day');
    await readyIn(page()).getByRole('table').waitFor();
  });

  test.each([320, 360])('is read at %i px without scrolling sideways', async (width) => {
    await page().setViewportSize({ width, height: 800 });
    await page().emulateMedia({ colorScheme: width === 360 ? 'dark' : 'light' });
    const cut = await page()
      .getByRole('tabpanel', { name: 'Time' })
      .evaluate((cards) =>
        [cards, ...cards.querySelectorAll('*')]
          .filter((part) => part instanceof HTMLElement && !part.closest('.unseen'))
          .filter((part) => part.getBoundingClientRect().right > window.innerWidth + 1)
          .map((part) => `${part.className} ${part.textContent}`),
      );
    expect(cut).toEqual([]);
    await shoot(page(), `phone-${width}`);
  });
});
