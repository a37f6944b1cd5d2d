import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { describe, expect, test } from 'vitest';

const names = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'chrome',
  'microsoft-edge',
  'microsoft-edge-stable',
  'msedge',
];

const usualPlaces = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ...[process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA].flatMap((folder) =>
    folder === undefined
      ? []
      : [
          join(folder, 'Google/Chrome/Application/chrome.exe'),
          join(folder, 'Chromium/Application/chrome.exe'),
          join(folder, 'Microsoft/Edge/Application/msedge.exe'),
        ],
  ),
];

const missing =
  'no Chromium-family browser is installed: install one (Debian: apt-get install chromium) or name its program in CHROMIUM_PATH';

/**
 * Gives the program of an installed Chromium-family browser, or `undefined` where there is none. CHROMIUM_PATH decides
 * alone when it is set, and throws when it names no program, so that a slip of the pen does not test another browser.
 */
export function findChromium(): string | undefined {
  const named = process.env.CHROMIUM_PATH;
  if (named !== undefined && named !== '') {
    if (!isProgram(named)) throw new Error(`CHROMIUM_PATH names no program: ${named}`);
    return named;
  }
  const ending = process.platform === 'win32' ? '.exe' : '';
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  const onPath = names.flatMap((name) => folders.map((folder) => join(folder, name + ending)));
  return [...onPath, ...usualPlaces].find(isProgram);
}

/**
 * Describes a suite that needs a browser. Without one it fails under CI, where a skipped suite would pass unseen; on a
 * person's own machine it says so and skips.
 */
export function describeInBrowser(name: string, body: () => void): void {
  if (findChromium() !== undefined) {
    describe(name, body);
  } else if (isUnderCI()) {
    describe(name, () => {
      test('has a browser to run in', () => expect.fail(missing));
    });
  } else {
    console.warn(`\n!!! THE BROWSER SUITE "${name}" DID NOT RUN: ${missing}\n`);
    describe.skip(name, body);
  }
}

function isUnderCI(): boolean {
  const { CI } = process.env;
  return CI !== undefined && CI !== '' && CI !== 'false';
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
