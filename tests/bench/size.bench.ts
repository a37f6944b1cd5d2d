import { readFileSync } from 'node:fs';
import { describe } from 'vitest';
import { firstScripts, gzipSize, weighScripts, writeWeight } from '../weigh-scripts';
import { report } from './in-turn';

const dist = process.env.DIST ?? 'dist';
const read = (path: string): string => readFileSync(`${dist}/${path}`, 'utf8');

interface Piece {
  readonly file: string;
  readonly imports?: readonly string[];
  readonly isDynamicEntry?: boolean;
}

/** What each script that is asked for later brings, in bytes of gzip: itself and what it imports, without what is there already. */
function weighLater(): readonly (readonly [source: string, bytes: number])[] {
  const pieces: Readonly<Record<string, Piece>> = JSON.parse(read('asset-manifest.json'));
  const reach = (id: string, into: Set<string>): Set<string> => {
    const piece = pieces[id];
    if (piece === undefined || into.has(piece.file)) return into;
    into.add(piece.file);
    for (const imported of piece.imports ?? []) reach(imported, into);
    return into;
  };
  const there = firstScripts(read);
  return Object.entries(pieces)
    .filter(([, { isDynamicEntry }]) => isDynamicEntry)
    .map(([id]) => {
      const files = [...reach(id, new Set())].filter((file) => !there.has(file));
      return [id, files.reduce((sum, file) => sum + gzipSize(read(file)), 0)] as const;
    })
    .sort(([, a], [, b]) => b - a);
}

describe('what the page loads', () => {
  report('before its first edit, and later', () => {
    const later = weighLater().map(([id, bytes]) => `  ${(bytes / 1000).toFixed(1)} kB ${id}`);
    return [`to the first edit: ${writeWeight(weighScripts(read))}; then, when asked for:`, ...later].join('\n');
  });
});
