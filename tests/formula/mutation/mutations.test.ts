import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { readSources } from '../../source-code';
import { type Mutation, mutationsOf } from './mutations';
import { buildTests, type Check, passes, testsOf } from './tests-as-script';

// `npm run mutate-engine` changes so many places, the same at each run (`tests/seed.ts`), one after the other.
const sampled = 300;
vi.setConfig({ testTimeout: 3_600_000 });

// What reads files or holds ours against another's code is slow to start or has no place in one script.
const isApart = /from '(node:\w+|vite|ical\.js|hyperformula|js-quantities|.*outside)'|Snapshot|afterEach/;

/** The tests of what is pure. */
const files = [...readSources('tests/formula'), ...readSources('tests/published')]
  .filter(
    ({ path, text }) => /\.test\.ts$/.test(path) && !/formula\/(mutation|plan)\//.test(path) && !isApart.test(text),
  )
  .map(({ path }) => path);

/** The places of the tests that pass, the quickest first. One that counts its cases fails with fewer, and says nothing here. */
async function inOrder(checks: readonly Check[]): Promise<readonly number[]> {
  const times: { at: number; took: number }[] = [];
  for (const [at, check] of checks.entries()) {
    const start = performance.now();
    if (await passes(check)) times.push({ at, took: performance.now() - start });
  }
  return times.toSorted((one, other) => one.took - other.took).map(({ at }) => at);
}

/** Whether any test fails, or what a mutation makes does not even load. */
async function isFound(script: string, { start, end, by }: Mutation, order: readonly number[]): Promise<boolean> {
  let checks: readonly Check[];
  try {
    checks = testsOf(script.slice(0, start) + by + script.slice(end));
  } catch {
    return true;
  }
  for (const at of order) {
    const check = checks[at];
    if (check === undefined || !(await passes(check))) return true;
  }
  return false;
}

test.runIf(process.env.MUTATE === 'engine')('few changes of the engine pass its tests', async () => {
  const script = await buildTests(files);
  const all = mutationsOf(script);
  expect(all.length).toBeGreaterThan(1000);
  const { seed } = fc.readConfigureGlobal();
  const drawing = fc.shuffledSubarray([...all], { minLength: sampled, maxLength: sampled });
  const [drawn = []] = fc.sample(drawing, { numRuns: 1, ...(seed === undefined ? {} : { seed }) });
  const order = await inOrder(testsOf(script));
  expect(order.length).toBeGreaterThan(1000);
  const survivors: string[] = [];
  for (const mutation of drawn) {
    if (await isFound(script, mutation, order)) continue;
    survivors.push(mutation.how);
    console.log(mutation.how);
  }
  console.log(`${sampled} places of ${all.length} changed, ${survivors.length} not found by ${order.length} tests`);
  expect(survivors.length / sampled).toBeLessThan(0.03);
});
