import type { Page } from 'playwright-core';
import { demo, startBatch } from '../../src/batch/document/demo';
import type { SheetDocument } from '../../src/batch/document/document';
import { earlierKey } from '../../src/batch/keeping/storage';
import { type OpenedPage, openPage, type Visit } from '../browser/page';

/** How many batches the page holds while it is timed. */
export const count = 50;

/** The cell that is typed into, of the first batch. */
export const edited = cellOf('headspaceDepth');
/** A cell of the line that is typed into, which shows what comes of it. */
export const editedLine = cellOf('headspaceVolume');

function cellOf(row: string): string {
  return `[data-quantity="${row}"][data-batch="b0"]`;
}

/** What is typed in a round: never what stands there. */
export function depthAt(round: number): string {
  return `${3 + (round % 4) / 2} cm`;
}

/** The built page of a folder with many batches, by one visitor at a desk. */
export function openMany(dist?: string): Promise<{ readonly opened: OpenedPage; readonly visit: Visit }> {
  return openWith(manyBatches(count), dist);
}

/** A sheet of so many batches. */
export function manyBatches(many: number): SheetDocument {
  return { ...demo, batches: Array.from({ length: many }, (_, at) => startBatch(`b${at}`, `Batch ${at}`)) };
}

/** The built page of a folder with a sheet of which the first batch is b0. */
export async function openWith(
  sheet: SheetDocument,
  dist?: string,
): Promise<{ readonly opened: OpenedPage; readonly visit: Visit }> {
  const opened = await openPage(dist === undefined ? {} : { dist });
  const visit = await opened.visit({ viewport: { width: 1280, height: 900 } });
  const text = JSON.stringify(sheet);
  await visit.page.evaluate(([at, saved]) => localStorage.setItem(at, saved), [earlierKey, text] as const);
  await visit.page.reload();
  await visit.page.locator(edited).waitFor();
  await settle(visit.page);
  return { opened, visit };
}

/** Waits until nothing has been drawn for a while. */
export async function settle(page: Page): Promise<void> {
  await page.evaluate(async () => {
    let isQuiet = false;
    const observer = new MutationObserver(() => {
      isQuiet = false;
    });
    observer.observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
    while (!isQuiet) {
      isQuiet = true;
      await new Promise((resolve) => setTimeout(resolve, 300));
    }
    observer.disconnect();
  });
}
