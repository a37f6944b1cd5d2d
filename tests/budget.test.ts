import { existsSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';
import { beforeAll, expect, test } from 'vitest';
import { limit, weighScripts, writeWeight } from './weigh-scripts';

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
  console.log(writeWeight(size));
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
