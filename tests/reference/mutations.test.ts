import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mutationsOf, survivorsOf } from './mutations';
import { tables } from './tables';

// `npm run mutate-tables` changes every figure in every way; the gate a sample, the same at each run (`tests/seed.ts`).
const sampled = 500;

const mutations = mutationsOf(tables);

test('figures are changed throughout the tables', () => {
  expect(mutations.length).toBeGreaterThan(10_000);
});

test('no figure changed in a sample passes the checks', () => {
  const { seed } = fc.readConfigureGlobal();
  const drawn = fc.sample(fc.constantFrom(...mutations), { numRuns: sampled, ...(seed === undefined ? {} : { seed }) });
  expect(survivorsOf(structuredClone(tables), drawn)).toEqual([]);
});

test.runIf(process.env.MUTATE === 'all')('no figure changed in any way passes the checks', () => {
  const survivors = survivorsOf(structuredClone(tables), mutations);
  console.log(`${mutations.length} figures changed, ${survivors.length} not found\n${survivors.join('\n')}`);
  expect(survivors).toEqual([]);
});
