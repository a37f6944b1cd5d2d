import { defineConfig } from 'vitest/config';

export default defineConfig({
  plugins: [
    {
      // Vite serves styles as elements while one works on them; the built page links them and keeps its policy.
      name: 'styles-while-working',
      apply: 'serve',
      transformIndexHtml: (page) => page.replace("style-src 'self'", "style-src 'self' 'unsafe-inline'"),
    },
  ],
  test: { setupFiles: 'tests/seed.ts' },
  build: {
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
