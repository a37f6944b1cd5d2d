import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { type BrowserContext, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { preview } from 'vite';
import { findChromium } from './chromium';

type ServingOptions = {
  /** The folder of the built page; by default the one named by DIST, and `dist` where that is not set. */
  readonly dist?: string;
  /** The folder of the host it is served from, with a slash at both ends; `/` by default. */
  readonly base?: string;
};

/**
 * Viewport, colour scheme, reduced motion, locale, time zone and the like; and what follows the page's address. The
 * offline worker is kept out unless it is asked for: at each first visit it fetches every file of the page.
 */
export type VisitOptions = Omit<BrowserContextOptions, 'storageState' | 'baseURL'> & { readonly at?: string };

/** What went wrong behind the page's back, in words, across all windows of a visit. */
export type Faults = {
  readonly consoleErrors: string[];
  readonly pageErrors: string[];
  readonly failedRequests: string[];
  readonly foreignRequests: string[];
};

/** What `faults` equals when all is well. */
export const noFaults: Faults = { consoleErrors: [], pageErrors: [], failedRequests: [], foreignRequests: [] };

/** One visitor: a context with empty storage and the page opened in it. */
export type Visit = {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly faults: Faults;
  readonly close: () => Promise<void>;
};

export type OpenedPage = {
  readonly address: string;
  /** Opens the page as a new visitor. */
  readonly visit: (options?: VisitOptions) => Promise<Visit>;
  readonly close: () => Promise<void>;
};

// The browser's own errands would reach for the network, and no test may depend on what answers there.
const quietly = [
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  '--disable-quic',
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1',
];

/**
 * Serves the built page on a free port of this machine and starts one browser, for all tests of a file. Throws where
 * the page is not built or no browser is installed.
 */
export async function openPage({
  dist = process.env.DIST ?? 'dist',
  base = '/',
}: ServingOptions = {}): Promise<OpenedPage> {
  const outDir = resolve(dist);
  if (!existsSync(`${outDir}/index.html`)) throw new Error(`${dist} holds no page: run npm run build first`);
  const server = await preview({
    configFile: false,
    // A missing file must answer 404; as a single-page app it would answer with the page.
    appType: 'mpa',
    base,
    build: { outDir },
    logLevel: 'error',
    preview: { host: '127.0.0.1', port: 0 },
  });
  const listening = server.httpServer.address();
  if (listening === null || typeof listening === 'string') throw new Error('the page is served on no port');
  const address = `http://127.0.0.1:${listening.port}${base}`;
  const browser = await launch().catch(async (error: unknown) => {
    await server.close();
    throw error;
  });
  return {
    address,
    visit: async ({ at = '', ...options } = {}) => {
      const context = await browser.newContext({ serviceWorkers: 'block', ...options });
      const faults = collectFaults(context, new URL(address).origin);
      const page = await context.newPage();
      await page.goto(address + at);
      return { page, context, faults, close: () => context.close() };
    },
    close: async () => {
      await browser.close();
      await server.close();
    },
  };
}

async function launch() {
  const executablePath = findChromium();
  if (executablePath === undefined)
    throw new Error('no browser is installed: describe the suite with describeInBrowser');
  // Chromium refuses to start its sandbox as root; everyone else keeps it.
  return chromium.launch({ executablePath, args: quietly, chromiumSandbox: process.getuid?.() !== 0 });
}

function collectFaults(context: BrowserContext, home: string): Faults {
  const faults: Faults = { consoleErrors: [], pageErrors: [], failedRequests: [], foreignRequests: [] };
  context.on('console', (message) => {
    if (message.type() === 'error') faults.consoleErrors.push(`${message.text()} (${message.location().url})`);
  });
  context.on('weberror', (error) => faults.pageErrors.push(error.error().message));
  context.on('request', (request) => {
    const { origin, protocol } = new URL(request.url());
    if (/^(http|ws)s?:$/.test(protocol) && origin !== home) faults.foreignRequests.push(request.url());
  });
  context.on('requestfailed', (request) => {
    faults.failedRequests.push(`${request.url()} ${request.failure()?.errorText ?? ''}`);
  });
  context.on('response', (response) => {
    if (response.status() >= 400) faults.failedRequests.push(`${response.url()} ${response.status()}`);
  });
  return faults;
}
