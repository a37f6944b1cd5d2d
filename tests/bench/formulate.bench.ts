import { describe } from 'vitest';
import { numericRowIds, recipeOf, typed } from '../batches';
import { buildForNode } from './build-for-node';
import { report, timeInTurn } from './in-turn';

const { demo, formulate, workingIn, writeRow } = await buildForNode();

const batches = {
  'almonds filling a jar': recipeOf(),
  'two amounts joined': recipeOf({ given: [typed('sourceMass', 170), typed('milkVolume', 700)] }),
  'fresh coconut, measured': recipeOf({
    source: 'coconutFresh',
    grains: 'milk',
    measured: { milkVolume: { kind: 'volume', amount: 650 } },
  }),
};

/** The most each may take, µs. */
const limits = { values: 15, printed: 120 };

describe('a batch worked out', () => {
  for (const [name, recipe] of Object.entries(batches))
    report(name, () => {
      // The sums are used, so that nothing read can be left out.
      const sums = { values: 0, printed: 0, working: 0 };
      const contenders = {
        values: () => {
          const { rows } = formulate(recipe);
          for (const id of numericRowIds) sums.values += Number(rows[id].value);
        },
        printed: () => {
          const formulation = formulate(recipe);
          for (const id of numericRowIds) sums.printed += writeRow(formulation, id, demo.settings)?.metric.length ?? 0;
        },
        working: () => {
          const { rows } = formulate(recipe);
          for (const id of numericRowIds) sums.working += workingIn(rows[id])?.inputs.length ?? 0;
        },
      };
      const took = timeInTurn(contenders, { warmUps: 2000, rounds: 2000 });
      if (!Object.values(sums).every((sum) => sum > 0)) throw new Error('nothing was worked out');
      const micro = (name: keyof typeof sums) => `${(1000 * took(name)).toFixed(1)} µs`;
      return `${name}: every value ${micro('values')} of ${limits.values}, with results printed ${micro('printed')} of ${limits.printed}, with workings ${micro('working')}`;
    });
});
