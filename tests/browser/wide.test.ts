import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { demo } from '../../src/batch/document/demo';
import type { Batch, SheetDocument } from '../../src/batch/document/document';
import { blendSweeteners, measureCell, typeCell } from '../../src/batch/edits/edits';
import { partList } from '../../src/ui/page/part-list';
import { numericRowIds } from '../batches';
import { describeInBrowser } from './chromium';
import { waitForKept, waitForSheet, writeNewest } from './kept-page';
import { openPart, showAllFigures } from './open-part';
import { noFaults, type OpenedPage, openPage } from './page';
import { screenshot } from './screenshots';
import { typeInto } from './sheet-page';

/** A sheet in which whatever can be long is, without a place to break it. */
function longSheet(sign: string): SheetDocument {
  const long = (length: number) => sign.repeat(length);
  const names = [long(200), long(199)];
  let document: SheetDocument = {
    ...demo,
    batches: names.map(
      (name, at): Batch => ({
        ...(demo.batches[0] ?? expect.fail('no batch')),
        ...{ id: `b${at + 1}`, name, onHand: { source: { text: long(200), amount: null, kind: 'mass' } } },
        ...{ when: { by: 'start', at: '2126-11-28T08:00' }, heat: { what: 'milk', temperature: 72, minutes: 999 } },
      }),
    ),
    ownFoods: [{ name: long(200), grams: 1e300, millilitres: 1 }],
    log: names.map((name, at) => ({
      ...{ batch: `b${at + 1}`, name, at: `2126-11-28T08:0${at}`, found: 'ready' as const, note: long(500) },
      ...{ hours: 12, expected: 12, temperature: 1e300, acidity: 4 },
    })),
    yours: { 'almond.uptake': { value: 1e300, how: 'typed' } },
  };
  for (const row of numericRowIds) document = typeCell(document, 'b1', row, long(200));
  for (const row of ['soakedMass', 'milkVolume'] as const) document = measureCell(document, 'b1', row, long(200));
  return blendSweeteners(document, 'b1', [
    { id: 'honey', share: 0.5 },
    { id: 'mapleSyrup', share: 0.5 },
  ]);
}

describeInBrowser('a sheet of long unbroken names, notes and digits', () => {
  let opened: OpenedPage;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  /** What reaches beyond the screen and is not scrolled by itself or cut by what it is in. */
  async function findWide(page: Page): Promise<readonly string[]> {
    return page.evaluate(() => {
      const { clientWidth, scrollWidth } = document.documentElement;
      const isHeld = (element: Element): boolean => {
        const { parentElement } = element;
        if (parentElement === null || parentElement === document.body) return false;
        return getComputedStyle(parentElement).overflowX !== 'visible' || isHeld(parentElement);
      };
      const wide = [...document.querySelectorAll('body *')].filter(
        (element) => element.getBoundingClientRect().right > clientWidth + 1 && !isHeld(element),
      );
      const named = wide.slice(0, 12).map(({ tagName, className }) => `${tagName}.${className}`);
      return scrollWidth > clientWidth || wide.length > 0 ? [`${scrollWidth} of ${clientWidth} px`, ...named] : [];
    });
  }

  test.each([
    ['W', 320],
    ['8', 320],
    ['W', 1280],
  ] as const)('of %s is no wider than a screen of %d px', async (sign, width) => {
    const { page, faults, close } = await opened.visit({ viewport: { width, height: 640 } });
    await waitForSheet(page);
    await typeInto(page, 'Weight as bought', '150 g');
    await waitForKept(page);
    await writeNewest(page, JSON.stringify(longSheet(sign)), true);
    await page.reload();
    await waitForSheet(page);
    await showAllFigures(page);
    expect(await findWide(page)).toEqual([]);
    await screenshot(page, `long-${sign}-${width}`);
    for (const { name } of Object.values(partList)) {
      await openPart(page, name);
      await page.evaluate(() => {
        for (const fold of document.querySelectorAll('details')) fold.open = true;
      });
      expect(await findWide(page), name).toEqual([]);
    }
    expect(faults).toEqual(noFaults);
    await close();
  });
});
