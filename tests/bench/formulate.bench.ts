import { bench, describe, expect } from 'vitest';
import { formulate } from '../../src/formula/engine/formulate';
import { workingIn } from '../../src/formula/working/working';
import { numericRowIds, recipeOf, typed } from '../batches';

const batches = {
  'almonds filling a jar': recipeOf(),
  'two amounts joined': recipeOf({ given: [typed('sourceMass', 170), typed('milkVolume', 700)] }),
  'fresh coconut, measured': recipeOf({
    source: 'coconutFresh',
    grains: 'milk',
    measured: { milkVolume: { kind: 'volume', amount: 650 } },
  }),
};

// The sum is used, so that nothing read can be left out.
let sum = 0;

describe.each(Object.entries(batches))('%s', (_, recipe) => {
  bench('every value', () => {
    const { rows } = formulate(recipe);
    for (const id of numericRowIds) sum += Number(rows[id].value);
    expect(sum).toBeGreaterThan(0);
  });

  bench('every value with its working', () => {
    const { rows } = formulate(recipe);
    for (const id of numericRowIds) sum += workingIn(rows[id])?.inputs.length ?? 0;
    expect(sum).toBeGreaterThan(0);
  });
});
