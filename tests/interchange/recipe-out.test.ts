import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../src/formula/engine/formulate';
import type { Kitchen } from '../../src/formula/words/write-row';
import { planFromRecipe } from '../../src/interchange/recipe-batch';
import { writeRecipe } from '../../src/interchange/recipe-out';
import { readRecipe } from '../../src/interchange/recipe-text';
import { usualScoopSet } from '../../src/measure/scoops';
import { cupStandards } from '../../src/measure/units';
import { jars } from '../../src/reference/jars';
import { sweeteners } from '../../src/reference/sweeteners';
import { plainRecipe, recipeOf, sweetenerIds } from '../batches';

const kitchen: Kitchen = { leads: 'metric', cups: 'us', scoops: usualScoopSet, decimalComma: false };

describe('a recipe written out', () => {
  test('stands in grams for those who weigh', () => {
    const batch = formulate(recipeOf({ given: [{ row: 'sourceMass', amount: 130, kind: 'mass' }] }));
    const text = writeRecipe(batch, ' Saturday\nalmond ', 'grams', kitchen);
    expect(text.split('\n').slice(0, 3)).toEqual(['Saturday almond', '', '- 130 g almonds']);
    expect(text).toMatch(/^- \d+ mL water$/m);
    expect(text).toMatch(/^For a 946 mL jar \(quart, wide mouth\)\.$/m);
    expect(text).not.toMatch(/[\u00A0\u202F]/);
  });

  test('stands in scoops for those who spoon, in the set they own', () => {
    const batch = formulate(recipeOf({ given: [{ row: 'sourceMass', amount: 143, kind: 'mass' }] }));
    expect(writeRecipe(batch, '', 'scoops', kitchen)).toMatch(/^- 1 cup almonds$/m);
    const small = { ...kitchen, scoops: { cups: [], tablespoon: true, teaspoons: [] } };
    expect(writeRecipe(batch, '', 'scoops', small)).toMatch(/^- 16 tbsp almonds$/m);
    const none = { ...kitchen, scoops: { cups: [], tablespoon: false, teaspoons: [] } };
    expect(writeRecipe(batch, '', 'scoops', none)).toMatch(/^- 143 g almonds$/m);
  });

  test('keeps grams where no cup weight is published', () => {
    const batch = formulate(recipeOf({ sweetener: [{ id: 'dates', share: 1 }] }));
    expect(writeRecipe(batch, '', 'scoops', kitchen)).toMatch(/^- \d+ g dates/m);
  });

  test('names every sweetener of a blend', () => {
    const sweetener = [
      { id: 'honey', share: 0.5 },
      { id: 'caneWhite', share: 0.5 },
    ] as const;
    const text = writeRecipe(formulate(recipeOf({ sweetener })), '', 'grams', kitchen);
    expect(text).toMatch(/g honey$/m);
    expect(text).toMatch(/g cane sugar, white$/m);
  });

  const cupStandardIds = Object.values(cupStandards).map(({ id }) => id);
  const fermentable = sweetenerIds.filter((id) => id !== 'none' && sweeteners[id].refused === undefined);
  const batches = fc
    .tuple(plainRecipe, fc.constantFrom(...fermentable))
    .map(([recipe, id]) => ({ ...recipe, sweetener: [{ id, share: 1 }] }));

  test.each([
    ['grams', 0.06],
    ['scoops', 0.15],
  ] as const)('is read back as the same batch, in %s', (how, slack) => {
    fc.assert(
      fc.property(batches, fc.boolean(), fc.constantFrom(...cupStandardIds), (recipe, decimalComma, cups) => {
        const own: Kitchen = { ...kitchen, decimalComma, cups };
        const { rows } = formulate(recipe);
        const text = writeRecipe(formulate(recipe), 'My kefir', how, own);
        const plan = planFromRecipe(readRecipe(text, own), own);
        expect(plan).toMatchObject({ name: 'My kefir', extras: [] });
        const sweetens = typeof rows.sweetenerMass.value === 'number' && rows.sweetenerMass.value > 0;
        expect(plan.choices.source).toBe(recipe.source);
        expect(plan.choices.grains).toBe(recipe.grains);
        expect(plan.choices.sweetener).toEqual(sweetens ? recipe.sweetener : undefined);
        // Several kinds of jar are of one size, and the jar of one's own may be of any.
        if (recipe.vessel !== 'own')
          expect(jars[plan.choices.vessel ?? 'own'].nominal / jars[recipe.vessel].nominal).toBeCloseTo(1, 2);
        expect(plan.cells.length).toBeGreaterThan(1);
        for (const { row, amount, kind } of plan.cells) {
          const { value } = rows[row];
          // A carton is poured by the measure, which is no weight to compare.
          if (typeof value !== 'number' || kind !== rows[row].kind) continue;
          // No scoop is finer than an eighth of a teaspoon, which is about a gram of sugar.
          expect(Math.abs(amount - value), `${row} in ${text}`).toBeLessThan(Math.max(slack * value, 1));
        }
      }),
      { numRuns: 150 },
    );
  });
});
