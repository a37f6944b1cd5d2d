import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Formulation, formulate } from '../../src/formula/engine/formulate';
import type { NumericRowId } from '../../src/formula/recipe/order';
import type { Given, Recipe } from '../../src/formula/recipe/recipe';
import { measuredRecipe, onHand, sensibleRecipe, typed } from '../batches';
import { agrees } from '../results';

type Side = (of: Formulation['of']) => number;

/** What must hold between what is shown, whatever was typed and measured, and the rows it is shown at. */
const sums: Readonly<
  Record<string, { readonly rows: readonly NumericRowId[]; readonly one: Side; readonly other: Side }>
> = {
  'sugar at the start is native and added': {
    rows: ['startingSugar', 'sugarRate'],
    one: (of) => of('startingSugar'),
    other: (of) => of('nativeSugar') + of('sugarRate'),
  },
  'the sweetener is its rate times the milk': {
    rows: ['sweetenerMass', 'sugarRate', 'milkVolume'],
    one: (of) => of('sweetenerMass') * of('fermentable'),
    other: (of) => (of('sugarRate') * of('milkVolume')) / 1000,
  },
  'cane sugar is the same in hexose': {
    rows: ['caneEquivalent', 'sweetenerMass'],
    one: (of) => of('caneEquivalent') * of('caneFermentable'),
    other: (of) => of('sweetenerMass') * of('fermentable'),
  },
  'the grains are their dose times the milk': {
    rows: ['grainMass', 'grainRate', 'milkVolume'],
    one: (of) => of('grainMass'),
    other: (of) => (of('grainRate') * of('milkVolume')) / 1000,
  },
  'jars hold what is filled in': {
    rows: ['fillVolume', 'vesselCount'],
    one: (of) => of('fillVolume') * of('vesselCount'),
    other: (of) => of('totalFill'),
  },
  'fill and headspace are the jar': {
    rows: ['fillVolume', 'headspaceVolume'],
    one: (of) => of('fillVolume') + of('headspaceVolume'),
    other: (of) => of('brimful'),
  },
  'glasses hold the drink': {
    rows: ['servings', 'servingSize', 'drinkVolume'],
    one: (of) => of('servings') * of('servingSize'),
    other: (of) => of('drinkVolume'),
  },
};

/** The same recipes, some of them sized from what there is of sweetener or grains. */
function withStock(recipes: fc.Arbitrary<Recipe>): fc.Arbitrary<Recipe> {
  const stock = fc
    .tuple(fc.constantFrom('sweetenerMass', 'grainMass'), fc.integer({ min: 20, max: 200 }))
    .map(([row, amount]) => onHand(row, amount));
  return fc
    .tuple(recipes, fc.option(stock))
    .map(([recipe, cell]) =>
      cell === null ? recipe : { ...recipe, given: [...recipe.given.slice(0, 1), cell].filter(isFirst) },
    );
}

/** Whether a cell is the first of its row. */
function isFirst({ row }: Given, at: number, all: readonly Given[]): boolean {
  return all.findIndex((cell) => cell.row === row) === at;
}

function isKnown(formulation: Formulation, sides: readonly number[], rows: readonly NumericRowId[]): boolean {
  return sides.every(Number.isFinite) && rows.every((id) => formulation.rows[id].status !== 'absent');
}

describe('what is shown', { timeout: 120_000 }, () => {
  test.each([
    ['typed', sensibleRecipe],
    ['typed and measured', measuredRecipe],
  ])('adds up, whatever is %s', (_, recipes) => {
    const seen = new Map<string, number>();
    fc.assert(
      fc.property(withStock(recipes), (recipe) => {
        const formulation = formulate(recipe);
        for (const [what, { rows, one, other }] of Object.entries(sums)) {
          const sides = [one(formulation.of), other(formulation.of)] as const;
          if (!isKnown(formulation, sides, rows)) continue;
          seen.set(what, (seen.get(what) ?? 0) + 1);
          expect(agrees(...sides), `${what}: ${sides.join(' and ')}`).toBe(true);
        }
      }),
      { numRuns: 3000 },
    );
    for (const what of Object.keys(sums)) expect(seen.get(what) ?? 0, what).toBeGreaterThan(500);
  });

  test.each([
    ['typed', sensibleRecipe],
    ['typed and measured', measuredRecipe],
  ])('as solids of the milk is what the balance gives, whatever is %s', (_, recipes) => {
    const withSolids = fc.tuple(recipes, fc.option(fc.integer({ min: 10, max: 600 }))).map(([recipe, tenths]) =>
      tenths === null
        ? recipe
        : {
            ...recipe,
            given: [typed('milkSolids', tenths / 10), ...recipe.given.filter(({ row }) => row !== 'milkSolids')],
          },
    );
    let met = 0;
    fc.assert(
      fc.property(withSolids, (recipe) => {
        const { evaluation, of, rows } = formulate(recipe);
        const stages = evaluation.stages();
        const shown = rows.milkSolids.value;
        if (stages === null || typeof shown !== 'number') return;
        met += rows.milkSolids.status === 'given' ? 1 : 0;
        expect(agrees(shown, 100 * stages.milkSolids), `${shown} of ${of('waterRatio')} g/g`).toBe(true);
      }),
      { numRuns: 3000 },
    );
    expect(met).toBeGreaterThan(200);
  });
});
