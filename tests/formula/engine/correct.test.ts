import { describe, expect, test } from 'vitest';
import { correctCoefficients } from '../../../src/formula/engine/correct';
import { formulate } from '../../../src/formula/engine/formulate';
import type { TermId } from '../../../src/formula/rows/row';
import { tightBag as recipeOf, typed } from '../../batches';
import { numberIn } from '../../results';

const batch = formulate(recipeOf({ given: [typed('sourceMass', 200), typed('waterRatio', 5)] }));

function correct(...entries: readonly (readonly [TermId, number])[]) {
  return Object.fromEntries(correctCoefficients(batch.evaluation, new Map(entries)));
}

describe('measuring corrects one coefficient', () => {
  test('the soaked weight corrects the uptake: 200 g became 290 g, so 0.45 g/g', () => {
    expect(correct(['soakedMass', 290])).toEqual({ uptake: expect.closeTo(0.45, 12) });
  });

  test('the weight of the pulp corrects its moisture', () => {
    // Per gram of almond: N 0.9124, of which 0.55 stays; S 0.0435 and W 0.0441 + 0.593 + 5 = 5.6371 are shared.
    // 320 g of pulp are 1.6 g: (1.6 − 0.50182) ÷ 5.6806 = 0.193321 of them; 0.193321 × 5.6371 ÷ 1.6 = 0.68111 is water.
    expect(correct(['pulpMass', 320])).toEqual({ pulpMoisture: expect.closeTo(0.68111, 4) });
  });

  test('the volume of the milk corrects what was lost', () => {
    const milk = numberIn(batch, 'milkVolume');
    expect(correct(['milkVolume', (milk * 0.9) / 0.98])).toEqual({ handlingLoss: expect.closeTo(0.1, 9) });
  });

  test('more milk than would come with nothing lost means a drier pulp', () => {
    const milk = numberIn(batch, 'milkVolume') * 1.05;
    const { pulpMoisture = 0, ...rest } = correct(['milkVolume', milk]);
    expect(rest).toEqual({});
    expect(pulpMoisture).toBeLessThan(0.65);
    const drier = formulate({
      ...batch.recipe,
      yours: { ...batch.recipe.yours, 'almond.pulpMoisture': { value: pulpMoisture, how: 'measured' } },
    });
    expect(numberIn(drier, 'milkVolume')).toBeCloseTo(milk, 6);
  });

  test('three measurements correct three, each with those before it', () => {
    const found = correct(['soakedMass', 290], ['pulpMass', 320], ['milkVolume', 950]);
    expect(Object.keys(found)).toEqual(['uptake', 'pulpMoisture', 'handlingLoss']);
    const yours = Object.fromEntries(
      Object.entries(found).map(([id, value]) => [`almond.${id}`, { value, how: 'measured' } as const]),
    );
    const again = formulate({ ...batch.recipe, yours: { ...batch.recipe.yours, ...yours } });
    expect(numberIn(again, 'soakedMass')).toBeCloseTo(290, 9);
    expect(numberIn(again, 'pulpMass')).toBeCloseTo(320, 9);
    expect(numberIn(again, 'milkVolume')).toBeCloseTo(950, 9);
  });
});

describe('measuring corrects nothing', () => {
  test.each([
    ['a soaked weight under the dry one', 'soakedMass', 150],
    ['a pulp lighter than what must stay', 'pulpMass', 60],
    ['a pulp as heavy as the slurry', 'pulpMass', 1400],
    ['more milk than there was slurry', 'milkVolume', 1500],
    ['next to no milk', 'milkVolume', 20],
  ] as const)('from %s', (_, row, amount) => {
    expect(correct([row, amount])).toEqual({});
  });

  test('where the batch itself has no source', () => {
    const lost = formulate(recipeOf({ given: [typed('sourceMass', null)] }));
    expect(correctCoefficients(lost.evaluation, new Map([['soakedMass', 200]])).size).toBe(0);
  });
});
