import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect } from 'vitest';
import { waitForPage } from './open-part';
import { noFaults, type OpenedPage, openPage, type Visit } from './page';

/**
 * A new visitor at a desk for each test of a file, once the whole page is there; after it no fault may have been
 * collected. Gives the page of the test that runs.
 */
export function visitEach(): () => Page {
  let opened: OpenedPage;
  let visit: Visit;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  beforeEach(async () => {
    visit = await opened.visit({ viewport: { width: 1280, height: 900 } });
    await waitForPage(visit.page);
  });

  afterEach(async () => {
    expect(visit.faults).toEqual(noFaults);
    await visit.close();
  });

  return () => visit.page;
}
