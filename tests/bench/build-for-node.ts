import { build } from 'vite';

/** What is timed, as the page gets it, built: through the test runner's own imports it takes twice as long. */
export async function buildForNode(): Promise<typeof import('./built')> {
  const built = await build({
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    ssr: { noExternal: true },
    build: { ssr: 'tests/bench/built.ts', write: false },
  });
  const [part] = 'output' in built ? built.output : [];
  if (part === undefined) throw new Error('nothing was built');
  return import(`data:text/javascript,${encodeURIComponent(part.code)}`);
}
