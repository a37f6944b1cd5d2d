import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { formulate } from '../../../src/formula/engine/formulate';
import { rowOrder } from '../../../src/formula/recipe/order';
import { rowsThatDiffer } from '../../../src/formula/words/compare';
import { compareRow } from '../../../src/formula/words/difference';
import { writeRow } from '../../../src/formula/words/write-row';
import { recipeOf, sensibleRecipe, typed } from '../../batches';
import { differences } from '../../results';

const metric = demo.settings;
const us = { ...metric, leads: 'us' } as const;

describe('rowsThatDiffer', () => {
  test('are those that this cook reads otherwise, of which no value is the same', () => {
    fc.assert(
      fc.property(sensibleRecipe, sensibleRecipe, fc.constantFrom(metric, us), (one, other, kitchen) => {
        const [a, b] = [formulate(one), formulate(other)];
        const different = rowsThatDiffer([a, b], kitchen);
        const unequal = differences(a, b).map((difference) => difference.split(':')[0]);
        for (const row of different) expect(unequal).toContain(row);
        for (const row of rowOrder) {
          const [left, right] = [a, b].map((batch) => {
            const written = writeRow(batch, row, kitchen);
            return (
              (kitchen.leads === 'us' ? (written?.us ?? written?.metric) : written?.metric) ?? batch.rows[row].value
            );
          });
          const same = a.rows[row].value === b.rows[row].value;
          expect(same || different.has(row) || left === right, row).toBe(true);
        }
      }),
    );
  });

  test('are none below what can be weighed', () => {
    const [a, b, c] = [136.2, 136.4, 137.6].map((mass) =>
      formulate(recipeOf({ given: [typed('sourceMass', mass), typed('blendWater', 600)] })),
    );
    if (!a || !b || !c) throw new Error('three batches are compared');
    expect(rowsThatDiffer([a, b], metric)).not.toContain('sourceMass');
    expect(compareRow('sourceMass', a, b, metric)).toBeNull();
    expect(rowsThatDiffer([a, c], metric)).toContain('sourceMass');
    // A scale to 5 g shows 135 g of both.
    expect(
      rowsThatDiffer([a, formulate(recipeOf({ given: [typed('sourceMass', 134)] }))], { ...metric, scale: 5 }),
    ).not.toContain('sourceMass');
  });

  test('are none for one batch, or for any number of the same', () => {
    const batch = formulate(recipeOf());
    for (const batches of [[], [batch], [batch, formulate(recipeOf()), batch]]) {
      expect(rowsThatDiffer(batches, metric).size).toBe(0);
    }
  });

  test('are found wherever among the batches the odd one stands', () => {
    const batch = formulate(recipeOf());
    const odd = formulate(recipeOf({ given: [typed('soakTime', 3)] }));
    for (const batches of [
      [odd, batch, batch],
      [batch, odd, batch],
      [batch, batch, odd],
    ]) {
      expect([...rowsThatDiffer(batches, metric)]).toEqual(['soakTime']);
    }
  });

  test('count a quantity that one of them does not have', () => {
    const poured = formulate(recipeOf({ source: 'cartonPlain' }));
    expect(rowsThatDiffer([formulate(recipeOf()), poured], metric)).toContain('pulpMass');
  });
});
