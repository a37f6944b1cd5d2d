import fc from 'fast-check';
import { expect, test } from 'vitest';
import { scaleTo } from '../../../src/formula/advice/scale-to';
import { formulate } from '../../../src/formula/engine/formulate';
import { recipeOf, typed } from '../../batches';
import { agrees, numberIn } from '../../results';

test('a recipe scaled to another jar fills it and keeps its ratio, sugar and dose', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 50, max: 400, noNaN: true }),
      fc.double({ min: 3, max: 7, noNaN: true }),
      fc.constantFrom('pint', 'twoLitre', 'gallon'),
      (source, ratio, vessel) => {
        const batch = formulate(recipeOf({ given: [typed('sourceMass', source), typed('waterRatio', ratio)] }));
        const scaled = scaleTo(batch, vessel);
        expect(scaled.sizedFrom).toBe('jar');
        expect(scaled.rows.vesselCount.value).toBe(1);
        for (const row of ['waterRatio', 'sugarRate', 'grainRate'] as const) {
          expect(agrees(numberIn(scaled, row), numberIn(batch, row)), row).toBe(true);
        }
        const by = numberIn(scaled, 'milkVolume') / numberIn(batch, 'milkVolume');
        for (const row of ['sourceMass', 'blendWater', 'sweetenerMass', 'grainMass'] as const) {
          expect(agrees(numberIn(scaled, row), by * numberIn(batch, row)), row).toBe(true);
        }
      },
    ),
    { numRuns: 200 },
  );
});
