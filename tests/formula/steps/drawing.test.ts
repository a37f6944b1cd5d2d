import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { drawJar } from '../../../src/formula/steps/drawing';
import { anyRecipe, recipeOf, typed } from '../../batches';

// Many recipes take longer than one example does.
vi.setConfig({ testTimeout: 60_000 });

test('a jar whose capacity is refused is not drawn, whatever fill is typed', () => {
  expect(drawJar(formulate(recipeOf({ given: [typed('brimful', -1), typed('fillVolume', 500)] })))).toBeNull();
});

test('the drawing of any recipe at all holds no number that is none', () => {
  fc.assert(
    fc.property(anyRecipe, (recipe) => {
      const drawing = drawJar(formulate(recipe));
      fc.pre(drawing !== null);
      const { outline, cream, grains, depth, widest, surface } = drawing;
      const numbers = [...outline, cream, ...(grains === null ? [] : [grains]), { depth, widest, surface }].flatMap(
        (part) => Object.values(part),
      );
      expect(numbers.every(Number.isFinite)).toBe(true);
    }),
    { numRuns: 1500 },
  );
});
