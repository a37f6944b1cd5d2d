import { gzipSync } from 'node:zlib';
import { parseSync } from 'vite';

/**
 * What the scripts that show the sheet and take its first edit may weigh at most, in bytes. The origins' texts are 3 kB of
 * it, and stay beside their values: sent for apart, they would leave two places for one fact. Twelve sources of soy, cereals,
 * butters and their like weigh 3.8 kB, their notes and origins included; a source of the cook's own and how a carton waits
 * 0.8 kB; the room that a jar keeps and the range of a pressure 0.9 kB; what is kept beside the batches, its
 * parts and starters without grains 2 kB.
 */
export const limit = 84_000;
const aim = 70_000;

/**
 * Gives the gzip size, in bytes, of every script that a page loads before anyone touches it: those it names and, through
 * static imports, those they name. What is loaded later, on demand, is not counted.
 */
export function weighScripts(read: (path: string) => string): number {
  return [...firstScripts(read).values()].reduce((sum, size) => sum + size, 0);
}

/** Those scripts one by one, each with its size. */
export function firstScripts(read: (path: string) => string): ReadonlyMap<string, number> {
  const page = read('index.html');
  const tags = page.match(/<script\b[^>]*\bsrc=[^>]*>|<link\b[^>]*\brel="?modulepreload\b[^>]*>/g) ?? [];
  const waiting = tags.map((tag) => resolve(tag.match(/\b(?:src|href)="([^"]+)"/)?.[1] ?? tag, 'index.html'));
  const sizes = new Map<string, number>();
  for (const path of waiting) {
    if (sizes.has(path)) continue;
    const code = read(path);
    sizes.set(path, gzipSize(code));
    const { staticImports, staticExports } = parseSync(path, code).module;
    const exportedFrom = staticExports.flatMap(({ entries }) => entries.map((entry) => entry.moduleRequest?.value));
    for (const imported of [...staticImports.map(({ moduleRequest }) => moduleRequest.value), ...exportedFrom]) {
      if (imported !== undefined) waiting.push(resolve(imported, path));
    }
  }
  if (sizes.size === 0) throw new Error('index.html names no script, so there is nothing to weigh');
  return sizes;
}

/** What a text weighs on its way, in bytes. */
export function gzipSize(text: string): number {
  return gzipSync(text, { level: 9 }).length;
}

function resolve(reference: string, from: string): string {
  return new URL(reference, `http://localhost/${from}`).pathname.slice(1);
}

/** The line that says what the scripts weigh, in bytes, of what they may. */
export function writeWeight(size: number): string {
  const line = `script, gzip: ${(size / 1000).toFixed(1)} kB of ${limit / 1000}`;
  return size > aim ? `${line}, over the aim of ${aim / 1000}` : line;
}
