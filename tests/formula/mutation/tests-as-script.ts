import { createRequire } from 'node:module';
import { Script } from 'node:vm';
import fc from 'fast-check';
import { build } from 'vite';
import * as vitest from 'vitest';

/** A test of a script. */
export interface Check {
  readonly name: string;
  readonly run: () => unknown;
}

/** So long at most, ms, may a test take before it counts as one that never ends. */
const patience = 20_000;
const runs = 100;

/** All tests of these files and what they test as one script, in which each may be changed by itself. */
export async function buildTests(files: readonly string[]): Promise<string> {
  const entry = 'virtual:tests';
  const built = await build({
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    plugins: [
      {
        name: 'tests',
        resolveId: (id) => (id === entry ? id : null),
        load: (id) => (id === entry ? files.map((file) => `import ${JSON.stringify(`/${file}`)};`).join('\n') : null),
      },
    ],
    ssr: { noExternal: true, external: ['vitest', 'fast-check'] },
    build: {
      ssr: true,
      write: false,
      minify: false,
      rolldownOptions: { input: entry, output: { format: 'cjs' }, external: [/^vitest$/, /^fast-check$/, /^node:/] },
    },
  });
  const [part] = 'output' in built ? built.output : [];
  if (part === undefined) throw new Error('no test was built');
  return part.code;
}

type Body = (...given: readonly unknown[]) => unknown;

/** The body of a test or a group of them, before which there may be options. */
function bodyOf(given: readonly unknown[]): Body {
  const body = given.find((one): one is Body => typeof one === 'function');
  if (body === undefined) throw new Error('a test without a body');
  return body;
}

function each(add: (name: string, body: () => unknown) => void) {
  return (table: readonly unknown[]) =>
    (name: string, ...given: readonly unknown[]) => {
      const body = bodyOf(given);
      for (const [at, row] of table.entries())
        add(`${name} ${at}`, () => (Array.isArray(row) ? body(...row) : body(row)));
    };
}

/** The tests that a script registers, with fewer cases each, and none of a failure looked into further. */
export function testsOf(script: string): readonly Check[] {
  const checks: Check[] = [];
  const within: string[] = [];
  const test = (name: string, ...given: readonly unknown[]) => {
    const body = bodyOf(given);
    checks.push({ name: [...within, name].join(' › '), run: () => body() });
  };
  const describe = (name: string, ...given: readonly unknown[]) => {
    within.push(name);
    bodyOf(given)();
    within.pop();
  };
  const shim = {
    ...{ expect: vitest.expect, vi: { setConfig: () => undefined } },
    test: Object.assign(test, { each: each(test) }),
    it: Object.assign(test, { each: each(test) }),
    describe: Object.assign(describe, { each: each(describe) }),
  };
  const check = {
    ...fc,
    assert: (property: fc.IRawProperty<unknown>, options: fc.Parameters<unknown> = {}) =>
      fc.assert(property, { ...options, numRuns: Math.min(options.numRuns ?? runs, runs), endOnFailure: true }),
  };
  const others = createRequire(import.meta.url);
  const require = (name: string): unknown =>
    name === 'vitest' ? shim : name === 'fast-check' ? { ...check, default: check, __esModule: true } : others(name);
  const load = new Script(`(require, exports, module) => {${script}\n}`).runInThisContext();
  inTime(() => load(require, {}, { exports: {} }));
  return checks;
}

/** Whether a test passes. One that does not end counts as failed. */
export async function passes({ run }: Check): Promise<boolean> {
  try {
    await inTime(run);
    return true;
  } catch {
    return false;
  }
}

const ending = new Script('globalThis.endsInTime()');

function inTime(run: () => unknown): unknown {
  Object.assign(globalThis, { endsInTime: run });
  return ending.runInThisContext({ timeout: patience });
}
