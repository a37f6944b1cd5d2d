import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { measuredRows, rowOrder } from '../../../src/formula/recipe/order';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { findMeasured } from '../../../src/formula/working/keep-measured';
import { measuredRecipe, recipeOf, typed } from '../../batches';
import { agrees, numberIn } from '../../results';

const given = [typed('sourceMass', 200), typed('waterRatio', 4)];

function measuring(measured: Recipe['measured'], changes: Partial<Recipe> = {}) {
  return formulate(recipeOf({ given, measured, ...changes }));
}

describe('what a measurement can be kept as', () => {
  test('is the uptake, of a soaked weight', () => {
    // 200 g that weigh 290 g soaked have taken up 45 % of their weight, and what leached out with the soaking water.
    const found = findMeasured('soakedMass', measuring({ soakedMass: { kind: 'mass', amount: 290 } }));
    expect(found).toMatchObject({ key: 'almond.uptake', label: 'Water taken up in soaking' });
    expect(found?.value).toBeCloseTo(0.45 + measuring({}).of('leached') / 200, 9);
  });

  test('is the moisture, of a wet pulp', () => {
    const found = findMeasured('pulpMass', measuring({ pulpMass: { kind: 'mass', amount: 220 } }));
    expect(found?.key).toBe('almond.pulpMoisture');
  });

  test('is nothing, of a pulp that was hardly pressed', () => {
    const slurry = measuring({}).of('slurryMass');
    expect(findMeasured('pulpMass', measuring({ pulpMass: { kind: 'mass', amount: 0.8 * slurry } }))).toBeNull();
  });

  test('is the loss, of a milk', () => {
    const found = findMeasured('milkVolume', measuring({ milkVolume: { kind: 'volume', amount: 700 } }));
    expect(found?.key).toBe('almond.handlingLoss');
  });

  test('is the moisture, of more milk than would come without any loss', () => {
    const most = numberIn(
      measuring({}, { yours: { 'almond.handlingLoss': { value: 0, how: 'typed' } } }),
      'milkVolume',
    );
    const pulp = numberIn(measuring({}), 'pulpMass');
    const milkVolume = { kind: 'volume', amount: most + 5 } as const;
    expect(findMeasured('milkVolume', measuring({ milkVolume }))?.key).toBe('almond.pulpMoisture');
    expect(findMeasured('milkVolume', measuring({ milkVolume, pulpMass: { kind: 'mass', amount: pulp } }))).toBeNull();
  });

  test('is nothing where nothing was measured, or nothing follows from it', () => {
    const formulation = measuring({
      finalPH: { kind: 'acidity', amount: 4.2 },
      grainMass: { kind: 'mass', amount: 40 },
    });
    for (const row of measuredRows) expect(findMeasured(row, formulation), row).toBeNull();
    expect(findMeasured('milkVolume', measuring({ milkVolume: { kind: 'volume', amount: 9000 } }))).toBeNull();
  });

  test('once kept makes the sheet expect what was measured, and is not offered again', () => {
    fc.assert(
      fc.property(measuredRecipe, fc.constantFrom('soakedMass', 'pulpMass', 'milkVolume'), (any, row) => {
        const amount = any.measured[row];
        fc.pre(amount !== undefined);
        const before = formulate({ ...any, given, measured: amount === undefined ? {} : { [row]: amount } });
        const found = findMeasured(row, before);
        if (found === null) return;
        const yours = { [found.key]: { value: found.value, how: 'measured' as const } };
        expect(findMeasured(row, formulate({ ...before.recipe, yours }))).toBeNull();
        const fresh = formulate({ ...any, given, measured: {}, yours });
        // What needs no soak has no soaked weight to expect.
        if (fresh.rows[row].status === 'absent') return;
        const expected = numberIn(fresh, row);
        expect(agrees(expected, numberIn(before, row)), `${expected}, measured ${amount?.amount}`).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});

test('keeping a figure leaves the batch it came from as it was, and is not offered again', () => {
  const recipe = recipeOf({ measured: { milkVolume: { kind: 'volume', amount: 650 } } });
  const before = formulate(recipe);
  const found = findMeasured('milkVolume', before);
  expect(found).not.toBeNull();
  if (found === null) return;
  const yours = { [found.key]: { value: found.value, how: 'measured' } } as const;
  const after = formulate({ ...recipe, yours });
  for (const id of rowOrder) expect(after.rows[id].value, id).toEqual(before.rows[id].value);
  expect(findMeasured('milkVolume', after)).toBeNull();
  // The next batch of the same source is planned with it: more source for the same milk.
  const next = formulate(recipeOf({ yours }));
  const usual = formulate(recipeOf({}));
  expect(Number(next.rows.sourceMass.value)).toBeGreaterThan(Number(usual.rows.sourceMass.value));
});
