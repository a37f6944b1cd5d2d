import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { describeInBrowser } from './chromium';
import { message, waitForKept, waitForSheet } from './kept-page';
import { waitForPage } from './open-part';
import { type OpenedPage, openPage } from './page';
import { findCell, readCell } from './sheet-page';

/** The worker forgets an older build within some seconds, as the page that used it takes its time to go. */
const aWhile = { timeout: 10_000 };

async function waitForWorker(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const workers = navigator.serviceWorker;
    // Registering twice is registering once; this line can go when the page registers its worker by itself.
    await workers.register('./offline-worker.js', { updateViaCache: 'none' });
    await workers.ready;
    if (workers.controller === null) {
      await new Promise((resolve) => workers.addEventListener('controllerchange', resolve, { once: true }));
    }
  });
}

function isReachable(page: Page): Promise<boolean> {
  return page.evaluate(() =>
    fetch('./asset-manifest.json').then(
      () => true,
      () => false,
    ),
  );
}

function listCaches(page: Page): Promise<string[]> {
  return page.evaluate(() => caches.keys());
}

/** Whether the newest build that is kept is kept as a whole. */
function isComplete(page: Page, address: string): Promise<boolean> {
  return page.evaluate(async (opening) => {
    const newest = (await caches.keys()).filter((name) => name.startsWith('jarwright ')).at(-1);
    return newest !== undefined && (await caches.match(opening, { cacheName: newest, ignoreVary: true })) !== undefined;
  }, address);
}

/** Turns a built page into a next build of it, which brings one more script. */
function rebuild(dist: string): void {
  writeFileSync(join(dist, 'next.js'), 'document.documentElement.dataset.build = "next";');
  change(join(dist, 'index.html'), (page) =>
    page.replace('</head>', '<script type="module" src="./next.js"></script>$&'),
  );
  change(join(dist, 'asset-manifest.json'), (list) => list.replace('{', '{ "next": { "file": "next.js" },'));
}

/** Turns a built page into a next build of it in which every file has another name, and the former ones are gone. */
function renameAll(dist: string): string[] {
  const assets = readdirSync(join(dist, 'assets'));
  const renamed = assets.map((name) => [name, name.replace(/\.(\w+)$/, '-next.$1')] as const);
  for (const [name, next] of renamed) renameSync(join(dist, 'assets', name), join(dist, 'assets', next));
  const texts = [...renamed.map(([, next]) => `assets/${next}`), 'index.html', 'asset-manifest.json'];
  for (const path of texts) {
    change(join(dist, path), (text) => renamed.reduce((all, [name, next]) => all.replaceAll(name, next), text));
  }
  return assets;
}

function change(path: string, edit: (text: string) => string): void {
  writeFileSync(path, edit(readFileSync(path, 'utf8')));
}

describeInBrowser('without a network', () => {
  describe.each(['/', '/shelf/'])('served from %s', (base) => {
    let opened: OpenedPage;
    let dist: string;
    const visit = () => opened.visit({ serviceWorkers: 'allow' });

    beforeAll(async () => {
      dist = mkdtempSync(join(tmpdir(), 'jarwright-'));
      cpSync(process.env.DIST ?? 'dist', dist, { recursive: true });
      opened = await openPage({ base, dist });
    });

    afterAll(async () => {
      await opened?.close();
      rmSync(dist, { recursive: true, force: true });
    });

    test('the page still opens, by its plain address and by a shared one', async () => {
      const { page, context, close } = await visit();
      await waitForWorker(page);
      expect(await isReachable(page)).toBe(true);
      await context.setOffline(true);
      expect(await isReachable(page)).toBe(false);
      await page.reload();
      await waitForPage(page);
      await page.goto(`${opened.address}?from=a-friend#batch`);
      await waitForPage(page);
      await close();
    });

    test('a line too slow to bring the page is not waited for', async () => {
      const { page, context, close } = await visit();
      await waitForWorker(page);
      const never = () => new Promise<void>(() => {});
      await context.route(opened.address, never);
      await page.goto(opened.address);
      await waitForSheet(page);
      await close();
    });

    test.each([503, 404, 403])('a host that answers %i to the page is not believed', async (status) => {
      const { page, context, close } = await visit();
      await waitForWorker(page);
      await waitForSheet(page);
      const refuse = (path: string) => context.route(path, (route) => route.fulfill({ status, body: 'Not today.' }));
      await refuse(`${opened.address}*`);
      for (const more of ['', '?from=a-friend#batch', 'index.html']) {
        await page.goto('about:blank');
        const answer = await page.goto(opened.address + more);
        expect(answer?.status()).toBe(200);
        await waitForSheet(page);
      }
      // There is no such file, cached or not, and the sheet would not work under its address.
      const missing = await page.goto(`${opened.address}nothing-here.html`);
      expect(missing?.status()).toBe(status);
      await close();
    });

    test('has its icons, with and without a network, as large as the manifest says', async () => {
      const { page, context, close } = await visit();
      await waitForWorker(page);
      for (const isOffline of [false, true]) {
        await context.setOffline(isOffline);
        const icons = await page.evaluate(async () => {
          const link = document.querySelector<HTMLLinkElement>('link[rel=manifest]')?.href ?? '';
          const manifest = await fetch(link).then((answer) => answer.json());
          const touch = document.querySelector<HTMLLinkElement>('link[rel=apple-touch-icon]')?.href ?? '';
          const all = [
            ...manifest.icons.map(({ src, sizes, purpose }: Record<string, string>) => ({
              src: new URL(src ?? '', link).href,
              sizes,
              purpose,
            })),
            { src: touch, sizes: '180x180', purpose: 'touch' },
          ];
          return Promise.all(
            all.map(async ({ src, sizes, purpose }) => {
              const picture = new Image();
              picture.src = src;
              await picture.decode();
              return [sizes, purpose, `${picture.naturalWidth}x${picture.naturalHeight}`];
            }),
          );
        });
        expect(icons.map(([sizes, purpose]) => [sizes, purpose])).toEqual([
          ['any', 'any'],
          ['192x192', 'any'],
          ['512x512', 'any'],
          ['512x512', 'maskable'],
          ['180x180', 'touch'],
        ]);
        for (const [sizes, , real] of icons) if (sizes !== 'any') expect(real).toBe(sizes);
      }
      await close();
    });

    test('a new build opens from the visit after the one that found it, and is then the only one kept', async () => {
      const { page, context, close } = await visit();
      await waitForWorker(page);
      await page.evaluate(() => caches.open('of another page on this host'));
      const [before] = await listCaches(page);
      rebuild(dist);
      await page.reload();
      expect(await page.locator('html').getAttribute('data-build')).toBeNull();
      await expect.poll(async () => (await listCaches(page)).length, aWhile).toBe(3);
      await expect.poll(() => isComplete(page, opened.address), aWhile).toBe(true);
      // The page that makes way is still there for a while when the new build is opened.
      await page.evaluate(() =>
        window.addEventListener('pagehide', () => {
          const gone = performance.now() + 1500;
          while (performance.now() < gone);
        }),
      );
      await page.reload();
      await expect.poll(async () => (await listCaches(page)).length, aWhile).toBe(2);
      expect(await listCaches(page)).toContain('of another page on this host');
      expect(await listCaches(page)).not.toContain(before);
      await context.setOffline(true);
      await page.reload();
      await waitForPage(page);
      expect(await page.locator('html').getAttribute('data-build')).toBe('next');
      await close();
    });

    test('a page and a list of files that are of two builds, as while the host is brought up to date, are not kept', async () => {
      const { page, context, close } = await visit();
      await waitForWorker(page);
      const before = await listCaches(page);
      const list = readFileSync(join(dist, 'asset-manifest.json'), 'utf8');
      const asked: string[] = [];
      context.on('request', (request) => {
        if (request.serviceWorker() !== null) asked.push(request.url());
      });
      change(join(dist, 'index.html'), (text) =>
        text.replace('</head>', '<script type="module" src="./assets/stranger.js"></script>$&'),
      );
      change(join(dist, 'asset-manifest.json'), (text) => `${text} `);
      await page.reload();
      await waitForSheet(page);
      await expect.poll(() => asked).toContain(opened.address);
      expect(asked.filter((address) => address.endsWith('.js'))).toEqual([]);
      expect(await listCaches(page)).toEqual(before);
      change(join(dist, 'index.html'), (text) => text.replace(/<script[^>]*stranger.js"><\/script>/, ''));
      writeFileSync(join(dist, 'asset-manifest.json'), list);
      await close();
    });

    test('a new build that comes while a cell is open takes nothing from the page, whose parts all stay', async () => {
      const { page, context, close } = await visit();
      await waitForWorker(page);
      await waitForSheet(page);
      await page.evaluate(() => Reflect.set(window, 'still', 'here'));
      await findCell(page, 'Weight as bought').click();
      await page.keyboard.type('123 g');
      const former = renameAll(dist);

      const other = await context.newPage();
      await other.goto(opened.address);
      await waitForSheet(other);
      await expect.poll(() => isComplete(other, opened.address), aWhile).toBe(true);
      await other.reload();
      await waitForSheet(other);
      expect(await other.locator('script[src*="-next.js"]').count()).toBeGreaterThan(0);
      await expect.poll(async () => (await listCaches(page)).length, aWhile).toBe(2);

      expect(await page.evaluate(() => Reflect.get(window, 'still'))).toBe('here');
      expect(await page.getByRole('textbox', { name: 'Weight as bought', exact: true }).inputValue()).toBe('123 g');
      const answers = await page.evaluate(
        (names) => Promise.all(names.map((name) => fetch(`./assets/${name}`).then(({ ok }) => ok))),
        former,
      );
      expect(answers).toEqual(former.map(() => true));
      await page.keyboard.press('Enter');
      await expect.poll(() => readCell(page, 'Weight as bought')).toContain('123 g');
      await waitForKept(page);
      await expect.poll(() => readCell(other, 'Weight as bought')).toContain('123 g');

      await page.close();
      await expect.poll(() => message(other).count()).toBe(0);
      await other.reload();
      await waitForSheet(other);
      expect(await readCell(other, 'Weight as bought')).toContain('123 g');
      await expect.poll(async () => (await listCaches(other)).length, aWhile).toBe(1);
      await close();
    });
  });
});
