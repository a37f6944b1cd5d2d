import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { formulate } from '../../../src/formula/engine/formulate';
import { type RowId, rowOrder } from '../../../src/formula/recipe/order';
import { copyCell } from '../../../src/formula/words/copy-cell';
import { writeMetric } from '../../../src/measure/write-quantity';
import { anyRecipe, recipeOf, typed } from '../../batches';
import { numberIn } from '../../results';

const metric = demo.settings;

function copy(id: RowId, ...given: Parameters<typeof typed>[]): string {
  return copyCell(formulate(recipeOf({ given: given.map((cell) => typed(...cell)) })), id, metric);
}

describe('a copied cell', () => {
  test.each<[RowId, string]>([
    ['source', 'Almonds, whole'],
    ['vessel', 'Quart, wide mouth'],
    ['sweetener', 'Cane sugar, white'],
    ['grains', 'Water kefir grains'],
  ])('of a choice is its name: %s', (row, name) => {
    expect(copy(row)).toBe(name);
  });

  test('of a blend names its parts', () => {
    const sweetener = [
      { id: 'honey', share: 0.5 },
      { id: 'mapleSyrup', share: 0.5 },
    ] as const;
    expect(copyCell(formulate(recipeOf({ sweetener })), 'sweetener', metric)).toBe('Honey + Maple syrup');
  });

  test('of an amount is metric with its unit', () => {
    expect(copy('sourceMass', ['sourceMass', 200])).toBe('200 g');
    const formulation = formulate(recipeOf({ given: [typed('milkVolume', 750)] }));
    expect(copyCell(formulation, 'milkVolume', metric)).toBe('750 mL');
  });

  test('of what is worked out is not rounded as it shows', () => {
    const formulation = formulate(recipeOf({ given: [typed('milkVolume', 750)] }));
    const shown = writeMetric(numberIn(formulation, 'sourceMass'), 'mass', false).replace('\u00A0', ' ');
    const copied = copyCell(formulation, 'sourceMass', metric);
    expect(copied).not.toBe(shown);
    expect(Number.parseFloat(copied)).toBeCloseTo(numberIn(formulation, 'sourceMass'), 6);
    expect(copyCell(formulation, 'keepDays', metric)).toMatch(/^\d+ days$/);
  });

  test('of a room is written without its share of the jar', () => {
    expect(copy('headspaceVolume', ['headspaceVolume', 100])).toBe('100 mL');
  });

  test('of what is not there, or can’t be had, is empty', () => {
    expect(copyCell(formulate(recipeOf({ source: 'cartonPlain' })), 'pulpMass', metric)).toBe('');
    expect(copy('milkVolume', ['sourceMass', null])).toBe('');
    expect(copy('finalPH')).toBe('');
  });

  test('is one line of plain text, whatever the recipe', () => {
    fc.assert(
      fc.property(anyRecipe, (recipe) => {
        const formulation = formulate(recipe);
        for (const row of rowOrder) {
          expect(copyCell(formulation, row, metric), row).not.toMatch(/[\t\r\n\u00A0\u2009\u202F]|NaN|undefined|^ | $/);
        }
      }),
    );
  });
});
