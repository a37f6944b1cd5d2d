import { existsSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { build, parseSync } from 'vite';
import { beforeAll, expect, test } from 'vitest';

const limit = 60_000;
const aim = 45_000;

/**
 * Gives the gzip size, in bytes, of every script that a page loads before anyone touches it: those it names and, through
 * static imports, those they name. What is loaded later, on demand, is not counted.
 */
function weighScripts(read: (path: string) => string): number {
  const page = read('index.html');
  const tags = page.match(/<script\b[^>]*\bsrc=[^>]*>|<link\b[^>]*\brel="?modulepreload\b[^>]*>/g) ?? [];
  const waiting = tags.map((tag) => resolve(tag.match(/\b(?:src|href)="([^"]+)"/)?.[1] ?? tag, 'index.html'));
  const sizes = new Map<string, number>();
  for (const path of waiting) {
    if (sizes.has(path)) continue;
    const code = read(path);
    sizes.set(path, gzipSync(code, { level: 9 }).length);
    const { staticImports, staticExports } = parseSync(path, code).module;
    const exportedFrom = staticExports.flatMap(({ entries }) => entries.map((entry) => entry.moduleRequest?.value));
    for (const imported of [...staticImports.map(({ moduleRequest }) => moduleRequest.value), ...exportedFrom]) {
      if (imported !== undefined) waiting.push(resolve(imported, path));
    }
  }
  if (sizes.size === 0) throw new Error('index.html names no script, so there is nothing to weigh');
  return [...sizes.values()].reduce((sum, size) => sum + size, 0);
}

function resolve(reference: string, from: string): string {
  return new URL(reference, `http://localhost/${from}`).pathname.slice(1);
}

beforeAll(async () => {
  if (existsSync('dist/index.html')) return;
  // The test runner's own mode would keep development checks in the build and weigh those too.
  const mode = process.env.NODE_ENV ?? 'test';
  process.env.NODE_ENV = 'production';
  await build({ base: './', logLevel: 'warn', build: { manifest: 'asset-manifest.json' } });
  process.env.NODE_ENV = mode;
}, 60_000);

test('the built page stays within its budget', () => {
  const size = weighScripts((path) => readFileSync(`dist/${path}`, 'utf8'));
  const line = `script, gzip: ${(size / 1000).toFixed(1)} kB of ${limit / 1000}`;
  console.log(size > aim ? `${line}, over the aim of ${aim / 1000}` : line);
  expect(size).toBeLessThanOrEqual(limit);
});

test('scripts named, preloaded and imported count once each, those loaded on demand do not', () => {
  const files: Record<string, string> = {
    'index.html':
      '<script type="module" crossorigin src="./assets/a.js"></script><link rel="modulepreload" href="./assets/b.js">',
    'assets/a.js': 'import "./b.js"; import{c}from"./c.js"; import("./later.js"); c();',
    'assets/b.js': 'export*from"./d.js";',
    'assets/c.js': 'export const c = () => "c";',
    'assets/d.js': 'import "./a.js";',
  };
  const counted = ['assets/a.js', 'assets/b.js', 'assets/c.js', 'assets/d.js'];
  const expected = counted.map((path) => gzipSync(files[path] ?? '', { level: 9 }).length);
  const read = (path: string) => files[path] ?? expect.fail(`${path} is not needed at first`);
  expect(weighScripts(read)).toBe(expected.reduce((sum, size) => sum + size, 0));
});

test('a page without scripts is refused rather than light', () => {
  expect(() => weighScripts(() => '<main>Jarwright</main>')).toThrow('nothing to weigh');
});
