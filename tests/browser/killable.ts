import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { chromium, type Page } from 'playwright-core';
import { findChromium } from './chromium';

export interface Killable {
  readonly page: Page;
  /** Ends the browser as a crash or an empty battery would: at once, with no chance to tidy up. */
  readonly kill: () => Promise<void>;
}

/** Starts a browser of its own on a profile that outlives it, and opens an address in it. */
export async function openKillable(profile: string, address: string): Promise<Killable> {
  const program = findChromium();
  if (program === undefined) throw new Error('no browser is installed');
  const child = spawn(
    program,
    [
      '--headless=new',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1',
      ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
      'about:blank',
    ],
    // A group of its own: what else it starts would outlive it, and still write to its profile.
    { stdio: ['ignore', 'ignore', 'pipe'], detached: true },
  );
  const ended = once(child, 'exit');
  for await (const line of createInterface({ input: child.stderr })) {
    const [, endpoint] = line.match(/DevTools listening on (ws:\S+)/) ?? [];
    if (endpoint === undefined) continue;
    child.stderr.resume();
    const browser = await chromium.connectOverCDP(endpoint);
    const page = browser.contexts()[0]?.pages()[0];
    if (page === undefined) throw new Error('the browser has no page');
    await page.goto(address);
    return {
      page,
      kill: async () => {
        if (child.pid === undefined || process.platform === 'win32') child.kill('SIGKILL');
        else process.kill(-child.pid, 'SIGKILL');
        await ended;
        await browser.close().catch(() => undefined);
      },
    };
  }
  throw new Error('the browser ended before it could be spoken to');
}
