import { readFileSync } from 'node:fs';
import { defineConfig } from 'vitest/config';
import { firstPaint } from './.build/first-paint.ts';

const licences = 'licences.txt';

/** A licence as it came, up to where it goes over to those of what is not carried. */
function licenceIn(path: string): string {
  const [own = ''] = readFileSync(new URL(path, import.meta.url), 'utf8').split(/^# Licenses of bundled/m);
  return own.trim();
}

/** A package that names its licence and brings no text of it: by whom it is, and where the text stands. */
function withoutText(heading: string, name: string, licence: string): string {
  if (licence !== 'MIT') throw new Error(`${name} brings no text of its licence, ${licence}`);
  const { author } = JSON.parse(readFileSync(new URL(`node_modules/${name}/package.json`, import.meta.url), 'utf8'));
  return `${heading}\n\nCopyright (c) ${author.name ?? author}. The package brings no text; that of the MIT License is the one above.\n`;
}

export default defineConfig({
  plugins: [
    firstPaint(),
    {
      // Vite serves styles as elements while one works on them; the built page links them and keeps its policy.
      name: 'styles-while-working',
      apply: 'serve',
      transformIndexHtml: (page) => page.replace("style-src 'self'", "style-src 'self' 'unsafe-inline'"),
    },
    {
      // Vite writes down whose packages are in the scripts; the page's own code and the builder's few lines are there too.
      name: 'own-licences',
      apply: 'build',
      generateBundle: {
        order: 'post',
        handler(_, bundle) {
          const file = bundle[licences];
          if (file?.type !== 'asset') throw new Error('the licences of the packages are missing');
          const page = `# Jarwright\n\n${licenceIn('LICENSE')}`;
          const builders = ['vite/LICENSE.md', 'rolldown/LICENSE'].map((path) => licenceIn(`node_modules/${path}`));
          const packages = String(file.source).replace(/^## (\S+) - \S+ \((.+)\)$(?=\n+(## |$(?!\n)))/gm, withoutText);
          file.source = [page, packages.trim(), '## What loads the scripts', ...builders, ''].join('\n\n');
        },
      },
    },
  ],
  test: { setupFiles: 'tests/seed.ts' },
  build: {
    license: { fileName: licences },
    // Every browser this is built for knows modulepreload by itself.
    modulePreload: { polyfill: false },
    rolldownOptions: {
      output: {
        // What the page starts with is one script, also where scripts that come later share parts of it.
        codeSplitting: { groups: [{ name: 'start', test: /\/src\/main\.tsx$/ }] },
      },
    },
  },
});
