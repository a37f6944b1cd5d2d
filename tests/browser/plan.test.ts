import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { openPart } from './open-part';
import { noFaults, type OpenedPage, openPage, type VisitOptions } from './page';
import { screenshot } from './screenshots';
import { typeInto } from './sheet-page';

const desk = { viewport: { width: 1280, height: 900 }, timezoneId: 'Europe/Berlin', locale: 'en-GB' } as const;
const phone = { ...desk, viewport: { width: 320, height: 640 }, hasTouch: true, isMobile: true } as const;

describeInBrowser('a plan', () => {
  let opened: OpenedPage;

  beforeAll(async () => {
    opened = await openPage();
  });

  afterAll(() => opened?.close());

  async function visit(options: VisitOptions, use: (page: Page) => Promise<void>): Promise<void> {
    const { page, faults, close } = await opened.visit(options);
    await openPart(page, 'Plan');
    await page.clock.setFixedTime(new Date('2026-11-25T10:00:00+01:00'));
    await use(page);
    expect(faults).toEqual(noFaults);
    await close();
  }

  /** The steps of a batch as its list tells them: the time on the wall and what is said. */
  async function readPlan(page: Page, batch: string) {
    const list = page.getByRole('region', { name: `Plan of ${batch}` }).getByRole('listitem');
    const all = await list.evaluateAll((items) =>
      items.map((item) => ({
        at: item.querySelector('time')?.dateTime ?? '',
        title: item.querySelector('b')?.textContent ?? '',
      })),
    );
    return Object.fromEntries(all.map(({ at, title }) => [title, at]));
  }

  /** A batch more, which is named after its source. */
  async function addBatch(page: Page): Promise<void> {
    await page.getByRole('button', { name: '+ Batch' }).click();
    await openPart(page, 'Plan');
  }

  async function planFor(page: Page, by: string, batch: string, at: string): Promise<void> {
    await page.getByRole('combobox', { name: `Plan for ${batch}` }).selectOption({ label: by });
    await page.getByLabel(`${by === 'Start at' ? 'Start' : 'Drink'} ${batch} at`).fill(at);
    await page.getByRole('region', { name: `Plan of ${batch}` }).waitFor();
  }

  test('goes back from the first glass to the soak, out of the quiet hours, and stays over a reload', async () => {
    await visit(desk, async (page) => {
      await typeInto(page, 'Second ferment for', '0');
      await planFor(page, 'To drink at', 'Saturday almond', '2026-11-28T18:00');
      const plan = await readPlan(page, 'Saturday almond');
      expect(plan['Drink the first glass']).toBe('2026-11-28T18:00');
      const soaked = plan['Put it to soak'] ?? '';
      expect(soaked > '2026-11-26T00:00' && soaked < '2026-11-28T00:00').toBe(true);
      const hands = ['Put it to soak', 'Make the milk and set up the jar', 'Strain the grains out'];
      for (const title of hands) {
        const time = plan[title]?.slice(11) ?? '';
        expect(time >= '07:00' && time < '22:00', `${title} at ${time}`).toBe(true);
      }
      // Cold for four hours by then.
      expect((plan['Strain the grains out'] ?? '') <= '2026-11-28T13:45').toBe(true);
      await screenshot(page, 'plan-desk');
      await page.reload();
      await page.getByRole('region', { name: 'Plan of Saturday almond' }).waitFor();
      expect(await readPlan(page, 'Saturday almond')).toEqual(plan);
    });
  });

  test('of a night in which clocks go back waits as many hours as pass', async () => {
    await visit(desk, async (page) => {
      await typeInto(page, 'Second ferment for', '0');
      await typeInto(page, 'Soak for', '8 h');
      await planFor(page, 'Start at', 'Saturday almond', '2027-10-30T07:00');
      const plan = await readPlan(page, 'Saturday almond');
      const item = page.locator('.timeline').getByRole('listitem').filter({ hasText: 'Strain the grains out' }).first();
      const [, hours, minutes] =
        /(\d+)\sh (?:(\d+)\smin )?after the start/.exec((await item.textContent()) ?? '') ?? [];
      const elapsed = Date.parse(`${plan['Strain the grains out']}:00+01:00`) - Date.parse('2027-10-30T07:00:00+02:00');
      expect(Number(hours) * 60 + Number(minutes ?? 0)).toBe(elapsed / 60_000);
    });
  });

  test('with a second ferment longer than it keeps ends on the last day of its label, and says what to do', async () => {
    await visit(desk, async (page) => {
      await typeInto(page, 'Second ferment for', '300 h');
      await planFor(page, 'Start at', 'Saturday almond', '2026-11-28T08:00');
      const region = page.getByRole('region', { name: 'Plan of Saturday almond' });
      await region.getByText(/Planned no further: .* 8 days from straining\. Shorten the second ferment\./).waitFor();
      const plan = await readPlan(page, 'Saturday almond');
      expect(plan['Last day to drink it']?.slice(0, 10)).toBe('2026-12-07');
      expect(plan['Drink the first glass']).toBeUndefined();
      await screenshot(page, 'plan-keeps-no-longer');
    });
  });

  test('says when batches are in each other’s way, and moves one of them', async () => {
    await visit(desk, async (page) => {
      await planFor(page, 'Start at', 'Saturday almond', '2026-11-28T08:00');
      await addBatch(page);
      await planFor(page, 'Start at', 'Almonds', '2026-11-28T08:00');
      const clashes = page.getByRole('heading', { name: 'These get in each other’s way' });
      await clashes.waitFor();
      await screenshot(page, 'plan-clashes');
      await page
        .getByRole('button', { name: /^Start “/ })
        .first()
        .click();
      await expect.poll(() => clashes.count()).toBe(0);
    });
  });

  test('offers another start where work falls into the night', async () => {
    await visit(desk, async (page) => {
      await planFor(page, 'Start at', 'Saturday almond', '2026-11-28T23:00');
      const offer = page.getByRole('button', { name: /^Start at .* later/ });
      await screenshot(page, 'plan-night');
      await offer.click();
      await expect.poll(() => page.getByText('In the quiet hours').count()).toBe(0);
    });
  });

  test.each(['light', 'dark'] as const)('reads as a list on a small %s phone', async (colorScheme) => {
    await visit({ ...phone, colorScheme }, async (page) => {
      await planFor(page, 'To drink at', 'Saturday almond', '2026-11-28T18:00');
      const sticksOut = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(sticksOut).toBe(0);
      expect(await page.locator('.timeline-picture').isVisible()).toBe(false);
      await screenshot(page, `plan-phone-${colorScheme}`);
    });
  });

  test('is printed by itself, drawing and words', async () => {
    await visit(desk, async (page) => {
      await planFor(page, 'To drink at', 'Saturday almond', '2026-11-28T18:00');
      await page.evaluate(() => {
        window.print = () => undefined;
      });
      await page.getByRole('button', { name: 'Print the plan' }).click();
      await page.locator(':root[data-paper="plan"]').waitFor();
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('.timeline-picture').isVisible()).toBe(true);
      expect(await page.getByText('Strain the grains out', { exact: true }).isVisible()).toBe(true);
      expect(await page.getByRole('treegrid').count()).toBe(0);
      expect(await page.getByRole('button').count()).toBe(0);
      await screenshot(page, 'plan-print');
    });
  });

  test('is drawn on a dark desk', async () => {
    await visit({ ...desk, colorScheme: 'dark' }, async (page) => {
      await planFor(page, 'To drink at', 'Saturday almond', '2026-11-28T18:00');
      expect(await page.locator('.timeline-picture').isVisible()).toBe(true);
      await screenshot(page, 'plan-desk-dark');
    });
  });

  test.each([
    [1280, 'en-GB', '26'],
    [1280, 'en-US', '26'],
    [680, 'en-US', '26'],
    [680, 'en-US', '29'],
  ])('has hours, now and its end side by side on a page of %i px in %s, up to day %s', async (width, locale, day) => {
    await visit({ ...desk, viewport: { width, height: 900 }, locale }, async (page) => {
      await planFor(page, 'Start at', 'Saturday almond', '2026-11-25T08:00');
      await addBatch(page);
      await planFor(page, 'Start at', 'Almonds', `2026-11-${day}T08:00`);
      const boxes = await page.locator('.timeline-hours > *').evaluateAll((all) =>
        all
          .map((one) => one.getBoundingClientRect())
          .map(({ left, right }) => ({ left, right }))
          .sort((one, other) => one.left - other.left),
      );
      expect(boxes.length).toBeGreaterThan(6);
      boxes.forEach(({ left }, place) => {
        expect(left).toBeGreaterThan(boxes[place - 1]?.right ?? 0);
      });
      expect(await page.locator('.timeline-now').isVisible()).toBe(true);
      await page.getByText('until Fri 4 Dec →').waitFor();
      await screenshot(page, `plan-hours-${width}-${locale}-${day}`);
    });
  });

  test('of two to drink at the same time keeps that time, and says so', async () => {
    await visit(desk, async (page) => {
      await planFor(page, 'To drink at', 'Saturday almond', '2026-11-28T18:00');
      await addBatch(page);
      await planFor(page, 'To drink at', 'Almonds', '2026-11-28T18:00');
      await page.getByRole('button', { name: /^Start “Almonds” at .*, still ready for Sat 18:00$/ }).click();
      await expect.poll(() => page.getByRole('heading', { name: 'These get in each other’s way' }).count()).toBe(0);
      const glass = (await readPlan(page, 'Almonds'))['Drink the first glass'] ?? '';
      expect(glass > '2026-11-27' && glass <= '2026-11-28T18:00', glass).toBe(true);
    });
  });

  test.each([
    ['America/New_York', 'en-US'],
    ['Asia/Kolkata', 'en-GB'],
    ['Australia/Lord_Howe', 'de-DE'],
  ])('in %s is in its own hours, in words of the page, and so is its calendar file', async (timezoneId, locale) => {
    await visit({ ...desk, timezoneId, locale }, async (page) => {
      await planFor(page, 'To drink at', 'Saturday almond', '2026-11-28T18:00');
      const plan = await readPlan(page, 'Saturday almond');
      expect(plan['Drink the first glass']).toBe('2026-11-28T18:00');
      const region = page.getByRole('region', { name: 'Plan of Saturday almond' });
      expect(await region.textContent()).toMatch(/Sat,? 28 Nov/);
      const waits = page.waitForEvent('download');
      await region.getByRole('button', { name: 'Calendar file' }).click();
      const file = await (await waits).createReadStream();
      const text = (await file.toArray()).join('');
      const glass = text.split('BEGIN:VEVENT').find((event) => /\.drink[.@]/.test(event)) ?? expect.fail('no glass');
      const offset = await page.evaluate(() => new Date('2026-11-28T18:00').toISOString());
      expect(glass).toContain(`DTSTART:${offset.slice(0, 16).replaceAll(/[-:]/g, '')}00Z`);
      expect(text.match(/BEGIN:VALARM/g)).toHaveLength(Object.keys(plan).length);
    });
  });

  test('of a batch past its last day is left out, and of years of batches stays short', async () => {
    await visit(desk, async (page) => {
      await planFor(page, 'Start at', 'Saturday almond', '2026-11-27T08:00');
      await addBatch(page);
      await page.getByRole('combobox', { name: 'Plan for Almonds' }).selectOption({ label: 'Start at' });
      await page.getByLabel('Start Almonds at').fill('2024-02-27T08:00');
      await page.getByText('1 batch is past its last day, and not in the plan').click();
      await page.getByText(/“Almonds”, last day .* 2024/).waitFor();
      expect(await page.locator('.timeline-row').count()).toBe(1);
      expect(await page.getByRole('heading', { name: 'These get in each other’s way' }).count()).toBe(0);
    });
  });
});
