import { readdirSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { expect, test } from 'vitest';

const root = new URL('../../src/ui/', import.meta.url);
const rooms = readdirSync(root, { withFileTypes: true }).filter((entry) => entry.isDirectory());
const filesOf = (room: string, ending: string): readonly string[] =>
  readdirSync(new URL(`${room}/`, root)).filter((name) => name.endsWith(ending));
const textOf = (path: string): string => readFileSync(new URL(path, root), 'utf8');

/** The classes that a style sheet speaks of. */
function styledBy(css: string): readonly string[] {
  return [...css.replaceAll(/url\([^)]*\)/g, '').matchAll(/\.([a-z][\w-]*)/g)].map(([, name = '']) => name);
}

/** What a room loads: its own styles, those it imports, and those of the page and the sheet, which are always there. */
function loadedIn(room: string): ReadonlySet<string> {
  const own = [room, 'page', 'sheet'].flatMap((one) => filesOf(one, '.css').map((name) => `${one}/${name}`));
  const others = filesOf(room, '.tsx').flatMap((name) =>
    [...textOf(`${room}/${name}`).matchAll(/import '\.\.\/([\w-]+\/[\w-]+\.css)'/g)].map(([, path = '']) => path),
  );
  return new Set([...own, ...others].flatMap((path) => styledBy(textOf(path))));
}

const everyStyled = new Set(
  rooms.flatMap(({ name }) => filesOf(name, '.css').flatMap((file) => styledBy(textOf(`${name}/${file}`)))),
);

/** Rooms that are only ever drawn within a room that has their styles. */
const within = new Map([['time/Waiting.tsx', 'log']]);

test.each(rooms.map(({ name }) => name))(
  '%s loads the styles of all that it draws, whatever was opened before',
  (room) => {
    const missing = filesOf(room, '.tsx').flatMap((file) => {
      const loaded = loadedIn(within.get(`${room}/${basename(file)}`) ?? room);
      const used = [...textOf(`${room}/${file}`).matchAll(/class="([^"]*)"/g)].flatMap(([, names = '']) =>
        names.split(' '),
      );
      return used.filter((name) => everyStyled.has(name) && !loaded.has(name)).map((name) => `${file}: ${name}`);
    });
    expect(missing).toEqual([]);
  },
);
