import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { demo } from '../../src/batch/document/demo';
import { keptMark } from '../../src/batch/keeping/storage';
import { describeInBrowser } from './chromium';
import { message, readRecords, waitForKept, waitForSheet, writeNewest } from './kept-page';
import { openKillable } from './killable';
import { openPart, waitForPage } from './open-part';
import { type OpenedPage, openPage, type Visit } from './page';
import { findCell, readCell, typeInto } from './sheet-page';

/** `KILLS=20` is the long form. */
const kills = Number(process.env.KILLS ?? 6);

describeInBrowser('when something goes wrong', () => {
  let opened: OpenedPage;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  test(`a browser killed mid-edit ${kills} times keeps the last committed edit each time`, async () => {
    const profile = mkdtempSync(join(tmpdir(), 'jarwright-killed-'));
    let kept = 0;
    try {
      for (let round = 0; round <= kills; round += 1) {
        const { page, kill } = await openKillable(profile, opened.address);
        await waitForSheet(page);
        if (round > 0 && (await readCell(page, 'Weight as bought')).includes(`${100 + round} g`)) kept += 1;
        if (round < kills) {
          await typeInto(page, 'Weight as bought', `${101 + round} g`);
          await waitForKept(page);
          await findCell(page, 'Water to blend').click();
          await page.keyboard.type('77');
        }
        await kill();
      }
    } finally {
      rmSync(profile, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 });
    }
    console.log(`browser killed mid-edit: last committed edit there ${kept} times of ${kills}`);
    expect(kept).toBe(kills);
  }, 300_000);

  describe('for one visitor', () => {
    let visit: Visit;

    beforeEach(async () => {
      visit = await opened.visit({ serviceWorkers: 'allow', viewport: { width: 1280, height: 900 } });
      await waitForSheet(visit.page);
      return () => visit.close();
    });

    test('a full storage is said, the copy can be had, and editing goes on and is saved by itself once there is room', async () => {
      const { page, context } = visit;
      const browser = await context.newCDPSession(page);
      const origin = new URL(opened.address).origin;
      await browser.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
      await typeInto(page, 'Weight as bought', '160 g');
      await waitForKept(page, 'unsaved');
      expect(await message(page).textContent()).toContain('no room left');
      expect(await readCell(page, 'Weight as bought')).toContain('160 g');
      const [file] = await Promise.all([
        page.waitForEvent('download'),
        page.locator('.kept-actions').getByRole('button', { name: 'Download a copy' }).click(),
      ]);
      const text = await file.createReadStream().then(async (stream) => (await stream.toArray()).join(''));
      expect(text).toContain('"160 g"');
      await typeInto(page, 'Weight as bought', '170 g');
      expect(await readCell(page, 'Weight as bought')).toContain('170 g');
      await browser.send('Storage.overrideQuotaForOrigin', { origin });
      // The browser looks at what room there is only every so often.
      await expect
        .poll(() => page.locator('[data-kept]').getAttribute('data-kept'), { timeout: 45_000, interval: 500 })
        .toBe('saved');
      expect(await message(page).count()).toBe(0);
      await page.reload();
      await waitForSheet(page);
      expect(await readCell(page, 'Weight as bought')).toContain('170 g');
    });

    test('what is deleted while the page is open is said to be saved nowhere, and saved again by the next edit', async () => {
      const { page } = visit;
      await typeInto(page, 'Weight as bought', '160 g');
      await waitForKept(page);
      await page.evaluate(
        () =>
          new Promise((resolve, reject) => {
            const request = indexedDB.deleteDatabase('jarwright');
            request.onsuccess = resolve;
            request.onerror = reject;
          }),
      );
      await waitForKept(page, 'unsaved');
      expect(await message(page).textContent()).toContain('has been deleted');
      await typeInto(page, 'Weight as bought', '165 g');
      await waitForKept(page);
      expect(await message(page).count()).toBe(0);
      await page.reload();
      await waitForSheet(page);
      expect(await readCell(page, 'Weight as bought')).toContain('165 g');
    });

    test.each([
      ['no text', 17],
      ['half a text', '{"version":2,"batch'],
      ['no sheet', '[]'],
      ['a sheet with a hole', JSON.stringify({ ...demo, batches: [{ id: 'b1' }] })],
    ])('a damaged record, %s, is put aside and the last good state opens in its place', async (_, damage) => {
      const { page } = visit;
      await typeInto(page, 'Weight as bought', '150 g');
      await waitForKept(page);
      await typeInto(page, 'Weight as bought', '160 g');
      await waitForKept(page);
      await writeNewest(page, damage);
      await page.reload();
      await waitForSheet(page);
      expect(await readCell(page, 'Weight as bought')).toContain('150 g');
      expect(await message(page).textContent()).toContain('put aside');
      expect(await readRecords(page)).toMatchObject({ aside: [{ found: damage }] });
      await openPart(page, 'Paper');
      await page.locator('.kept > summary').click();
      await page.getByRole('heading', { name: 'Put aside' }).waitFor();
      await typeInto(page, 'Weight as bought', '180 g');
      await waitForKept(page);
      await page.reload();
      await waitForSheet(page);
      expect(await readCell(page, 'Weight as bought')).toContain('180 g');
      expect(await message(page).count()).toBe(0);
    });

    test('what a newer version has saved is shown, can’t be edited, and stays as it is', async () => {
      const { page } = visit;
      await typeInto(page, 'Weight as bought', '150 g');
      await waitForKept(page);
      const [last] = (await readRecords(page)).states.slice(-1);
      const newer = String(last?.[1]).replace('"version":2', '"version":99,"new":"part"').replace('150 g', '155 g');
      await writeNewest(page, newer, true);
      await page.reload();
      await waitForSheet(page);
      expect(await message(page).textContent()).toContain('newer version');
      const before = await readCell(page, 'Weight as bought');
      await findCell(page, 'Weight as bought').click();
      await page.keyboard.type('5 g');
      await page.keyboard.press('Enter');
      await page.keyboard.press('Delete');
      expect(await readCell(page, 'Weight as bought')).toBe(before);
      expect(await page.getByRole('combobox', { name: 'Kind of jar' }).isDisabled()).toBe(true);
      expect((await readRecords(page)).states.at(-1)?.[1]).toBe(newer);
    });

    test('a network cut after a visit leaves the sheet as it was, and edits go on being kept', async () => {
      const { page, context } = visit;
      await page.evaluate(() => navigator.serviceWorker.ready);
      await expect.poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
      await typeInto(page, 'Weight as bought', '150 g');
      await waitForKept(page);
      await context.setOffline(true);
      await page.reload();
      await waitForSheet(page);
      expect(await readCell(page, 'Weight as bought')).toContain('150 g');
      await typeInto(page, 'Weight as bought', '160 g');
      await waitForKept(page);
      await page.reload();
      await waitForSheet(page);
      expect(await readCell(page, 'Weight as bought')).toContain('160 g');
    });

    test('a sheet left by an earlier version of the page is taken over, and what it had put aside', async () => {
      const { page, context } = visit;
      const text = JSON.stringify({ ...demo, batches: [{ ...demo.batches[0], name: 'Left behind' }] });
      await page.evaluate((left) => {
        localStorage.setItem('jarwright.sheet', left);
        localStorage.setItem('jarwright.sheet.kept', '{"half');
      }, text);
      await page.reload();
      await waitForSheet(page);
      await page.getByRole('heading', { name: 'Left behind', exact: true }).waitFor();
      expect(await page.evaluate(() => Object.keys(localStorage))).toEqual([keptMark]);
      const records = await readRecords(page);
      expect(records.states).toEqual([[1, text]]);
      expect(records.aside).toMatchObject([{ found: '{"half' }]);
      expect(context.pages().length).toBe(1);
    });
  });

  describe('where the browser keeps nothing', () => {
    test.each([
      [
        'throws',
        () =>
          Object.defineProperty(window, 'indexedDB', {
            get: () => {
              throw new DOMException('no', 'SecurityError');
            },
          }),
      ],
      ['has none', () => Object.defineProperty(window, 'indexedDB', { value: undefined })],
      [
        'refuses to open',
        () => {
          IDBFactory.prototype.open = () => {
            throw new DOMException('no', 'InvalidStateError');
          };
        },
      ],
    ])('as it %s, the page says so, works on, and asks before it is left', async (_, block) => {
      const { page, context, close } = await opened.visit();
      await context.addInitScript(block);
      await page.goto(opened.address);
      await waitForPage(page);
      await waitForKept(page, 'unsaved');
      expect(await message(page).textContent()).toContain('keep nothing');
      await typeInto(page, 'Weight as bought', '150 g');
      expect(await readCell(page, 'Weight as bought')).toContain('150 g');
      await waitForKept(page, 'unsaved');
      expect(await message(page).textContent()).toContain('keep nothing');
      expect(await message(page).textContent()).not.toContain('still there');
      const again = page.getByRole('button', { name: 'Try to save again' });
      await again.click();
      await waitForKept(page, 'unsaved');
      expect(await message(page).textContent()).toContain('keep nothing');
      expect(await page.getByRole('button', { name: 'Download a copy' }).count()).toBe(1);
      const asked = page.waitForEvent('dialog');
      const leaving = page.close({ runBeforeUnload: true });
      const dialog = await asked;
      expect(dialog.type()).toBe('beforeunload');
      await dialog.accept();
      await leaving;
      await close();
    });
  });
});
