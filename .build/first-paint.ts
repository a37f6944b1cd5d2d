import { createHash } from 'node:crypto';
import { createContext, runInContext } from 'node:vm';
import { build, type Plugin } from 'vite';

/**
 * Draws the sheet of a first visit into the built page, so that it is seen before any script has come: once for a wide
 * window and once for a narrow one, of which the styles show one (`src/ui/page/first-paint.css`). The page puts itself
 * in their place as a whole.
 */
export function firstPaint(): Plugin {
  return {
    name: 'first-paint',
    apply: 'build',
    transformIndexHtml: {
      order: 'post',
      async handler(page) {
        const { pictures, lookForOwn } = run(await bundle());
        const hash = createHash('sha256').update(lookForOwn).digest('base64');
        const places: readonly (readonly [string, string])[] = [
          ["script-src 'self'", `script-src 'self' 'sha256-${hash}'`],
          ['</title>', `</title>\n    <script>${lookForOwn}</script>`],
          ['<div id="sheet"></div>', `<div id="sheet">${pictures}</div>`],
        ];
        return places.reduce((text, [place, put]) => {
          if (!text.includes(place)) throw new Error(`the page has no place for the first paint: ${place}`);
          return text.replace(place, () => put);
        }, page);
      },
    },
  };
}

/** What draws, in one script that needs nothing beside it. */
async function bundle(): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    ssr: { noExternal: true },
    build: {
      ssr: '.build/draw-first.tsx',
      write: false,
      rolldownOptions: { output: { codeSplitting: false, format: 'cjs' } },
    },
  });
  const [file] = Array.isArray(built) ? built.flatMap(({ output }) => output) : 'output' in built ? built.output : [];
  if (file?.type !== 'chunk') throw new Error('what draws the first paint was not built');
  return file.code;
}

/** Runs it where there is no page: what it would ask of one is answered as on a first visit. */
function run(code: string): { readonly pictures: string; readonly lookForOwn: string } {
  const exports: { pictures?: unknown; lookForOwn?: unknown } = {};
  const later = () => 0;
  const page = { location: { hash: '' }, setTimeout: later, clearTimeout: later };
  runInContext(code, createContext({ exports, TextEncoder, TextDecoder, URL, ...page }));
  const { pictures, lookForOwn } = exports;
  if (typeof pictures !== 'string' || typeof lookForOwn !== 'string') throw new Error('the first paint is not drawn');
  return { pictures, lookForOwn };
}
