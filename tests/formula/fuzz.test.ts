import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Formulation, formulate } from '../../src/formula/engine/formulate';
import { type RowId, rowOrder } from '../../src/formula/recipe/order';
import type { Recipe } from '../../src/formula/recipe/recipe';
import { anyRecipe, measuredRecipe, sensibleRecipe } from '../batches';
import { rounding } from '../results';

// The engine with far more recipes than the other tests draw: none throws, gives a number that is none, or makes or
// loses mass on the way from source to milk.

const counts = { any: 40_000, sensible: 30_000, measured: 30_000 };

/** Where a number that is not finite stands in a formulation. */
function findNonFinite({ rows }: Formulation): readonly string[] {
  return rowOrder.flatMap((id) => {
    const { value, typed, planned, range, problems } = rows[id];
    const numbers = [value, typed, planned, ...Object.values(range ?? {}), ...problems.flatMap(numbersIn)];
    return numbers.some((one) => typeof one === 'number' && !Number.isFinite(one)) ? [id] : [];
  });
}

function numbersIn(problem: unknown): readonly unknown[] {
  if (typeof problem === 'number') return [problem];
  return typeof problem === 'object' && problem !== null ? Object.values(problem).flatMap(numbersIn) : [];
}

/** By how much of all that goes in, what comes out differs from it; null where the balance can’t be had. */
function imbalance({ of, evaluation }: Formulation): number | null {
  const source = of('sourceMass');
  const into = source + source * evaluation.c('uptake') + of('waterRatio') * source;
  const out = of('milkMass') + of('pulpMass') + of('lost') + of('leached');
  return Number.isFinite(into) && Number.isFinite(of('milkMass')) && into > 0 ? Math.abs(out / into - 1) : null;
}

/** What is said of a weight that no coefficient explains, or that waits until another row is mended. */
const doubts: readonly string[] = ['measuredImpossible', 'unitMeant', 'moreOutThanIn', 'notCounted'];

/** A pulp was weighed that no moisture explains: it stands as it was weighed, and the milk as it was planned. */
function isPulpUnexplained({ evaluation: { standing } }: Formulation): boolean {
  return standing.values.has('pulpMass') && !standing.coefficients.has('pulpMoisture');
}

function run(recipes: fc.Arbitrary<Recipe>, numRuns: number) {
  const tally = { balanced: 0, without: 0, unexplained: 0, refused: 0, worst: 0 };
  const isRefused = (formulation: Formulation) => (id: RowId) => formulation.rows[id].status === 'refused';
  fc.assert(
    fc.property(recipes, (recipe) => {
      const formulation = formulate(recipe);
      expect(findNonFinite(formulation)).toEqual([]);
      if (rowOrder.some(isRefused(formulation))) tally.refused += 1;
      const off = imbalance(formulation);
      if (off === null) tally.without += 1;
      else if (isPulpUnexplained(formulation)) {
        tally.unexplained += 1;
        const { problems } = formulation.rows.pulpMass;
        expect(problems.some(({ code }) => doubts.includes(code))).toBe(true);
      } else {
        tally.balanced += 1;
        tally.worst = Math.max(tally.worst, off);
        expect(off).toBeLessThan(rounding);
      }
    }),
    { numRuns },
  );
  return tally;
}

describe('the engine', { timeout: 300_000 }, () => {
  test.each([
    ['any', anyRecipe, counts.any],
    ['sensible', sensibleRecipe, counts.sensible],
    ['measured', measuredRecipe, counts.measured],
  ] as const)('with recipes that are %s: finite numbers, and mass conserved', (what, recipes, count) => {
    const { balanced, without, unexplained, refused, worst } = run(recipes, count);
    expect(balanced).toBeGreaterThan(count / 3);
    expect(balanced + without + unexplained).toBe(count);
    console.log(
      `${count} recipes, ${what}: none threw, none with a number that is not finite (${refused} with a refused row); ` +
        `mass conserved in ${balanced} (at most ${worst.toExponential(1)} off), no balance in ${without}, ` +
        `a pulp that no moisture explains in ${unexplained}`,
    );
  });
});
