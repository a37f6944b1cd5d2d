import type { Page } from 'playwright-core';
import { beforeEach, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { openPart } from './open-part';
import { screenshot } from './screenshots';
import { visitEach } from './visit-each';

describeInBrowser('the grains', () => {
  let page: Page;
  const current = visitEach();
  const grains = () => page.getByRole('region', { name: 'Grains', exact: true });
  const seen = async (name: string) =>
    // biome-ignore lint/performance/useDomNodeTextContent: what is hidden from sight must not count as shown.
    (await grains().getByRole('region', { name }).innerText()).replaceAll('\u00A0', ' ');
  /** Presses a button by its name. */
  const press = (name: string) => grains().getByRole('button', { name, exact: true }).click();

  beforeEach(async () => {
    page = current();
  });

  async function keep(weight: string): Promise<void> {
    await openPart(page, 'Grains');
    await grains().getByLabel('Drained, they weigh').fill(weight);
    await press('Keep these grains');
    await grains().getByText(`${weight}\u00A0g`, { exact: true }).first().waitFor();
  }

  /** One batch: out at the weight that stands there, back as weighed. */
  async function weighBatch(back: string): Promise<void> {
    await press('Out');
    await grains()
      .getByLabel(/^Back from/)
      .fill(back);
    await press('Back');
    await grains()
      .getByText(new RegExp(`^Back ${back}\\sg from`))
      .first()
      .waitFor();
  }

  async function weighThree(): Promise<void> {
    await keep('60');
    const [asked] =
      /\d+/.exec(
        await grains()
          .getByLabel(/^Out for/)
          .inputValue(),
      ) ?? [];
    const out = Number(asked);
    expect(out).toBeGreaterThan(20);
    for (const more of [2, 3, 4]) await weighBatch(String(out + more));
  }

  test('no heading within the part is larger than its own', async () => {
    await keep('60');
    const size = (tag: string) =>
      grains()
        .locator(tag)
        .evaluateAll((all) => all.map((one) => Number.parseFloat(getComputedStyle(one).fontSize)));
    const [own = 0] = await size('h2');
    const within = await size('h3');
    expect(within.length).toBeGreaterThan(0);
    expect(Math.max(...within)).toBeLessThan(own);
  });

  test('are weighed out and back over three batches, and show what they grew and what they carry', async () => {
    await weighThree();
    const facts = grains().locator('.stock-facts');
    await facts.getByText(/^1\.\d+\sL of milk at 54/).waitFor();
    expect(await seen('Growth')).toMatch(/×1\.0\d \(\d\.\d\d to 1\.\d\d\)\s+3 batches/);
    await grains()
      .getByRole('img', { name: /3 batches out, 3 weighed before and after/ })
      .waitFor();
    expect(await seen('Enough for a larger jar')).toMatch(/likely after|not in sight/);
    expect(await seen('Rest')).toMatch(/rest in .* of water with .* of sugar/);
    await grains().getByRole('button', { name: 'how so' }).click();
    expect(await seen('Growth')).toMatch(/geometric mean of back ÷ out over 3 batches/);
    await screenshot(page, 'grains');
    // Undo takes the last line back, by its name.
    await page.getByRole('button', { name: /^Undo: Grains: Back/ }).click();
    await grains()
      .getByLabel(/^Back from/)
      .waitFor();
  });

  test('go out in three presses from anywhere, and come back with one number', async () => {
    await keep('60');
    await openPart(page, 'Steps');
    let presses = 0;
    await page.exposeFunction('pressed', () => {
      presses += 1;
    });
    await page.evaluate(() => addEventListener('click', () => void Reflect.get(globalThis, 'pressed')(), true));
    await openPart(page, 'Grains');
    await press('Out');
    await grains()
      .getByLabel(/^Back from/)
      .waitFor();
    expect(presses).toBeLessThanOrEqual(3);
    await grains()
      .getByLabel(/^Back from/)
      .fill('45');
    await page.keyboard.press('Enter');
    await grains()
      .getByText(/^Back 45\sg from/)
      .first()
      .waitFor();
  });

  test('stay where they were after a reload, and tell what can’t be read beside its field', async () => {
    await keep('60');
    await grains()
      .getByLabel(/^Out for/)
      .fill('a spoon');
    await press('Out');
    await grains().getByRole('alert').waitFor();
    expect(
      await grains()
        .getByLabel(/^Out for/)
        .inputValue(),
    ).toBe('a spoon');
    await page.getByText('Saved', { exact: true }).waitFor();
    await page.reload();
    await openPart(page, 'Grains');
    await grains().getByText('60\u00A0g', { exact: true }).first().waitFor();
  });

  test('have their lines changed and removed, and a mouldy batch throws its grains out', async () => {
    await keep('60');
    await weighBatch('44');
    await grains()
      .getByRole('button', { name: /^Change back/ })
      .click();
    await grains().getByLabel('How much came back').fill('46');
    await press('Save the change');
    await grains()
      .getByText(/^Back 46\sg from/)
      .waitFor();
    await press('Out');
    await press('It went wrong');
    await grains()
      .getByRole('radio', { name: /^Fur, or spots/ })
      .check();
    await grains()
      .getByText(/threads or germs all through them/)
      .waitFor();
    await press('Throw these grains out');
    await grains()
      .getByText(/^Threw out them all with/)
      .first()
      .waitFor();
    await grains()
      .getByRole('button', { name: /^Remove threw out/ })
      .click();
    await grains()
      .getByLabel(/^Back from/)
      .waitFor();
  });

  test('have their fresh liquid in the plan', async () => {
    await keep('60');
    await openPart(page, 'Plan');
    const plan = page.getByRole('region', { name: 'Plan of the grains' });
    await plan.getByText('Give the grains fresh sugar water').waitFor();
    const download = page.waitForEvent('download');
    await plan.getByRole('button', { name: 'Calendar file' }).click();
    expect((await download).suggestedFilename()).toBe('Grains.ics');
  });

  test('fit a phone and a narrow one', async () => {
    await weighThree();
    for (const width of [390, 320]) {
      await page.setViewportSize({ width, height: 844 });
      await grains().waitFor();
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    }
    await screenshot(page, 'grains-phone');
  });
});
